package caryatid.sheet.yaml;

import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Topic;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;

/** A single value as it stands in a YAML file. */
public final class YamlScalar {
  private static final int SHOWN = 60;

  private final String key;
  private final String text;
  private final boolean plain;
  private final Place place;
  private final ProblemList troubles;

  YamlScalar(String key, String text, boolean plain, Place place, ProblemList troubles) {
    this.key = key;
    this.text = text;
    this.plain = plain;
    this.place = place;
    this.troubles = troubles;
  }

  /** The text, without quotes and without blanks around it. */
  public String text() {
    return text.strip();
  }

  /** Whether it stands without quotes. */
  public boolean plain() {
    return plain;
  }

  /** Where it stands. */
  public Place place() {
    return place;
  }

  /** Notes a problem whose sentence names the key as {0} and the text found as {1}. */
  public <T> Optional<T> refuse(Topic topic, String... more) {
    Stream<String> first = Stream.of(key, shown());
    Argument[] arguments =
        Stream.concat(first, Arrays.stream(more)).map(Argument::text).toArray(Argument[]::new);
    troubles.add(Problem.at(place, topic, arguments));
    return Optional.empty();
  }

  private String shown() {
    String line = text().replaceAll("\\s+", " ");
    return line.length() <= SHOWN ? line : line.substring(0, SHOWN) + "...";
  }
}
