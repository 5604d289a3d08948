package caryatid.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.PlateProof;
import caryatid.recording.model.PlateProof.Measure;
import caryatid.recording.model.PlateProof.Shown;
import caryatid.recording.model.Provenance;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes a proof below a plate description. */
public final class ProvenDescription {
  /** Digits of what was measured; more say nothing. */
  private static final MathContext DIGITS = new MathContext(5);

  private ProvenDescription() {}

  /** The description's bytes with the proof at their end, in place of one that stood there. */
  public static byte[] with(byte[] description, PlateProof proof) {
    String above = ProofSection.above(new String(description, UTF_8));
    StringBuilder text = new StringBuilder(above);
    text.append(ProofSection.KEY).append(":\n");
    line(text, "at: " + proof.at());
    line(text, "by: " + YamlWords.text(proof.by()));
    line(text, "description-sha512: " + YamlWords.text(ProofSection.digest(above)));
    line(text, "accuracy: {" + YamlWords.flow(accuracy(proof.accuracy())) + "}");
    line(text, "plates:");
    proof.plates().forEach(plate -> shown(text, plate));
    line(text, "recordings:");
    proof.recordings().forEach(recording -> recording(text, recording));
    return text.toString().getBytes(UTF_8);
  }

  private static void line(StringBuilder text, String line) {
    text.append("  ").append(line).append('\n');
  }

  private static Map<String, String> accuracy(PlateAccuracy accuracy) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("cop-mm", number(accuracy.copMm()));
    values.put("cop-degrees-of-freedom", number(accuracy.degrees().cop()));
    values.put("level-deg", number(Math.toDegrees(accuracy.levelRad())));
    values.put("level-degrees-of-freedom", number(accuracy.degrees().level()));
    values.put("force-percent", number(accuracy.forceFraction() * 100));
    values.put("force-degrees-of-freedom", number(accuracy.degrees().force()));
    values.put("lean-deg", number(Math.toDegrees(accuracy.leanRad())));
    values.put("lean-degrees-of-freedom", number(accuracy.degrees().lean()));
    return values;
  }

  private static void shown(StringBuilder text, Shown plate) {
    line(text, "  - name: " + YamlWords.text(plate.name()));
    line(text, "    marks: " + plate.marks());
    measure(text, "scale-right", plate.scaleRight());
    measure(text, "scale-anterior", plate.scaleAnterior());
    measure(text, "turn-deg", plate.turnDeg());
    measure(text, "zero-right-mm", plate.zeroRightMm());
    measure(text, "zero-anterior-mm", plate.zeroAnteriorMm());
  }

  private static void measure(StringBuilder text, String key, Measure measure) {
    line(
        text,
        "    "
            + key
            + ": {value: "
            + number(measure.value())
            + ", plus-minus: "
            + number(measure.halfWidth())
            + "}");
  }

  private static void recording(StringBuilder text, Provenance recording) {
    line(text, "  - name: " + YamlWords.text(recording.name()));
    line(text, "    bytes: " + recording.bytes());
    line(text, "    sha512: '" + recording.sha512() + "'");
  }

  private static String number(double value) {
    return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
  }
}
