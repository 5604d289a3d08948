package caryatid.format;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Frozen;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * What the frozen schema of version 1 allows is read for ever, and what it refuses is refused: held
 * against an independent validator on entries of version 0.1.0 with a random change each.
 */
class OldSchemaTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @Test
  void whatTheSchemaOfVersionOneSaysIsStillSo() throws IOException {
    Random random = new Random(7);
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Frozen.V1.resolve("schemas/fitting-entry.schema.json")));
    int refused = 0;
    for (Map.Entry<String, byte[]> file :
        Frozen.unzipped(Frozen.V1.resolve("records/es.zip")).entrySet()) {
      for (int i = 0; file.getKey().endsWith("/entry.json") && i < 40; i++) {
        ObjectNode json = (ObjectNode) MAPPER.readTree(file.getValue());
        Change.somewhere(json, random);
        boolean fits = schema.validate(json.toString(), InputFormat.JSON).isEmpty();
        // What a schema cannot say: an entry corrects an earlier one.
        boolean earlier =
            json.path("corrects").asInt(0) < json.path("number").asInt(0)
                && json.path("corrects").asInt(1) > 0;
        // From version 2 on a length says what is known of it, heights or not.
        boolean heights = !json.path("kind").asText().equals("length") || hasHeights(json);
        if (heights) {
          assertThat(isRead(json)).as(json.toString()).isEqualTo(fits && earlier);
        }
        refused += fits ? 0 : 1;
      }
    }
    assertThat(refused).isGreaterThan(200);
  }

  private static boolean hasHeights(ObjectNode json) {
    return json.path("content").has("landmarks");
  }

  private static boolean isRead(ObjectNode json) {
    byte[] bytes = json.toString().getBytes(StandardCharsets.UTF_8);
    return EntryJson.read(bytes, "e") instanceof EntryReading.Done;
  }
}
