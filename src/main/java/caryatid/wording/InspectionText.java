package caryatid.wording;

import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.Inspection.Loaded;
import caryatid.recording.model.Inspection.PlateView;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UnderstoodFact;
import caryatid.recording.model.UsableMask;
import caryatid.remark.Argument;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What is understood of an export, as lines for a terminal. */
public final class InspectionText {
  private static final int ROWS = 5;

  /** A force that never falls further below its largest would fill the plot. */
  private static final double FLAT = 0.9;

  /** More stretches tell a reader no more than their number. */
  private static final int MOST_STRETCHES = 6;

  private final Inspection inspection;
  private final Wording wording;
  private final List<String> lines = new ArrayList<>();

  private InspectionText(Inspection inspection, Wording wording) {
    this.inspection = inspection;
    this.wording = wording;
  }

  /**
   * The lines: what is understood, the plates, what is wrong, what is asked.
   *
   * @param described whether a plate description was given
   */
  public static List<String> lines(Inspection inspection, boolean described, Wording wording) {
    InspectionText text = new InspectionText(inspection, wording);
    inspection.understood().forEach(text::understood);
    inspection.plates().forEach(text::plate);
    text.together();
    text.centres();
    text.group("InspectionText.remarks", text.remarks());
    text.group(
        "InspectionText.problems", inspection.problems().stream().map(wording::sayWithin).toList());
    text.group(
        "InspectionText.questions",
        inspection.questions().stream().map(wording::sayWithin).toList());
    text.lines.add("");
    text.lines.add(wording.word(text.ending(described)));
    return List.copyOf(text.lines);
  }

  /** What is understood, and how the plates are loaded, each in a line; no plots. */
  public static List<String> facts(Inspection inspection, Wording wording) {
    InspectionText text = new InspectionText(inspection, wording);
    inspection.understood().forEach(text::understood);
    for (PlateView plate : inspection.plates()) {
      text.lines.add(text.loaded(plate));
      plate.massKg().ifPresent(kg -> text.mass("InspectionText.mass", kg));
    }
    text.together();
    text.centres();
    return text.lines.stream().filter(line -> !line.isEmpty()).toList();
  }

  /** What is remarkable about the export, each in a line. */
  public static List<String> remarks(Inspection inspection, Wording wording) {
    return new InspectionText(inspection, wording).remarks();
  }

  /** What is wrong with the export, each in a line. */
  public static List<String> problems(Inspection inspection, Wording wording) {
    return inspection.problems().stream().map(wording::sayWithin).toList();
  }

  /** A question as a page asks it, with its answer to be chosen; a file is not spoken of. */
  public static String question(Problem question, Wording wording) {
    String key = "Web.ask." + question.topic().code();
    return wording.knows(key)
        ? wording.fill(key, question.arguments())
        : wording.sayWithin(question);
  }

  private String ending(boolean described) {
    if (inspection.complete()) {
      return described ? "InspectionText.described" : "InspectionText.complete";
    }
    return inspection.problems().isEmpty() ? "InspectionText.open" : "InspectionText.damaged";
  }

  private void understood(UnderstoodFact fact) {
    String what = wording.fill(fact.aspect().code(), fact.arguments());
    lines.add(what + " " + basis(fact));
  }

  private String basis(UnderstoodFact fact) {
    String evidence = fact.aspect().code() + ".evidence";
    String basis = wording.word(fact.basis());
    return fact.basis() == UnderstoodFact.Basis.CONCLUDED && wording.knows(evidence)
        ? wording.fill(
            "InspectionText.basis",
            Argument.text(basis),
            Argument.text(wording.fill(evidence, fact.arguments())))
        : "(" + basis + ")";
  }

  /** The remarks without that on the unit of times, which stands among what is understood. */
  private List<String> remarks() {
    return inspection.remarks().stream()
        .filter(remark -> remark.topic() != RecordingRemark.TIME_UNIT)
        .map(this::remark)
        .toList();
  }

  private String remark(Remark remark) {
    return wording.lead(remark.topic().weight()) + ": " + wording.say(remark);
  }

  private void group(String title, List<String> sentences) {
    if (!sentences.isEmpty()) {
      lines.add("");
      lines.add(wording.word(title));
      sentences.forEach(sentence -> lines.add("- " + sentence.replace("\n", "\n  ")));
    }
  }

  private void plate(PlateView plate) {
    lines.add("");
    lines.add(loaded(plate));
    plate.massKg().ifPresent(kg -> mass("InspectionText.mass", kg));
    plot(plate);
  }

