package caryatid.usecase.prove;

import caryatid.clinic.Clinic;
import caryatid.clinic.ClinicFile;
import caryatid.clinic.MeasuredDoubt;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.remark.Unit;
import caryatid.repeatability.FeetPlacements;
import caryatid.repeatability.RepeatedMarks;
import caryatid.sheet.MeasuredSection;
import caryatid.sheet.MeasuredSection.KnownTo;
import caryatid.uncertainty.SampleVariance;
import caryatid.usecase.Inputs;
import caryatid.usecase.Records;
import caryatid.wording.Wording;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/** What a clinic measured of its own hands, in place of what is stated or assumed. */
public final class MeasuredHands {
  private static final MathContext DIGITS = new MathContext(5);

  private MeasuredHands() {}

  /**
   * Remembers how well a hand marks landmarks.
   *
   * @param marks the same landmarks marked several times (YAML)
   * @throws BadInput if they cannot be used, or what the clinic remembers cannot be read
   * @throws StoreFailure if it cannot be written
   */
  public static MeasuredDoubt rememberHand(Records records, NamedBytes marks)
      throws BadInput, StoreFailure {
    RepeatedMarks read = RepeatedMarks.read(marks);
    double mm = Math.sqrt(read.variance().variance());
    return remember(records, MeasuredDoubt.What.HAND, read.by(), read.at(), mm, read.variance());
  }

  /**
   * Remembers how far feet are turned on the plate.
   *
   * @param placements several placements (YAML)
   * @throws BadInput if they cannot be used, or what the clinic remembers cannot be read
   * @throws StoreFailure if it cannot be written
   */
  public static MeasuredDoubt rememberTurn(Records records, NamedBytes placements)
      throws BadInput, StoreFailure {
    FeetPlacements read = FeetPlacements.read(placements);
    double degrees = Math.toDegrees(Math.sqrt(read.variance().variance()));
    return remember(
        records, MeasuredDoubt.What.TURN, read.by(), read.at(), degrees, read.variance());
  }

  private static MeasuredDoubt remember(
      Records records,
      MeasuredDoubt.What kind,
      String by,
      OffsetDateTime at,
      double value,
      SampleVariance known)
      throws BadInput, StoreFailure {
    MeasuredDoubt doubt =
        new MeasuredDoubt(
            kind, by, at.toLocalDate(), rounded(value), rounded(known.degreesOfFreedom()));
    ClinicFile file = new ClinicFile(records.folder());
    file.write(file.read().with(doubt));
    return doubt;
  }

  private static BigDecimal rounded(double number) {
    return new BigDecimal(number).round(DIGITS);
  }

  /**
   * What is remembered.
   *
   * @throws BadInput if it cannot be read
   */
  public static List<MeasuredDoubt> all(Records records) throws BadInput {
    return new ClinicFile(records.folder()).read().doubts();
  }

  /**
   * The inputs with what was measured in the sheet, as far as the sheet does not hold it; it is
   * kept with it, so that a report is checked again without the clinic.
   *
   * @throws BadInput if what the clinic remembers or the sheet cannot be read
   */
  static Inputs complete(Records records, Inputs inputs) throws BadInput {
    Clinic clinic = new ClinicFile(records.folder()).read();
    if (clinic.doubts().isEmpty()) {
      return inputs;
    }
    MeasuredSection measured =
        new MeasuredSection(
            pooled(clinic, MeasuredDoubt.What.HAND), pooled(clinic, MeasuredDoubt.What.TURN));
    return inputs.withSheet(measured.into(inputs.sheet().readAll()));
  }

  /** Whether it was measured how well landmarks are marked; not if that cannot be read. */
  public static boolean isMarking(Records records) {
    try {
      return all(records).stream().anyMatch(d -> d.kind() == MeasuredDoubt.What.HAND);
    } catch (BadInput e) {
      return false;
    }
  }

  /** Each as a line. */
  public static List<String> lines(List<MeasuredDoubt> doubts, Wording wording) {
    return doubts.stream().map(doubt -> line(doubt, wording)).toList();
  }

  private static String line(MeasuredDoubt doubt, Wording wording) {
    boolean hand = doubt.kind() == MeasuredDoubt.What.HAND;
    return wording.fill(
        hand ? "Hands.hand" : "Hands.turn",
        Argument.text(doubt.by()),
        Argument.of(doubt.value().doubleValue(), hand ? Unit.MM : Unit.DEG),
        Argument.count(doubt.degreesOfFreedom().longValue()),
        Argument.text(doubt.day().toString()));
  }

  /** All hands of the clinic as one, each weighing as many degrees of freedom as it has. */
  static Optional<KnownTo> pooled(Clinic clinic, MeasuredDoubt.What kind) {
    List<SampleVariance> variances =
        clinic.doubts().stream()
            .filter(doubt -> doubt.kind() == kind)
            .map(
                doubt ->
                    new SampleVariance(
                        Math.pow(doubt.value().doubleValue(), 2),
                        doubt.degreesOfFreedom().doubleValue()))
            .toList();
    if (variances.isEmpty()) {
      return Optional.empty();
    }
    SampleVariance all = SampleVariance.pooled(variances);
    return Optional.of(new KnownTo(Math.sqrt(all.variance()), all.degreesOfFreedom()));
  }
}
