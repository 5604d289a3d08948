package caryatid.format;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.Result;
import caryatid.demo.Demo;
import caryatid.geometry.Side;
import caryatid.remark.BadInput;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
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
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds what is written and read against the schema in the docs, by an independent validator. */
class ResultSchemaTest {
  private static final Path FILE = Path.of("docs/result.schema.json");
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private static final List<Spellings<?>> WORDS =
      List.of(
          BodySpellings.PLANE,
          BodySpellings.SIDE,
          BodySpellings.PROSTHETIC_SIDE,
          BodySpellings.ANKLE_AXIS,
          BodySpellings.LEVEL,
          BodySpellings.LANDMARK,
          BodySpellings.HANDS,
          BodySpellings.GROUND,
          FindingSpellings.CAUSE,
          FindingSpellings.UNIT,
          FindingSpellings.LINE,
          FindingSpellings.LINE_OF,
          FindingSpellings.EFFECT,
          FindingSpellings.MEANT_FOR,
          FindingSpellings.VERDICT,
          FindingSpellings.LEFT_OUT,
          FindingSpellings.MEASURE,
          FindingSpellings.REMEDY,
          FindingSpellings.LIMITED);

  private static Schema schema() throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Files.readString(FILE));
  }

  private static String written(Result result) {
    return new String(ResultJson.write(result), StandardCharsets.UTF_8);
  }

  @Test
  void whatIsWrittenFollowsTheSchema() throws IOException {
    Schema schema = schema();
    AnyResult any = new AnyResult(1);
    Stream.concat(
            Stream.of(Demo.transfemoral(Side.RIGHT).notes().result()),
            Stream.generate(any::next).limit(100))
        .forEach(
            result ->
                assertThat(schema.validate(written(result), InputFormat.JSON)).as("").isEmpty());
  }

  /**
   * A schema cannot say every range and knows no topic by name; it refuses nothing that is read.
   */
  @Test
  void whatTheSchemaRefusesIsRefused() throws Exception {
    Schema schema = schema();
    Random random = new Random(3);
    int refused = 0;
    ObjectNode whole = (ObjectNode) MAPPER.readTree(written(Demo.transtibial(Side.LEFT).result()));
    for (int i = 0; i < 1000; i++) {
      ObjectNode json = whole.deepCopy();
      Change.somewhere(json, random);
      boolean fits = schema.validate(json.toString(), InputFormat.JSON).isEmpty();
      List<String> said = problems(json);
      if (fits) {
        assertThat(said).as(json.toString()).isSubsetOf("Archived.OUT_OF_RANGE");
      } else {
        assertThat(said).as(json.toString()).isNotEmpty();
      }
      refused += fits ? 0 : 1;
    }
    assertThat(refused).isBetween(500, 999);
  }

  private static List<String> problems(JsonNode json) {
    try {
      ResultJson.read(json.toString().getBytes(StandardCharsets.UTF_8));
      return List.of();
    } catch (BadInput e) {
      return e.problems().stream().map(p -> p.topic().code()).toList();
    }
  }

  @Test
  void theSchemaKnowsEveryWordAndNoOther() throws IOException {
    Set<List<String>> listed = new HashSet<>();
    for (JsonNode node : MAPPER.readTree(FILE.toFile()).findValues("enum")) {
      List<String> words = new ArrayList<>();
      node.forEach(word -> words.add(word.textValue()));
      listed.add(words);
    }
    assertThat(WORDS.stream().map(ResultSchemaTest::all).toList())
        .containsExactlyInAnyOrderElementsOf(listed);
  }

  private static <E> List<String> all(Spellings<E> words) {
    return words.constants().stream().map(words::of).toList();
  }

  @Test
  void eachWordMeansOneThing() {
    assertThat(WORDS)
        .allSatisfy(words -> assertThat(all(words)).doesNotHaveDuplicates().isNotEmpty());
  }
}
