package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.Result;
import caryatid.demo.Demo;
import caryatid.demo.Worst;
import caryatid.format.ResultJson;
import caryatid.geometry.Side;
import caryatid.remark.BadInput;
import caryatid.report.pages.Paper;
import caryatid.report.pdf.Attachments;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.report.pdf.ReportReader;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

/**
 * Regression: numbers and pages change only together with their numbers. The table keeps a digest
 * for each method and each layout there was.
 */
class MethodAndLayoutTest {
  private static final Path TABLE = Path.of("src/test/resources/caryatid/numbers/digests.txt");

  private static final List<String> SAMPLES =
      List.of("k7-barefoot", "k7-shoe", "m4-barefoot", "m4-shoe");

  /** The sample reports are what the program makes; another test holds that. */
  @Test
  void theResultsOfTheSamplesAreThoseOfTheirMethod() throws IOException, BadInput {
    MessageDigest digest = sha256();
    for (String sample : SAMPLES) {
      byte[] pdf = Files.readAllBytes(Path.of("reports", sample + ".pdf"));
      byte[] json =
          ReportReader.read(sample, pdf).files().stream()
              .filter(f -> f.role() == AttachmentRole.RESULT)
              .findFirst()
              .orElseThrow()
              .bytes();
      Result read = ResultJson.read(json);
      assertThat(read.method()).isEqualTo(Result.METHOD);
      digest.update(ResultJson.write(new Result(1, "", read.state())));
    }
    assertListed(
        "method " + Result.METHOD,
        digest,
        "the samples give other numbers or remarks: raise Result.METHOD by one, and add the line");
  }

  @Test
  void thePagesOfAFixedResultAreThoseOfTheirLayout() throws IOException {
    MessageDigest digest = sha256();
    for (String language : List.of("en", "de", "fr", "es")) {
      for (Demo demo : List.of(Demo.transtibial(Side.RIGHT), Worst.stand())) {
        byte[] pdf =
            Report.pdf(
                new Result(1, "demo", demo.state(0)),
                List.of(demo.recording()),
                Attachments.NONE,
                Wording.in(Locale.forLanguageTag(language)),
                Paper.A4);
        digest.update(Positions.of(pdf).getBytes(StandardCharsets.UTF_8));
      }
    }
    assertListed(
        "layout " + Report.LAYOUT,
        digest,
        "the pages changed: raise Report.LAYOUT by one, and add the line");
  }

  private static void assertListed(String number, MessageDigest digest, String message)
      throws IOException {
    String line = number + " " + HexFormat.of().formatHex(digest.digest());
    assertThat(Files.readAllLines(TABLE)).as("%s (%s) to %s", message, line, TABLE).contains(line);
    assertThat(Files.readAllLines(TABLE).stream().map(l -> l.replaceAll(" \\p{XDigit}{64}$", "")))
        .as("one digest for each number")
        .doesNotHaveDuplicates();
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Every character with where it stands, in tenths of a point. */
  private static final class Positions extends PDFTextStripper {
    private final StringBuilder found = new StringBuilder();

    static String of(byte[] pdf) throws IOException {
      Positions positions = new Positions();
      try (PDDocument document = Loader.loadPDF(pdf)) {
        positions.getText(document);
      }
      return positions.found.toString();
    }

    @Override
    protected void processTextPosition(TextPosition text) {
      found.append(
          String.format(
              Locale.ROOT,
              "%d %.1f %.1f %.1f %s\n",
              getCurrentPageNo(),
              text.getXDirAdj(),
              text.getYDirAdj(),
              text.getFontSizeInPt(),
              text.getUnicode()));
    }
  }
}
