package caryatid.fitting;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Stand;
import caryatid.entry.BodyMassSource;
import caryatid.entry.EntryKind;
import caryatid.entry.KneeLock;
import caryatid.entry.Range;
import caryatid.entry.RecordOpening;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.entry.form.Answers;
import caryatid.entry.form.Choices;
import caryatid.entry.form.FormReader;
import caryatid.format.KnownWords;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.recording.model.ForceUnit;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.KneeSetting;
import caryatid.sheet.Notes;
import caryatid.sheet.ProstheticSide;
import caryatid.sheet.TrialSheet;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Estimate;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes the entry of a stand from its result; the result itself is kept with the entry as a file.
 */
public final class StandEntry {
  /** So many that rounding once more for a reader gives what rounding at once gives. */
  private static final int DECIMALS = 6;

  private StandEntry() {}

  /**
   * The addition for a stand.
   *
   * @param state the stands of one alignment state and their findings; dated as their sheet is
   * @param by initials of who adds it
   * @param files recordings, description, sheets, result and report
   * @throws BadInput if a number is one that no entry holds, such as a body mass of 8200 kg
   */
  public static Addition addition(AlignmentState state, String by, List<Addition.Attached> files)
      throws BadInput {
    return new Addition(state.trial().at(), by, Optional.empty(), content(state), files);
  }

  /**
   * Requires that a stand is of a record's own prosthesis.
   *
   * @throws BadInput if the sheet names another wearer, side or level than the record's opening
   */
  public static void requireOwn(FittingRecord record, TrialSheet trial) throws BadInput {
    Optional<RecordOpening> opening = record.opening();
    if (opening.isPresent() && !isOf(opening.get(), trial)) {
      String stood = whose(trial.wearer(), trial.side(), trial.level());
      String kept = whose(opening.get());
      throw new BadInput(
          Problem.at(
              Place.of(record.code().text()),
              RecordProblem.OTHER_PROSTHESIS,
              Argument.text(stood),
              Argument.text(kept)));
    }
  }

  private static boolean isOf(RecordOpening opening, TrialSheet trial) {
    return opening.wearer().equals(trial.wearer())
        && trial.side().sides().stream().allMatch(leg -> opening.level(leg) == trial.level())
        && (opening.side() == ProstheticSide.BOTH || opening.side() == trial.side());
  }

  private static String whose(RecordOpening opening) {
    if (opening.levels().size() == 1) {
      return whose(opening.wearer(), opening.side(), opening.levels().get(0));
    }
    return Stream.concat(
            Stream.of(opening.wearer()),
            opening.side().sides().stream()
                .map(leg -> Choices.SIDE.code(leg) + " " + Choices.LEVEL.code(opening.level(leg))))
        .collect(Collectors.joining(", "));
  }

  private static String whose(String wearer, ProstheticSide side, AmputationLevel level) {
    return String.join(", ", wearer, Choices.PROSTHETIC_SIDE.code(side), Choices.LEVEL.code(level));
  }

  private static StandSummary content(AlignmentState state) throws BadInput {
    TrialSheet trial = state.trial();
    Notes notes = trial.notes();
    Mass mass = mass(state);
    BigDecimal heelMm =
        number("heel-height-mm", trial.footwear().heelHeightMm(), Range.EFFECTIVE_HEEL_MM);
    Optional<BigDecimal> share = share(state).map(part -> rounded(100 * part, 1));
    if (share.isPresent()) {
      require("load-share-percent", share.get(), Range.PERCENT);
    }
    if (mass.kg().isPresent()) {
      require("body-mass-kg", mass.kg().get(), Range.BODY_MASS_KG);
    }
    List<StandSummary.Found> findings = new ArrayList<>();
    for (Finding finding : state.findings()) {
      findings.add(found("findings[" + (findings.size() + 1) + "].", finding));
    }
    return new StandSummary(
        said(notes.lastChange()),
        said(notes.reason()),
        said(Optional.of(trial.footwear().description())),
        Optional.of(heelMm),
        trial.knee().map(StandEntry::mode),
        mass.kg(),
        mass.from(),
        share,
        findings,
        said(notes.conclusion()),
        said(notes.comfort()),
        said(notes.skin()),
        said(notes.nextStep()),
        Optional.empty());
  }

  private static StandSummary.Found found(String path, Finding finding) throws BadInput {
    Offset offset = finding.offset();
    Target target = finding.target();
    return new StandSummary.Found(
        offset.at(),
        number(path + "offset-mm", offset.mm().value(), Range.OFFSET_MM),
        number(path + "expanded-mm", offset.mm().expanded(Estimate.COVERAGE), Range.HEIGHT_MM),
        number(path + "recommended-mm", target.recommendedMm(), Range.OFFSET_MM),
        number(path + "below-mm", target.belowMm(), Range.HEIGHT_MM),
        number(path + "above-mm", target.aboveMm(), Range.HEIGHT_MM),
        finding.verdict(),
        target.source(),
        said(target.condition()).map(StandEntry::validFor));
  }

  /** Words that say whether a knee is locked are understood in every language. */
  private static TermOrText<KneeLock> validFor(String words) {
    Answers.Value.Name name = KnownWords.today().kneeLock(words);
    return new TermOrText<>(name.code().map(KneeLock.class::cast), name.text());
  }

  private static TermOrText<KneeLock> mode(KneeSetting knee) {
    KneeLock lock = knee.locked() ? KneeLock.LOCKED : KneeLock.NOT_LOCKED;
    return new TermOrText<>(Optional.of(lock), said(knee.mode()).orElse(""));
  }

  /** A body mass and where it comes from; both or none. */
  private record Mass(Optional<BigDecimal> kg, Optional<BodyMassSource> from) {
    static Mass of(double kg, BodyMassSource from) {
      return new Mass(Optional.of(rounded(kg, 1)), Optional.of(from));
    }
  }

  /** What the plates measured where they carried the whole body, else what the sheet says. */
  private static Mass mass(AlignmentState state) {
    var measured =
        state.stands().stream()
            .flatMap(s -> s.standing().load(LoadLineOwner.WHOLE_BODY).stream())
            .flatMap(load -> load.upN().stream())
            .mapToDouble(Estimate::value)
            .average();
    OptionalDouble written = state.trial().bodyMassKg();
    if (measured.isPresent()) {
      return Mass.of(measured.getAsDouble() / ForceUnit.STANDARD_GRAVITY, BodyMassSource.PLATE);
    }
    return written.isPresent()
        ? Mass.of(written.getAsDouble(), BodyMassSource.SHEET)
        : new Mass(Optional.empty(), Optional.empty());
  }

  /** The mean share of the prosthetic side, where there is one such side. */
  private static Optional<Double> share(AlignmentState state) {
    List<Side> sides = state.trial().side().sides();
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

  private static Optional<String> said(Optional<String> text) {
    return text.filter(t -> !t.isBlank());
  }

  private static BigDecimal number(String key, double value, Range range) throws BadInput {
    BigDecimal number = rounded(value, DECIMALS);
    require(key, number, range);
    return number;
  }

  private static void require(String key, BigDecimal number, Range range) throws BadInput {
    if (!range.holds(number.doubleValue())) {
      throw new BadInput(FormReader.outside(Place.of(EntryKind.STAND.key()), key, number, range));
    }
  }

  /** Insignificant digits are left out; the result that is kept with the entry has them all. */
  private static BigDecimal rounded(double value, int decimals) {
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
  }
}
