package caryatid.wording;

import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.PlateProof;
import caryatid.recording.model.PlateProof.MeasuredValue;
import caryatid.recording.model.PlateProof.Shown;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** What a proof showed of plates, as lines. */
public final class ProofText {
  private static final double PERCENT = 100;

  private final Wording wording;

  private ProofText(Wording wording) {
    this.wording = wording;
  }

  /** The lines: what each plate showed, and how well its numbers are known. */
  public static List<String> lines(PlateProof proof, Wording wording) {
    ProofText text = new ProofText(wording);
    List<String> lines = new ArrayList<>();
    proof.plates().forEach(plate -> lines.addAll(text.plate(plate)));
    PlateAccuracy accuracy = proof.accuracy();
    lines.add(
        wording.fill(
            "Proof.cop",
            Argument.of(accuracy.copMm(), Unit.MM),
            text.degrees(accuracy.degrees().cop()),
            Argument.of(PlateAccuracy.ASSUMED.copMm(), Unit.MM)));
    double unseen = PlateProof.unseen(proof.weightKg(), proof.bodyKg());
    if (unseen > 0) {
      lines.add(
          wording.fill(
              "Proof.light",
              Argument.of(proof.weightKg(), Unit.KG),
              Argument.of(proof.bodyKg(), Unit.KG),
              Argument.of(unseen * PlateAccuracy.ASSUMED.copMm(), Unit.MM)));
    }
    lines.add(
        text.known("Proof.force", accuracy.forceFraction() * PERCENT, Unit.PERCENT)
            + text.ofForce(accuracy));
    lines.add(
        text.known("Proof.level", Math.toDegrees(accuracy.levelRad()), Unit.DEG)
            + text.measured(
                accuracy.levelRad() != PlateAccuracy.ASSUMED.levelRad(),
                accuracy.degrees().level()));
    if (proof.plates().stream().anyMatch(Shown::deviates)) {
      lines.add(wording.word("Proof.deviates"));
    }
    return lines;
  }

  private String ofForce(PlateAccuracy accuracy) {
    return measured(
        accuracy.forceFraction() != PlateAccuracy.ASSUMED.forceFraction(),
        accuracy.degrees().force());
  }

  private String known(String key, double value, Unit unit) {
    return wording.fill(key, Argument.of(value, unit));
  }

  private String measured(boolean measured, double degrees) {
    return " "
        + (measured
            ? wording.fill("Proof.measured", degrees(degrees))
            : wording.word("Proof.assumed"));
  }

  private Argument degrees(double degrees) {
    return Argument.count(Math.round(Math.floor(degrees)));
  }

  private List<String> plate(Shown plate) {
    return List.of(
        wording.fill("Proof.plate", Argument.text(plate.name()), Argument.count(plate.marks())),
        row("Proof.scale", factor(plate.scaleRight()), factor(plate.scaleAnterior())),
        row("Proof.turn", sized(plate.turnDeg(), Unit.DEG)),
        row(
            "Proof.zero",
            sized(plate.zeroRightMm(), Unit.MM),
            sized(plate.zeroAnteriorMm(), Unit.MM)));
  }

  private String row(String key, String... words) {
    List<Argument> arguments = new ArrayList<>();
    for (String word : words) {
      arguments.add(Argument.text(word));
    }
    return "  " + wording.fill(key, arguments);
  }

  /** A factor has no unit, and its third decimal counts. */
  private String factor(MeasuredValue measure) {
    return decimals(measure.value()) + " ± " + decimals(measure.halfWidth());
  }

  private String decimals(double value) {
    return wording.exact(new BigDecimal(value).setScale(3, RoundingMode.HALF_UP));
  }

  private String sized(MeasuredValue measure, Unit unit) {
    return wording.signed(measure.value(), unit)
        + " ± "
        + wording.number(measure.halfWidth(), unit);
  }
}
