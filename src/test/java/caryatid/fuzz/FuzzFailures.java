package caryatid.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a result in JSON says of the targets, and what it remarks.
 *
 * @param offsetsMm the offset of each target
 * @param verdicts the verdict of each target
 * @param remarks the codes of all remarks
 * @param fromS start of the part used, s from the recording's first row
 * @param toS its end
 */
record FuzzFailures(
    TreeMap<String, Double> offsetsMm,
    TreeMap<String, String> verdicts,
    Set<String> remarks,
    double fromS,
    double toS) {
  /** An offset that moves by less is not noticed by anybody, mm. */
  static final double MOVED_MM = 0.5;

  private static final ObjectMapper JSON = new ObjectMapper();

  static FuzzFailures in(String json) {
    JsonNode state = read(json).get("state");
    TreeMap<String, Double> offsets = new TreeMap<>();
    TreeMap<String, String> verdicts = new TreeMap<>();
    for (JsonNode finding : state.get("findings")) {
      JsonNode offset = finding.get("offset");
      String name = offset.get("plane").asText() + " " + offset.get("landmark").asText();
      offsets.put(name, offset.at("/mm/value").asDouble());
      verdicts.put(name, finding.get("verdict").asText());
    }
    Set<String> remarks = new TreeSet<>();
    state.findValuesAsText("topic").forEach(remarks::add);
    JsonNode stretch = state.at("/stands/0/standing/stretch");
    return new FuzzFailures(
        offsets,
        verdicts,
        remarks,
        stretch.get("from-s").asDouble(),
        stretch.get("to-s").asDouble());
  }

  private static JsonNode read(String json) {
    try {
      return JSON.readTree(json);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether others say something else of a target, and remark nothing that these do not. */
  boolean differsInSilence(FuzzFailures others) {
    return remarks.containsAll(others.remarks) && differs(others);
  }

  private boolean differs(FuzzFailures others) {
    return !verdicts.equals(others.verdicts)
        || offsetsMm.keySet().stream().anyMatch(name -> Math.abs(moved(others, name)) > MOVED_MM);
  }

  /** By how much an offset differs, mm. */
  double moved(FuzzFailures others, String name) {
    return others.offsetsMm.getOrDefault(name, Double.POSITIVE_INFINITY) - offsetsMm.get(name);
  }
}
