package caryatid.usecase.stand;

import caryatid.entry.RecordOpening;
import caryatid.entry.form.Choices;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes the trial sheet of what was typed. Numbers are typed without a sign; the sense that goes
 * with them says in front or behind, right or left.
 */
final class SheetOfFields {
  /** Notes whose fields are named as the sheet's keys are. */
  private static final List<String> NOTES =
      List.of(
          StandFields.CHANGED,
          StandFields.CONCLUSION,
          StandFields.COMFORT,
          StandFields.SKIN,
          StandFields.REASON,
          StandFields.NEXT);

  private final Map<String, String> fields;
  private final boolean hand;
  private final SheetText sheet = new SheetText();

  private SheetOfFields(Map<String, String> fields, boolean hand) {
    this.fields = fields;
    this.hand = hand;
  }

  /**
   * The sheet.
   *
   * @param opening whose prosthesis it is
   * @param fields what was typed, by the names that {@link StandFields} states
   * @param by initials of who measured
   * @param hand whether the clinic measured how well it marks, which counts where nothing is typed
   */
  static SheetText of(RecordOpening opening, Map<String, String> fields, String by, boolean hand) {
    SheetOfFields made = new SheetOfFields(fields, hand);
    made.head(opening);
    made.stance();
    made.rows("landmarks", StandFields.LANDMARK, made::landmark);
    made.rows("targets", StandFields.TARGET, made::target);
    made.notes(by);
    made.answers();
    return made.sheet;
  }

  private Optional<String> typed(String name) {
    return Optional.ofNullable(fields.get(name)).map(String::strip).filter(t -> !t.isEmpty());
  }

  private void head(RecordOpening opening) {
    sheet.line("trial-sheet: 1", "");
    sheet.words("wearer", Optional.of(opening.wearer()), "");
    sheet.line("at: " + typed(StandFields.AT).map(SheetText::time).orElse(""), StandFields.AT);
    sheet.line("side: " + Choices.PROSTHETIC_SIDE.code(opening.side()), "");
    sheet.line("level: " + Choices.LEVEL.code(opening.level()), "");
    sheet.number("body-mass-kg", typed(StandFields.BODY_MASS), false, StandFields.BODY_MASS);
    sheet.line("hands: " + typed(StandFields.HANDS).orElse("free"), StandFields.HANDS);
    if (opening.level().prostheticKnee()) {
      sheet.line("knee:", StandFields.KNEE_LOCKED);
      sheet.words("  mode", typed(StandFields.KNEE_MODE), StandFields.KNEE_MODE);
      typed(StandFields.KNEE_LOCKED)
          .ifPresent(locked -> sheet.line("  locked: " + locked, StandFields.KNEE_LOCKED));
    }
    sheet.line("footwear:", StandFields.WORN);
    sheet.words("  worn", typed(StandFields.WORN), StandFields.WORN);
    boolean lower = typed(StandFields.HEEL).filter(t -> t.startsWith("-")).isPresent();
    Optional<String> heel = typed(StandFields.HEEL).map(t -> lower ? t.substring(1) : t);
    sheet.number("  heel-height-mm", heel, lower, StandFields.HEEL);
    sheet.number("minutes-walked", typed(StandFields.WALKED), false, StandFields.WALKED);
  }

  private void stance() {
    String kind = typed(StandFields.STANCE).orElse(StandFields.FOOT_ON_PLATE);
    sheet.line("stance:", StandFields.STANCE);
    sheet.line("  kind: " + kind, StandFields.STANCE);
    if (kind.equals(StandFields.PLATE_PER_FOOT)) {
      sheet.words("  left", typed(StandFields.PLATE_LEFT), StandFields.PLATE_LEFT);
      sheet.words("  right", typed(StandFields.PLATE_RIGHT), StandFields.PLATE_RIGHT);
      return;
    }
    sheet.words("  plate", typed(StandFields.PLATE), StandFields.PLATE);
    if (kind.equals(StandFields.FOOT_ON_PLATE)) {
      sheet.line("other-foot:", StandFields.OTHER_FOOT);
      sheet.words("  on", typed(StandFields.OTHER_FOOT), StandFields.OTHER_FOOT);
      sheet.number(
          "  height-difference-mm",
          typed(StandFields.OTHER_HIGHER),
          typed(StandFields.OTHER_SENSE).equals(Optional.of(StandFields.LOWER)),
          StandFields.OTHER_HIGHER);
    }
  }

