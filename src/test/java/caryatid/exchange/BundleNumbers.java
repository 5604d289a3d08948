package caryatid.exchange;

import static caryatid.exchange.ToldFitting.code;
import static caryatid.exchange.ToldFitting.component;
import static caryatid.exchange.ToldFitting.resources;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Iterator;

/** The numbers of a bundle's offsets against those of the results that the record keeps. */
final class BundleNumbers {
  private BundleNumbers() {}

  /**
   * Compares the offsets that were measured, in their order, to the last digit. Both files are read
   * by a JSON reader of its own. The standard uncertainty is worked out again from the budget (JCGM
   * 100:2008, 5.1.2); 1e-12 is for the order of adding.
   *
   * @return how many there are
   */
  static int compared(ToldFitting fitting, JsonNode bundle) {
    Iterator<JsonNode> offsets =
        resources(bundle, "Observation").stream()
            .filter(o -> code(o).equals("offset-mm"))
            .filter(o -> !o.path("method").toString().contains("typed"))
            .iterator();
    int compared = 0;
    for (Path result : fitting.kept("result.json")) {
      for (JsonNode finding : ToldFitting.json(result).path("state").path("findings")) {
        assertSame(finding, offsets.next());
        compared++;
      }
    }
    assertThat(offsets).isExhausted();
    return compared;
  }

  private static void assertSame(JsonNode finding, JsonNode told) {
    JsonNode mm = finding.path("offset").path("mm");
    JsonNode quantity = told.path("valueQuantity");
    assertThat(quantity.path("value").asText()).isEqualTo(mm.path("value").asText());
    double squares = 0;
    for (JsonNode part : mm.path("contributions")) {
      double amount =
          part.path("standard-uncertainty").asDouble() * part.path("sensitivity").asDouble();
      squares += amount * amount;
    }
    assertThat(quantity.path("extension").path(0).path("valueDecimal").asDouble())
        .isCloseTo(Math.sqrt(squares), within(1e-12));
    JsonNode target = finding.path("target");
    BigDecimal recommended = target.path("recommended-mm").decimalValue();
    JsonNode range = told.path("referenceRange").path(0);
    assertThat(range.path("low").path("value").decimalValue())
        .isEqualByComparingTo(recommended.subtract(target.path("below-mm").decimalValue()));
    assertThat(range.path("high").path("value").decimalValue())
        .isEqualByComparingTo(recommended.add(target.path("above-mm").decimalValue()));
    assertThat(range.path("text").asText()).isEqualTo(target.path("source").asText());
    assertThat(amount(told, "recommended-mm")).isEqualByComparingTo(recommended);
    assertThat(amount(told, "probability-within"))
        .isEqualTo(finding.path("probability-within").decimalValue());
    assertThat(coded(told, "plane")).isEqualTo(finding.path("offset").path("plane").asText());
    assertThat(coded(told, "side")).isEqualTo(finding.path("offset").path("side").asText());
    assertThat(coded(told, "line")).isEqualTo(finding.path("offset").path("of").asText());
    assertThat(component(told, "landmark").orElseThrow().path("valueString").asText())
        .isEqualTo(finding.path("offset").path("landmark").asText());
    assertThat(told.path("interpretation").path(0).path("coding").path(0).path("code").asText())
        .isEqualTo(finding.path("verdict").asText().replace('-', ' '));
    assertThat(told.path("method").path("coding").path(0).path("code").asText())
        .isEqualTo(finding.path("offset").path("kind").asText());
  }

  private static BigDecimal amount(JsonNode told, String code) {
    return component(told, code).orElseThrow().path("valueQuantity").path("value").decimalValue();
  }

  private static String coded(JsonNode told, String code) {
    JsonNode value = component(told, code).orElseThrow().path("valueCodeableConcept");
    return value.path("coding").path(0).path("code").asText();
  }
}
