package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Demo;
import caryatid.geometry.Side;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds what is written against the schema in the docs, by an independent validator. */
class ResultSchemaTest {
  private static final Path FILE = Path.of("docs/result.schema.json");
  private static final String WRITTEN =
      new String(
          ResultJson.write(Demo.transfemoral(Side.RIGHT).notes().result()), StandardCharsets.UTF_8);

  private static Schema schema() throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Files.readString(FILE));
  }

  /** Regression; {@code -Dapprove} writes the file anew. */
  @Test
  void theSchemaInTheDocsIsThatOfTheRecords() throws IOException {
    String built = ResultSchema.build().toPrettyString() + "\n";
    if (Boolean.getBoolean("approve")) {
      Files.writeString(FILE, built);
    }
    assertThat(Files.readString(FILE)).isEqualTo(built);
  }

  @Test
  void whatIsWrittenFollowsTheSchema() throws IOException {
    assertThat(schema().validate(WRITTEN, InputFormat.JSON)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "'\"version\" : 1', '\"version\" : 2'",
    "'\"program\" :', '\"programme\" :'",
    "'\"hands\" : \"free\"', '\"hands\" : \"up\"'",
    "'\"rate-hz\" : 100', '\"rate-hz\" : \"100\"'",
    "'\"kind\" : \"prosthetic-foot-on-plate\"', '\"kind\" : \"other\"'",
  })
  void whatDoesNotFollowItIsFound(String written, String changed) throws IOException {
    assertThat(WRITTEN).contains(written);
    assertThat(schema().validate(WRITTEN.replace(written, changed), InputFormat.JSON)).isNotEmpty();
  }
}
