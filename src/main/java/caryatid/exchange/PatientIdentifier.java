package caryatid.exchange;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.net.URI;
import java.net.URISyntaxException;

/**
 * Whose record it is in the clinic's system. It is given where the record is sent, and nowhere
 * kept.
 *
 * @param system what the value is unique in: an absolute URI
 * @param value the clinic's number for the patient
 */
public record PatientIdentifier(String system, String value) {
  private static final int LONGEST = 200;

  /**
   * What somebody typed as {@code SYSTEM|VALUE}.
   *
   * @throws BadInput if it is not typed so; what was typed is not repeated
   */
  public static PatientIdentifier of(String typed) throws BadInput {
    int mark = typed.indexOf('|');
    if (mark < 1 || !isAbsolute(typed.substring(0, mark)) || !isValue(typed.substring(mark + 1))) {
      throw new BadInput(
          Problem.at(
              Place.of("--patient-identifier"),
              ExchangeProblem.BAD_PATIENT,
              Argument.text("urn:oid:1.2.3.4|12345")));
    }
    return new PatientIdentifier(typed.substring(0, mark), typed.substring(mark + 1));
  }

  private static boolean isAbsolute(String system) {
    try {
      return new URI(system).isAbsolute();
    } catch (URISyntaxException e) {
      return false;
    }
  }

  private static boolean isValue(String value) {
    return value.length() <= LONGEST && value.matches("[^\\s|\\p{Cntrl}]+( [^\\s|\\p{Cntrl}]+)*");
  }

  /** Nothing of it: whoever prints it by mistake tells nobody. */
  @Override
  public String toString() {
    return "a patient identifier";
  }
}
