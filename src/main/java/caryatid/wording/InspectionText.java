package caryatid.wording;

import caryatid.recording.Inspection;
import caryatid.recording.Inspection.Loaded;
import caryatid.recording.Inspection.PlateView;
import caryatid.recording.Understood;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;

/** What is understood of an export, as lines for a terminal. */
public final class InspectionText {
  private static final int ROWS = 5;

  private final Wording wording;
  private final List<String> lines = new ArrayList<>();

  private InspectionText(Wording wording) {
    this.wording = wording;
  }

  /** The lines: what is understood, the plates, what is wrong, what is asked. */
  public static List<String> lines(Inspection inspection, Wording wording) {
    InspectionText text = new InspectionText(wording);
    inspection.understood().forEach(text::understood);
    inspection.plates().forEach(text::plate);
    text.group("InspectionText.remarks", inspection.remarks().stream().map(text::remark).toList());
    text.group(
        "InspectionText.problems", inspection.problems().stream().map(wording::say).toList());
    text.group(
        "InspectionText.questions", inspection.questions().stream().map(wording::say).toList());
    text.lines.add("");
    text.lines.add(
        wording.word(inspection.complete() ? "InspectionText.complete" : "InspectionText.open"));
    return List.copyOf(text.lines);
  }

  private void understood(Understood fact) {
    String what = wording.fill(fact.aspect().key(), fact.arguments());
    lines.add(what + " (" + wording.word(fact.basis()) + ")");
  }

  private String remark(Remark remark) {
    return wording.word(remark.topic().weight()) + ": " + wording.say(remark);
  }

  private void group(String title, List<String> sentences) {
    if (!sentences.isEmpty()) {
      lines.add("");
      lines.add(wording.word(title));
      sentences.forEach(sentence -> lines.add("- " + sentence));
    }
  }

  private void plate(PlateView plate) {
    lines.add("");
    lines.add(plate.plate() + loaded(plate));
    plate.massKg().ifPresent(kg -> lines.add(mass(kg)));
    plot(plate.vertical());
  }

  private String mass(double kg) {
    return wording.fill("InspectionText.mass", Argument.of(kg, Unit.KG));
  }

  private String loaded(PlateView plate) {
    List<String> stretches = new ArrayList<>();
    for (Loaded stretch : plate.loaded()) {
      stretches.add(
          wording.fill(
              "InspectionText.rows",
              Argument.count(stretch.fromRow()),
              Argument.count(stretch.toRow())));
    }
    return stretches.isEmpty()
        ? ""
        : ": " + wording.fill("InspectionText.loaded", Argument.text(String.join(", ", stretches)));
  }

  /** Vertical force over time: a column a piece, {@value #ROWS} rows high, 0 at the bottom. */
  private void plot(List<Double> force) {
    double largest = force.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    if (!(largest > 0)) {
      return;
    }
    for (int row = ROWS; row >= 1; row--) {
      StringBuilder line = new StringBuilder("  ");
      for (double value : force) {
        line.append(value / largest * ROWS >= row - 0.5 ? '#' : ' ');
      }
      lines.add(line.toString().stripTrailing());
    }
    lines.add("  " + "-".repeat(force.size()));
  }
}
