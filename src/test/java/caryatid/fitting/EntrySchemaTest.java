package caryatid.fitting;

import static caryatid.fitting.Invented.answers;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.remark.BadInput;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Our reader and an independent validator of JSON Schema agree on what an entry is. */
class EntrySchemaTest {
  private static final Path FILE = Path.of("docs/fitting-entry.schema.json");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Regression; {@code -Dapprove} writes the file anew. */
  @Test
  void theSchemaInTheDocsIsThatOfTheForms() throws IOException {
    String built = EntrySchema.build().toPrettyString() + "\n";
    if (Boolean.getBoolean("approve")) {
      Files.writeString(FILE, built);
    }
    assertThat(Files.readString(FILE)).isEqualTo(built);
  }

  @Test
  void everyKindOfEntryIsWrittenByTheSchemaAndReadBack() throws Exception {
    for (Entry entry : examples()) {
      String json = new String(EntryJson.write(entry), StandardCharsets.UTF_8);
      assertThat(schema().validate(json, InputFormat.JSON)).as(json).isEmpty();
      assertThat(EntryJson.read(json.getBytes(StandardCharsets.UTF_8), "e")).isEqualTo(entry);
    }
  }

  @Test
  void whatTheSchemaRefusesIsRefusedAndTheOtherWayRound() throws Exception {
    Random random = new Random(3);
    int refused = 0;
    for (Entry entry : examples()) {
      for (int i = 0; i < 60; i++) {
        ObjectNode json = (ObjectNode) MAPPER.readTree(EntryJson.write(entry));
        Change.somewhere(json, random);
        boolean fits = schema().validate(json.toString(), InputFormat.JSON).isEmpty();
        // What a schema cannot say: an entry corrects an earlier one.
        boolean earlier = json.path("corrects").asInt(0) < json.path("number").asInt(0);
        assertThat(isRead(json)).as(json.toString()).isEqualTo(fits && earlier);
        refused += fits ? 0 : 1;
      }
    }
    assertThat(refused).isGreaterThan(200);
  }

  private static boolean isRead(JsonNode json) {
    try {
      EntryJson.read(json.toString().getBytes(StandardCharsets.UTF_8), "e");
      return true;
    } catch (BadInput e) {
      return false;
    }
  }

  private static Schema schema() throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Files.readString(FILE));
  }

  /** One entry of each kind with every field of its form. */
  private static List<Entry> examples() {
    List<Entry> entries = new ArrayList<>();
    for (EntryKind kind : EntryKind.values()) {
      KeptFile file = new KeptFile("report.pdf", KeptFile.Role.REPORT, "my report.pdf");
      entries.add(
          new Entry(
              2,
              kind,
              Invented.AT,
              "AB",
              Optional.of(new Entry.Correction(1, "wrong side", Optional.of(Invented.AT))),
              full(kind.form()),
              List.of(file)));
    }
    return entries;
  }

  private static Answers full(Form form) {
    List<Object> pairs = new ArrayList<>();
    for (Field field : form.fields()) {
      pairs.add(field.key());
      pairs.add(example(field.type()));
    }
    return answers(pairs.toArray());
  }

  private static Object example(FieldType type) {
    if (type instanceof FieldType.Number number) {
      return Math.max(1, (long) number.lowest());
    }
    if (type instanceof FieldType.Rows rows) {
      return full(rows.form());
    }
    if (type instanceof FieldType.Choice choice) {
      return choice.words().get(0);
    }
    return type instanceof FieldType.YesNo ? true : "some \"words\" \u00e4";
  }
}
