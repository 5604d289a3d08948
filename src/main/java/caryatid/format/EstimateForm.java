package caryatid.format;

import caryatid.loadline.Coordinate;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.io.IOException;

/** Values with what is doubted of them. */
final class EstimateForm {
  private static final String DEGREES = "degrees-of-freedom";

  private EstimateForm() {}

  static void write(Estimate estimate, ObjectOut out) throws IOException {
    out.number("value", estimate.value());
    out.list("contributions", estimate.contributions(), EstimateForm::writeContribution);
  }

  static Estimate read(ObjectIn in) {
    return new Estimate(
        in.number("value"), in.list("contributions", EstimateForm::readContribution));
  }

  static void writeCoordinate(Coordinate coordinate, ObjectOut out) throws IOException {
    out.number("mm", coordinate.mm());
    out.list("doubts", coordinate.doubts(), EstimateForm::writeContribution);
  }

  static Coordinate readCoordinate(ObjectIn in) {
    return new Coordinate(in.number("mm"), in.list("doubts", EstimateForm::readContribution));
  }

  /** JSON has no infinity; degrees of freedom that are infinite are left out. */
  private static void writeContribution(Contribution contribution, ObjectOut out)
      throws IOException {
    out.object("source", contribution.source(), EstimateForm::writeSource)
        .number("standard-uncertainty", contribution.standardUncertainty())
        .number("sensitivity", contribution.sensitivity());
    if (contribution.degreesOfFreedom() != Double.POSITIVE_INFINITY) {
      out.number(DEGREES, contribution.degreesOfFreedom());
    }
  }

  private static Contribution readContribution(ObjectIn in) {
    return new Contribution(
        in.object("source", EstimateForm::readSource),
        in.number("standard-uncertainty"),
        in.number("sensitivity"),
        in.numberIfThere(DEGREES).orElse(Double.POSITIVE_INFINITY));
  }

  private static void writeSource(Source source, ObjectOut out) throws IOException {
    out.word("cause", FindingWords.CAUSE, source.cause()).text("of", source.of());
  }

  private static Source readSource(ObjectIn in) {
    return new Source(in.word("cause", FindingWords.CAUSE), in.text("of"));
  }
}
