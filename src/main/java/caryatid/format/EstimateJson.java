package caryatid.format;

import caryatid.loadline.Coordinate;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.io.IOException;

/** Values with their uncertainty budgets in JSON. */
final class EstimateJson {
  private static final String DEGREES = "degrees-of-freedom";

  private EstimateJson() {}

  static void write(Estimate estimate, JsonObjectWriter out) throws IOException {
    out.number("value", estimate.value());
    out.list("contributions", estimate.contributions(), EstimateJson::writeContribution);
  }

  static Estimate read(JsonObjectReader in) {
    return new Estimate(
        in.number("value"), in.list("contributions", EstimateJson::readContribution));
  }

  static void writeCoordinate(Coordinate coordinate, JsonObjectWriter out) throws IOException {
    out.number("mm", coordinate.mm());
    out.list("doubts", coordinate.doubts(), EstimateJson::writeContribution);
  }

  static Coordinate readCoordinate(JsonObjectReader in) {
    return new Coordinate(in.number("mm"), in.list("doubts", EstimateJson::readContribution));
  }

  /** JSON has no infinity; degrees of freedom that are infinite are left out. */
  private static void writeContribution(Contribution contribution, JsonObjectWriter out)
      throws IOException {
    out.object("source", contribution.source(), EstimateJson::writeSource)
        .number("standard-uncertainty", contribution.standardUncertainty())
        .number("sensitivity", contribution.sensitivity());
    if (contribution.degreesOfFreedom() != Double.POSITIVE_INFINITY) {
      out.number(DEGREES, contribution.degreesOfFreedom());
    }
  }

  private static Contribution readContribution(JsonObjectReader in) {
    return new Contribution(
        in.object("source", EstimateJson::readSource),
        in.number("standard-uncertainty"),
        in.number("sensitivity"),
        in.numberIfThere(DEGREES).orElse(Double.POSITIVE_INFINITY));
  }

  private static void writeSource(Source source, JsonObjectWriter out) throws IOException {
    out.word("cause", FindingSpellings.CAUSE, source.cause()).text("of", source.of());
  }

  private static Source readSource(JsonObjectReader in) {
    return new Source(in.word("cause", FindingSpellings.CAUSE), in.text("of"));
  }
}
