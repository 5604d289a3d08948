package caryatid.fitting;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Stand;
import caryatid.entry.EntryKind;
import caryatid.entry.MassFrom;
import caryatid.entry.form.Answers;
import caryatid.entry.form.Field;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.recording.ForceUnit;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.KneeSetting;
import caryatid.sheet.Notes;
import caryatid.sheet.ProstheticSide;
import caryatid.sheet.TrialSheet;
import caryatid.standing.LineOf;
import caryatid.uncertainty.Estimate;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes the entry of a stand from what was found; the whole result goes with it as a file. */
public final class Stands {
  /** So many that rounding once more for a reader gives what rounding at once gives. */
  private static final int DECIMALS = 6;

  private static final double COVERAGE = 0.95;

  private final Map<String, Answers.Value> values = new LinkedHashMap<>();

  private Stands() {}

  /**
   * The addition for a stand.
   *
   * @param state the stands of one alignment state and their findings; dated as their sheet is
   * @param by initials of who adds it
   * @param files recordings, description, sheets, result and report
   */
  public static Addition addition(AlignmentState state, String by, List<Addition.Attached> files) {
    Stands stands = new Stands();
    stands.fill(state);
    return new Addition(
        EntryKind.STAND,
        state.stands().get(0).trial().at(),
        by,
        Optional.empty(),
        new Answers(stands.values),
        files);
  }

  /**
   * Requires that a stand is of a record's own prosthesis.
   *
   * @throws BadInput if the sheet names another wearer, side or level than the record's opening
   */
  public static void requireOwn(FittingRecord record, TrialSheet trial) throws BadInput {
    Optional<Answers> opening = record.opening();
    if (opening.isPresent() && !isOf(opening.get(), trial)) {
      String stood = whose(trial.wearer(), Field.word(trial.side()), Field.word(trial.level()));
      String kept =
          whose(
              opening.get().words("wearer").orElse(""),
              opening.get().words("side").orElse(""),
              opening.get().words("level").orElse(""));
      throw new BadInput(
          Problem.at(
              Place.of(record.code().text()),
              Keeping.OTHER_PROSTHESIS,
              Argument.text(stood),
              Argument.text(kept)));
    }
  }

  private static boolean isOf(Answers opening, TrialSheet trial) {
    String side = opening.words("side").orElse("");
    return opening.words("wearer").filter(trial.wearer()::equals).isPresent()
        && opening.words("level").filter(Field.word(trial.level())::equals).isPresent()
        && (side.equals(Field.word(ProstheticSide.BOTH)) || side.equals(Field.word(trial.side())));
  }

  private static String whose(String wearer, String side, String level) {
    return String.join(", ", wearer, side, level);
  }

  private void fill(AlignmentState state) {
    TrialSheet trial = state.stands().get(0).trial();
    Notes notes = trial.notes();
    words("changed", notes.lastChange());
    words("why", notes.reason());
    words("footwear", Optional.of(trial.footwear().description()));
    number("heel-height-mm", trial.footwear().heelHeightMm());
    words("knee-mode", trial.knee().map(Stands::mode));
    bodyMass(state);
    share(state).ifPresent(share -> number("load-share-percent", 100 * share, 1));
    if (!state.findings().isEmpty()) {
      values.put(
          "findings", new Answers.Value.Rows(state.findings().stream().map(Stands::row).toList()));
    }
    words("conclusion", notes.conclusion());
    words("comfort", notes.comfort());
    words("skin", notes.skin());
    words("next-step", notes.nextStep());
  }

  private static Answers row(Finding finding) {
    Stands row = new Stands();
    row.words("plane", Optional.of(Field.word(finding.offset().plane())));
    row.words("side", Optional.of(Field.word(finding.offset().side())));
    row.words("landmark", Optional.of(finding.offset().landmark()));
    row.number("offset-mm", finding.offset().mm().value());
    row.number("expanded-mm", finding.offset().mm().expanded(COVERAGE));
    row.number("recommended-mm", finding.target().recommendedMm());
    row.number("below-mm", finding.target().belowMm());
    row.number("above-mm", finding.target().aboveMm());
    row.words("result", Optional.of(Field.word(finding.verdict())));
    row.words("source", Optional.of(finding.target().source()));
    row.words("valid-for", finding.target().condition());
    return new Answers(row.values);
  }

  private static String mode(KneeSetting knee) {
    String locked = knee.locked() ? "locked" : "not locked";
    return knee.mode().map(mode -> locked + ", " + mode).orElse(locked);
  }

  /** What the plates measured where they carried the whole body, else what the sheet says. */
  private void bodyMass(AlignmentState state) {
    var measured =
        state.stands().stream()
            .flatMap(s -> s.standing().load(LineOf.WHOLE_BODY).stream())
            .flatMap(load -> load.upN().stream())
            .mapToDouble(Estimate::value)
            .average();
    OptionalDouble written = state.stands().get(0).trial().bodyMassKg();
    if (measured.isPresent()) {
      mass(measured.getAsDouble() / ForceUnit.STANDARD_GRAVITY, MassFrom.PLATE);
    } else if (written.isPresent()) {
      mass(written.getAsDouble(), MassFrom.SHEET);
    }
  }

  private void mass(double kg, MassFrom from) {
    number("body-mass-kg", kg, 1);
    words("body-mass-from", Optional.of(Field.word(from)));
  }

  /** The mean share of the prosthetic side, where there is one such side. */
  private static Optional<Double> share(AlignmentState state) {
    List<Side> sides = state.stands().get(0).trial().side().sides();
    if (sides.size() != 1) {
      return Optional.empty();
    }
    return state.stands().stream()
        .map(Stand::standing)
        .flatMap(s -> Optional.ofNullable(s.share().get(sides.get(0))).stream())
        .mapToDouble(Estimate::value)
        .average()
        .stream()
        .boxed()
        .findFirst();
  }

  private void words(String key, Optional<String> text) {
    text.filter(t -> !t.isBlank()).ifPresent(t -> values.put(key, new Answers.Value.Words(t)));
  }

  private void number(String key, double value) {
    number(key, value, DECIMALS);
  }

  /** Digits that say nothing are left out; the result beside the entry has them all. */
  private void number(String key, double value, int decimals) {
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
    values.put(key, new Answers.Value.Amount(rounded.stripTrailingZeros()));
  }
}
