package caryatid.recording.model;

import caryatid.remark.Argument;
import caryatid.remark.Coded;
import java.util.List;

/**
 * One thing that is understood of an export, and from where.
 *
 * @param aspect what
 * @param arguments the values its sentence needs, in the sentence's order
 * @param basis from where it is known
 */
public record UnderstoodFact(ImportFact aspect, List<Argument> arguments, Basis basis) {
  /** From where something is known. */
  public enum Basis implements Coded {
    /** The file says so. */
    STATED("Basis.STATED"),
    /** The plate description says so. */
    DESCRIBED("Basis.DESCRIBED"),
    /** Concluded from what the file holds. */
    CONCLUDED("Basis.CONCLUDED");

    private final String code;

    Basis(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  public UnderstoodFact {
    arguments = List.copyOf(arguments);
  }
}
