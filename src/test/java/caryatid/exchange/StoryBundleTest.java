package caryatid.exchange;

import static caryatid.exchange.ToldFitting.resources;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Story;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The bundle of the story in the docs. */
class StoryBundleTest {
  @TempDir private static Path folder;

  private static ToldFitting fitting;
  private static JsonNode bundle;

  @BeforeAll
  static void make() throws IOException {
    Story.make(folder);
    fitting = new ToldFitting(folder);
    bundle = fitting.bundled("bundle.json");
  }

  @Test
  void itBreaksNoRule() {
    assertThat(BundleFaults.of(bundle)).isEmpty();
  }

  @Test
  void itsNumbersAreThoseOfTheKeptResultsToTheLastDigit() {
    assertThat(BundleNumbers.compared(fitting, bundle)).isEqualTo(14);
  }

  @Test
  void nothingIsInItThatIsNotInTheRecord() throws IOException {
    assertThat(BundleSources.unknown(fitting, bundle)).isEmpty();
  }

  @Test
  void ofThePatientItHasTheIdentifierAlone() {
    assertThat(resources(bundle, "Patient"))
        .extracting(JsonNode::toString)
        .containsExactly(
            "{\"resourceType\":\"Patient\",\"identifier\":[{\"system\":\"urn:oid:2.25.1234\","
                + "\"value\":\"Q8-77123\"}]}");
    assertThat(fitting.everything()).doesNotContain(ToldFitting.NUMBER);
  }

  /** Control cases: what is not in the record is found. */
  @TestFactory
  Stream<DynamicTest> whatIsNotInTheRecordIsFound() {
    return Stream.of(
        added(
            "family: Mustermann", o -> o.putArray("name").addObject().put("family", "Mustermann")),
        added(
            "value: -15.09900563286575", o -> o.put("value", new BigDecimal("-15.09900563286575"))),
        added(
            "effectiveDateTime: 2026-03-04T10:16:00+01:00",
            o -> o.put("effectiveDateTime", "2026-03-04T10:16:00+01:00")),
        added("display: Q9-1 Zyxwv", o -> o.putObject("subject").put("display", "Q9-1 Zyxwv")));
  }

  private static DynamicTest added(String says, Consumer<ObjectNode> change) {
    return DynamicTest.dynamicTest(
        says,
        () -> {
          ObjectNode copy = bundle.deepCopy();
          change.accept((ObjectNode) copy.at("/entry/0/resource"));
          assertThat(BundleSources.unknown(fitting, copy)).containsExactly(says);
        });
  }
}
