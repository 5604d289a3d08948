package caryatid.remark;

/**
 * A value inside a problem or a remark, kept as data so that each language can write it its way.
 */
public sealed interface Argument {

  /** Text as it stood in the input, or a name the user gave. */
  record Text(String value) implements Argument {}

  /** A number with its unit, in the unit's own scale. */
  record Quantity(double value, Unit unit) implements Argument {
    /**
     * @throws IllegalArgumentException if the value is not finite
     */
    public Quantity {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("a quantity in a remark must be finite: " + value);
      }
    }
  }

  /** A word of the program's own vocabulary, by its key, for example {@code Plane.SAGITTAL}. */
  record Term(String key) implements Argument {}

  /** Text as it stood in the input. */
  static Argument text(String value) {
    return new Text(value);
  }

  /** What a failure says of itself, in its first line; its kind where it says nothing. */
  static Argument why(Throwable failure) {
    String said = failure.getMessage();
    return new Text(
        said == null || said.isBlank()
            ? failure.getClass().getSimpleName()
            : said.lines().findFirst().orElse(said));
  }

  /** A number with its unit. */
  static Argument of(double value, Unit unit) {
    return new Quantity(value, unit);
  }

  /** A plain count. */
  static Argument count(long value) {
    return new Quantity(value, Unit.COUNT);
  }

  /** One of the program's own terms, worded in the reader's language. */
  static Argument term(Coded term) {
    return new Term(term.code());
  }
}
