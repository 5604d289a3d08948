package caryatid.exchange;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/**
 * What a clinic's system lets somebody in by (bearer token, RFC 6750).
 *
 * @param text the token
 */
public record AccessToken(String text) {
  /** The environment variable that holds it. */
  public static final String VARIABLE = "CARYATID_FHIR_TOKEN";

  private static final int LONGEST = 16_384;

  /**
   * A token from a file, without blanks and line ends around it.
   *
   * @throws BadInput if the file cannot be read, or holds none
   */
  public static AccessToken in(NamedBytes file) throws BadInput {
    try {
      String text = new String(file.readAtMost(LONGEST), StandardCharsets.UTF_8);
      return of(text, file.name());
    } catch (IOException e) {
      throw file.unreadable(e);
    }
  }

  /**
   * A token as it stands in a place that is named.
   *
   * @throws BadInput if it is none; it is not repeated
   */
  public static AccessToken of(String text, String place) throws BadInput {
    String token = text.strip();
    if (!token.matches("[A-Za-z0-9._~+/-]+=*")) {
      throw new BadInput(Problem.at(Place.of(place), ExchangeProblem.BAD_TOKEN));
    }
    return new AccessToken(token);
  }

  /** Nothing of it: whoever prints it by mistake tells nobody. */
  @Override
  public String toString() {
    return "an access token";
  }
}
