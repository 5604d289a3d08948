package caryatid.report;

import caryatid.alignment.Result;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * A result as JSON and back, without loss: what is read equals what was written, and the same
 * result gives the same bytes. The form is described in {@code docs/result.md}.
 */
public final class ResultJson {
  /** The name of a result's file; also where problems are said to be. */
  public static final String FILE_NAME = "result.json";

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private ResultJson() {}

  /** A result as UTF-8 JSON, indented, with a line end at its end. */
  public static byte[] write(Result result) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator out = MAPPER.createGenerator(bytes)) {
      DefaultIndenter indent = new DefaultIndenter("  ", "\n");
      out.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
      new ValueWriter(out).write(result);
      out.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /**
   * Reads a result.
   *
   * @throws BadInput if the bytes are not a result of the version this program writes; unknown,
   *     doubled and missing keys are refused
   */
  public static Result read(byte[] json) throws BadInput {
    try {
      JsonNode root = MAPPER.readTree(json);
      refuseOtherVersion(root);
      return (Result) ValueReader.read(Result.class, root, "result");
    } catch (JsonProcessingException e) {
      throw problem(new Misread(Archived.NOT_JSON, e.getOriginalMessage()));
    } catch (Misread e) {
      throw problem(e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void refuseOtherVersion(JsonNode root) {
    JsonNode version = root.path("version");
    if (version.isIntegralNumber() && version.intValue() != Result.VERSION) {
      throw new Misread(
          Archived.OTHER_VERSION, version.toString(), Integer.toString(Result.VERSION));
    }
  }

  private static BadInput problem(Misread misread) {
    return new BadInput(
        Problem.at(
            Place.of(FILE_NAME), misread.topic(), misread.arguments().toArray(Argument[]::new)));
  }
}