  /** Where each plate was loaded on average, from which axes and places can be checked. */
  private void centres() {
    inspection.sampled().stream()
        .flatMap(sampled -> sampled.plates().stream())
        .filter(track -> track.usable().count() > 0)
        .forEach(track -> lines.add(centre(track)));
  }

  private String centre(PlateTrack track) {
    double anteriorMm = mean(track.copAnteriorMm(), track.usable());
    Argument plate = Argument.text(track.plate());
    Argument forward = Argument.of(Math.abs(anteriorMm), Unit.MM);
    Argument sense = Argument.text(word(anteriorMm, "behind", "front"));
    if (track.copRightMm().isEmpty()) {
      return wording.fill("InspectionText.centreForeAndAft", plate, forward, sense);
    }
    double rightMm = mean(track.copRightMm().get(), track.usable());
    return wording.fill(
        "InspectionText.centre",
        plate,
        forward,
        sense,
        Argument.of(Math.abs(rightMm), Unit.MM),
        Argument.text(word(rightMm, "left", "right")));
  }

  private String word(double mm, String below, String above) {
    return wording.word("InspectionText." + (mm < 0 ? below : above));
  }

  private static double mean(Samples series, UsableMask usable) {
    double sum = 0;
    for (int i = 0; i < series.size(); i++) {
      sum += usable.at(i) ? series.at(i) : 0;
    }
    return sum / usable.count();
  }

  private void mass(String key, double kg) {
    lines.add(wording.fill(key, Argument.of(kg, Unit.KG)));
  }

  private void together() {
    List<OptionalDouble> masses = inspection.plates().stream().map(PlateView::massKg).toList();
    if (masses.size() > 1 && masses.stream().allMatch(OptionalDouble::isPresent)) {
      lines.add("");
      mass(
          "InspectionText.together",
          masses.stream().mapToDouble(OptionalDouble::getAsDouble).sum());
    }
  }

  private String loaded(PlateView plate) {
    List<String> stretches =
        plate.loaded().stream().limit(MOST_STRETCHES).map(this::stretch).toList();
    String more = plate.loaded().size() > MOST_STRETCHES ? ", ..." : "";
    return stretches.isEmpty()
        ? wording.fill("InspectionText.never", Argument.text(plate.plate()))
        : wording.fill(
            "InspectionText.loaded",
            Argument.text(plate.plate()),
            Argument.text(String.join(", ", stretches) + more));
  }

  private String stretch(Loaded stretch) {
    List<Argument> arguments =
        new ArrayList<>(
            List.of(Argument.count(stretch.fromRow()), Argument.count(stretch.toRow())));
    inspection
        .rateHz()
        .ifPresent(
            rate -> {
              arguments.add(Argument.of((stretch.fromRow() - 1) / rate, Unit.S));
              arguments.add(Argument.of((stretch.toRow() - 1) / rate, Unit.S));
            });
    return wording.fill(
        arguments.size() > 2 ? "InspectionText.seconds" : "InspectionText.rows", arguments);
  }

  /** Vertical force over time: a column a piece, {@value #ROWS} rows high, 0 at the bottom. */
  private void plot(PlateView plate) {
    double largest = plate.vertical().stream().mapToDouble(v -> v).max().orElse(0);
    double smallest = plate.vertical().stream().mapToDouble(v -> v).min().orElse(0);
    if (!(largest > 0)) {
      return;
    }
    if (smallest >= FLAT * largest) {
      int pieces = plate.vertical().size();
      lines.add(
          wording.fill(
              "InspectionText.flat",
              Argument.count(pieces),
              force(smallest, plate),
              force(largest, plate)));
      return;
    }
    lines.add(wording.fill("InspectionText.plot", force(largest, plate)));
    for (int row = ROWS; row >= 1; row--) {
      StringBuilder line = new StringBuilder("  ");
      for (double value : plate.vertical()) {
        line.append(value / largest * ROWS >= row - 0.5 ? '#' : ' ');
      }
      lines.add(line.toString().stripTrailing());
    }
    lines.add("  " + "-".repeat(plate.vertical().size()));
  }

  private Argument force(double value, PlateView plate) {
    return plate
        .unit()
        .map(ForceUnit::newton)
        .map(newton -> Argument.of(value * newton, Unit.N))
        .orElseGet(() -> Argument.text(String.format(Locale.ROOT, "%.1f", value)));
  }
}
