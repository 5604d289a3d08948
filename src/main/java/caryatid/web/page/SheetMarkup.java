package caryatid.web.page;

import caryatid.remark.Argument;
import caryatid.usecase.stand.ChosenPlate;
import caryatid.usecase.stand.StandFields;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** The fields of a stand: how the wearer stands, the landmarks, what is recommended. */
public final class SheetMarkup {
  private static final List<String> USUAL_LANDMARKS =
      List.of("ankle axis", "knee centre", "lateral patellar border");

  /** A prosthetic knee has no patella; the thigh is told by the trochanter. */
  private static final List<String> USUAL_ABOVE_KNEE = List.of("ankle axis", "knee centre", "hip");

  private static final int FEWEST_ROWS = 3;

  private final Wording wording;
  private final StandFormValues values;
  private final Markup out = new Markup();
  private final Control control;

  /**
   * What the fields hold.
   *
   * @param typed what was typed
   * @param before what was typed for the stand before
   * @param faults what is wrong
   * @param plate the plate that is chosen
   * @param both whether both legs have a prosthesis
   * @param knee whether a prosthetic knee's lock is asked for
   */
  public record StandFormValues(
      Map<String, String> typed,
      Map<String, String> before,
      FieldFaults faults,
      ChosenPlate plate,
      boolean both,
      boolean knee) {}

  private SheetMarkup(Wording wording, StandFormValues values) {
    this.wording = wording;
    this.values = values;
    this.control = new Control(out, values.typed(), values.before(), values.faults());
  }

  /** The landmarks. */
  public static Markup landmarks(Wording wording, StandFormValues values) {
    SheetMarkup markup = new SheetMarkup(wording, values);
    for (int i = 1; i <= rows(values, StandFields.LANDMARK, FEWEST_ROWS) + 1; i++) {
      markup.landmark(StandFields.LANDMARK + "[" + i + "].", i);
    }
    return markup.out;
  }

  /** What was changed before this state; asked each time. */
  public static Markup change(Wording wording, StandFormValues values) {
    SheetMarkup markup = new SheetMarkup(wording, values);
    markup.control.words(StandFields.CHANGED, markup.word("lastChange"));
    markup.out.open("details", "class", "fold").element("summary", markup.word("watch"));
    markup.control.words(StandFields.WATCHED, markup.word("watchedFolder"));
    markup.out.element("button", markup.word("ready.watch"), "name", "action", "value", "watch");
    markup.out.close("details");
    return markup.out;
  }

  /** How the wearer stands and in what. */
  public static Markup stance(Wording wording, StandFormValues values) {
    SheetMarkup markup = new SheetMarkup(wording, values);
    markup.stance();
    return markup.out;
  }

  static int rows(StandFormValues values, String row, int fewest) {
    int rows = fewest;
    for (int i = 1; i < 20; i++) {
      String name = row + "[" + i + "].";
      boolean there =
          StandFields.isTyped(values.typed(), name) || StandFields.isTyped(values.before(), name);
      rows = there ? Math.max(rows, i) : rows;
    }
    return rows;
  }

  private String word(String key) {
    return wording.word("Web." + key);
  }

  private List<String> words(String lead, List<String> codes) {
    return words(wording, lead, codes);
  }

  static List<String> words(Wording wording, String lead, List<String> codes) {
    return codes.stream()
        .map(code -> wording.word("Web." + lead + "." + code.replace(' ', '-')))
        .toList();
  }

  /** The names of landmarks as this wearer's are called. */
  static List<String> landmarks(Wording wording, StandFormValues values, List<String> names) {
    LandmarkWords landmarks = new LandmarkWords(wording, values.knee());
    return names.stream().map(landmarks::name).toList();
  }

  private String stance(String kind) {
    return wording.word(
        switch (kind) {
          case StandFields.PLATE_PER_FOOT -> "Stance.PlatePerFoot";
          case StandFields.BOTH_ON_ONE -> "Stance.BothFeetOnOnePlate";
          default -> "Stance.ProstheticFootOnPlate";
        });
  }

  private void landmark(String row, int number) {
    out.open("fieldset", "class", "landmark", "data-row", Integer.toString(number));
    out.open("legend");
    List<String> names = new ArrayList<>();
    List<String> usual = values.knee() ? USUAL_ABOVE_KNEE : USUAL_LANDMARKS;
    names.add(number <= usual.size() ? usual.get(number - 1) : "foot reference point");
    StandFields.KNOWN_LANDMARKS.stream()
        .filter(n -> !names.contains(n) && !n.startsWith("outer"))
        .forEach(names::add);
    control.bareChoice(row + "name", word("landmark"), names, landmarks(wording, values, names));
    side(row);
    out.close("legend");
    control.faults(row + "name");
    distance(
        row + "forward",
        "way.forward",
        StandFields.IN_FRONT,
        StandFields.BEHIND,
        values.plate().forwardLines());
    distance(
        row + "rightward",
        "way.rightward",
        StandFields.RIGHT_OF,
        StandFields.LEFT_OF,
        values.plate().rightwardLines());
    out.open("div", "class", "distance").element("span", word("up"));
    control.bareNumber(row + "up", word("up"));
    out.element("span", "mm", "class", "unit");
    control.faults(row + "up");
    out.close("div");
    before(row);
    boolean wrong =
        Stream.of("marking", "read-at").anyMatch(f -> !values.faults().at(row + f).isEmpty());
    out.open("details", wrong ? "open" : "", "").element("summary", word("moreOfMark"));
    ofMark(row + "marking", "markingMm", "mm");
    out.element("p", word("marking"), "class", "note");
    ofMark(row + "read-at", "readAt", "s");
    control.words(row + "is", word("is"));
    out.close("details").close("fieldset");
  }

