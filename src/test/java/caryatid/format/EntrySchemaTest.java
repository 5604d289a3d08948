package caryatid.format;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.remark.BadInput;
import caryatid.remark.Coded;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Our reader and an independent validator of JSON Schema agree on what an entry is. */
class EntrySchemaTest {
  private static final Path FILE = Path.of("docs/fitting-entry.schema.json");
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-04T10:15:00+01:00");
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
      assertThat(EntryJson.own(json.getBytes(StandardCharsets.UTF_8), "e")).isEqualTo(entry);
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
      EntryJson.own(json.toString().getBytes(StandardCharsets.UTF_8), "e");
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
              AT,
              "AB",
              Optional.of(new Entry.Correction(1, "wrong side", Optional.of(AT))),
              AnswersToContent.content(kind, full(EntryForms.of(kind))),
              List.of(file)));
    }
    return entries;
  }

  private static Answers full(Form form) {
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    form.fields().forEach(field -> values.put(field.key(), example(field.type())));
    return new Answers(values);
  }

  private static Answers.Value example(FieldType type) {
    if (type instanceof FieldType.Number number) {
      return new Answers.Value.Amount(BigDecimal.valueOf(Math.max(1, (long) number.lowest())));
    }
    if (type instanceof FieldType.Rows rows) {
      return new Answers.Value.Rows(List.of(full(rows.form())));
    }
    if (type instanceof FieldType.Computed computed) {
      return example(computed.choice());
    }
    if (type instanceof FieldType.Day) {
      return new Answers.Value.Words("2026-03-18");
    }
    if (type instanceof FieldType.Choice choice) {
      return new Answers.Value.Words(choice.words().get(0));
    }
    if (type instanceof FieldType.Name name) {
      Coded first = name.vocabulary().terms().get(0);
      return new Answers.Value.Name(Optional.of(first), "some \"words\" \u00e4");
    }
    return type instanceof FieldType.YesNo
        ? new Answers.Value.YesNo(true)
        : new Answers.Value.Words("some \"words\" \u00e4");
  }
}