  /** Writes a row. */
  private interface RowWriting {
    void write(String row);
  }

  private void rows(String key, String row, RowWriting writing) {
    boolean begun = false;
    for (int i = 1; i <= StandFields.MOST_ROWS; i++) {
      String name = row + "[" + i + "].";
      if (StandFields.isTyped(fields, name)) {
        if (!begun) {
          sheet.line(key + ":", "");
          begun = true;
        }
        writing.write(name);
      }
    }
  }

  private void landmark(String row) {
    sheet.words("  - name", typed(row + "name").or(() -> Optional.of("?")), row + "name");
    sheet.words("    side", typed(row + "side"), row + "side");
    if (typed(row + "name").filter(StandFields.KNOWN_LANDMARKS::contains).isEmpty()) {
      sheet.line("    kind: other", row + "name");
    }
    distance(row, "forward", StandFields.BEHIND);
    distance(row, "rightward", StandFields.LEFT_OF);
    sheet.number("    up-mm", typed(row + "up"), false, row + "up");
    Optional<String> usual = hand ? Optional.empty() : Optional.of(StandFields.MARKING_MM);
    Optional<String> marking = typed(row + "marking").or(() -> usual);
    sheet.number("    marking-mm", marking, false, row + "marking");
    sheet.numbers("    read-at-s", typed(row + "read-at"), row + "read-at");
    sheet.words("    is", typed(row + "is"), row + "is");
  }

  private void distance(String row, String way, String negative) {
    Optional<String> mm = typed(row + way);
    boolean minus = typed(row + way + "-sense").equals(Optional.of(negative));
    sheet.number("    " + way + "-mm", mm, minus, row + way);
    if (mm.isPresent()) {
      sheet.words("    " + way + "-from", typed(row + way + "-from"), row + way + "-from");
    }
  }

  private void target(String row) {
    sheet.line("  - plane: " + plane(row), row + "sense");
    sheet.words("    landmark", typed(row + "landmark"), row + "landmark");
    sheet.words("    side", typed(row + "side"), row + "side");
    boolean minus = typed(row + "sense").filter(StandFields.NEGATIVE::contains).isPresent();
    sheet.number("    recommended-mm", typed(row + "recommended"), minus, row + "recommended");
    sheet.number("    below-mm", typed(row + "below"), false, row + "below");
    sheet.number("    above-mm", typed(row + "above"), false, row + "above");
    sheet.words("    source", typed(row + "source"), row + "source");
    typed(row + "meant-for")
        .ifPresent(line -> sheet.line("    meant-for: " + line, row + "meant-for"));
    sheet.words("    valid-for", typed(row + "valid-for"), row + "valid-for");
  }

  /** A direction is of one plane. */
  private String plane(String row) {
    return typed(row + "sense")
        .map(sense -> StandFields.FRONTAL.contains(sense) ? "frontal" : "sagittal")
        .or(() -> typed(row + "plane"))
        .orElse("sagittal");
  }

  private void notes(String by) {
    Optional<String> practitioner = Optional.of(by).filter(b -> !b.isBlank());
    Optional<String> role = typed(StandFields.ROLE);
    if (practitioner.or(() -> role).isEmpty() && NOTES.stream().allMatch(n -> typed(n).isEmpty())) {
      return;
    }
    sheet.line("notes:", "");
    for (String name : NOTES) {
      sheet.words("  " + name, typed(name), name);
    }
    sheet.words("  practitioner", practitioner, "");
    sheet.words("  role", role, StandFields.ROLE);
  }

  private void answers() {
    boolean begun = false;
    for (int i = 1; i <= StandFields.MOST_ROWS; i++) {
      Optional<String> answer = typed(StandFields.MEANT + "[" + i + "]");
      if (answer.isPresent()) {
        if (!begun) {
          sheet.line("as-meant:", "");
          begun = true;
        }
        sheet.line("  - '" + answer.get().replace("'", "''") + "'", "");
      }
    }
  }
}