  /** What is seldom typed of a mark. */
  private void ofMark(String name, String label, String unit) {
    out.open("div", "class", "distance marking");
    out.element("label", word(label), "for", Control.id(name));
    control.bareNumber(name, "");
    out.element("span", unit, "class", "unit");
    control.faults(name);
    out.close("div");
  }

  private void side(String row) {
    side(control, wording, values, row);
  }

  /** On which leg; asked where both have a prosthesis. */
  static void side(Control control, Wording wording, StandFormValues values, String row) {
    if (values.both()) {
      control.bareChoice(
          row + "side",
          wording.word("Web.leg"),
          List.of("left", "right"),
          List.of(wording.word("Choice.left"), wording.word("Choice.right")));
    }
  }

  private void distance(String name, String way, String plus, String minus, List<String> lines) {
    out.open("div", "class", "distance");
    control.bareChoice(
        name + "-sense", word(way), List.of(plus, minus), words("sense", List.of(plus, minus)));
    from(name + "-from", lines);
    control.bareNumber(name, word(way));
    out.element("span", "mm", "class", "unit");
    control.faults(name);
    control.faults(name + "-from");
    out.close("div");
  }

  /** A line that this plate lacks stays, and is refused, until another one is chosen. */
  private void from(String name, List<String> lines) {
    String chosen = values.typed().getOrDefault(name, "");
    boolean lacks = !chosen.isEmpty() && !lines.contains(chosen);
    if (lines.isEmpty() && !lacks) {
      out.element("span", word("origin"));
      return;
    }
    List<String> codes = lines.isEmpty() ? List.of("") : lines;
    List<String> words = lines.isEmpty() ? List.of(word("origin")) : lines;
    control.bareChoice(name, word("line"), codes, words);
    if (lacks) {
      out.element(
          "p", wording.fill("Web.lineLacks", Argument.text(chosen)), "class", "fault lacks");
    }
  }

  /** What was measured the last time; feet put back move every mark, so it is only offered. */
  private void before(String row) {
    String marks = marks(values.before(), row);
    if (!marks.isEmpty()) {
      out.element("p", wording.fill("Web.lastTime", Argument.text(marks)), "class", "note");
    }
  }

  /** The three numbers of a row in short; empty if it has none. */
  public static String marks(Map<String, String> fields, String row) {
    List<String> numbers =
        Stream.of("forward", "rightward", "up")
            .map(key -> fields.getOrDefault(row + key, "-"))
            .toList();
    boolean none = numbers.stream().allMatch(number -> number.equals("-"));
    return none ? "" : String.join(" \u00b7 ", numbers);
  }

  private void stance() {
    control.choice(
        StandFields.KNOWN_PLATE, word("plate"), values.plate().names(), values.plate().names());
    List<String> kinds =
        values.both()
            ? List.of(StandFields.PLATE_PER_FOOT, StandFields.BOTH_ON_ONE)
            : List.of(
                StandFields.FOOT_ON_PLATE, StandFields.PLATE_PER_FOOT, StandFields.BOTH_ON_ONE);
    control.choice(
        StandFields.STANCE, word("stance"), kinds, kinds.stream().map(this::stance).toList());
    if (values.plate().plates().size() > 1) {
      List<String> plates = values.plate().plates();
      control.choice(StandFields.PLATE, word("onPlate"), plates, plates);
      control.choice(StandFields.PLATE_LEFT, word("leftPlate"), plates, plates);
      control.choice(StandFields.PLATE_RIGHT, word("rightPlate"), plates, plates);
    }
    List<String> grounds = List.of("block", "plate", "floor");
    control.choice(
        StandFields.OTHER_FOOT,
        word("otherFoot"),
        grounds,
        grounds.stream().map(on -> wording.word("Ground." + on.toUpperCase(Locale.ROOT))).toList());
    control.number(StandFields.OTHER_HIGHER, word("otherFootBy"), "mm");
    List<String> senses = List.of(StandFields.HIGHER, StandFields.LOWER);
    control.choice(StandFields.OTHER_SENSE, word("otherFootSense"), senses, words("sense", senses));
    if (values.knee()) {
      List<String> answers = List.of("", "no", "yes");
      control.choice(
          StandFields.KNEE_LOCKED,
          word("kneeLocked"),
          answers,
          List.of("", wording.word("Answer.no"), wording.word("Answer.yes")));
      control.words(StandFields.KNEE_MODE, word("kneeMode"));
    }
    worn();
  }

  private void worn() {
    control.words(StandFields.WORN, word("worn"));
    control.number(StandFields.HEEL, word("heelHeight"), "mm");
    control.number(StandFields.BODY_MASS, word("bodyMass"), "kg");
    control.number(StandFields.WALKED, word("walked"), "min");
    control.words(StandFields.COMFORT, word("comfort"));
    control.words(StandFields.SKIN, word("skin"));
  }
}
