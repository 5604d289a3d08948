package caryatid.blackbox;

import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Results as the first method could have found them. */
final class FirstMethod {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String DEGREES = "degrees-of-freedom";

  private FirstMethod() {}

  /**
   * The same result, each value's contributions known to one and the same degrees of freedom, at
   * which every rule gives the half-width that the pages show.
   */
  static String sameHalfWidths(String json) {
    try {
      JsonNode tree = JSON.readTree(json);
      walk(tree);
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(tree);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void walk(JsonNode node) {
    if (node.path("contributions").isArray()) {
      even(node.path("contributions"));
    }
    node.forEach(FirstMethod::walk);
  }

  private static void even(JsonNode contributions) {
    List<Contribution> all = new ArrayList<>();
    for (JsonNode each : contributions) {
      all.add(
          new Contribution(
              new Source(Cause.SWAY, Integer.toString(all.size())),
              each.path("standard-uncertainty").asDouble(),
              each.path("sensitivity").asDouble(),
              each.path(DEGREES).asDouble(Double.POSITIVE_INFINITY)));
    }
    double degrees = new Estimate(0, all).degreesOfFreedom();
    for (JsonNode each : contributions) {
      if (Double.isInfinite(degrees)) {
        ((ObjectNode) each).remove(DEGREES);
      } else {
        ((ObjectNode) each).put(DEGREES, degrees);
      }
    }
  }
}
