package caryatid.exchange;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Optional;
import java.util.Set;

/**
 * Where a clinic's system listens.
 *
 * @param base its address, without a slash at its end, user, query and fragment
 */
public record ServerAddress(URI base) {
  private static final String PLACE = "--to";
  private static final Set<String> THIS_COMPUTER = Set.of("localhost", "127.0.0.1", "[::1]");

  /**
   * What somebody typed.
   *
   * @throws BadInput if it is no address of such a system, or one to which everybody on the way
   *     could read what is sent
   */
  public static ServerAddress of(String typed) throws BadInput {
    URI address = uri(typed.replaceFirst("/+$", "")).orElseThrow(() -> refused(false));
    boolean plain = "http".equals(address.getScheme());
    if (address.getHost() == null
        || address.getRawUserInfo() != null
        || address.getRawQuery() != null
        || address.getRawFragment() != null
        || !(plain || "https".equals(address.getScheme()))) {
      throw refused(false);
    }
    if (plain && !THIS_COMPUTER.contains(address.getHost())) {
      throw refused(true);
    }
    return new ServerAddress(address);
  }

  private static Optional<URI> uri(String typed) {
    try {
      return Optional.of(new URI(typed));
    } catch (URISyntaxException e) {
      return Optional.empty();
    }
  }

  private static BadInput refused(boolean plain) {
    return plain
        ? new BadInput(Problem.at(Place.of(PLACE), ExchangeProblem.NOT_ENCRYPTED))
        : new BadInput(
            Problem.at(
                Place.of(PLACE),
                ExchangeProblem.BAD_ADDRESS,
                Argument.text("https://records.clinic.invalid/fhir")));
  }

  /** What problems are told of. */
  Place place() {
    return Place.of(base.getHost());
  }

  URI at(String path) {
    return path.isEmpty() ? base : URI.create(base + "/" + path);
  }
}
