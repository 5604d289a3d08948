package caryatid.samples;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is true of one load line of one recording, as {@code truth.csv} says it.
 *
 * @param recording the file's name
 * @param of {@code left foot}, {@code right foot} or {@code whole body}
 * @param numbers by the columns of {@link #HEADER} after the second
 */
record Truth(String recording, String of, List<Double> numbers) {
  static final String HEADER =
      "recording,of,state-right-mm,state-anterior-mm,stand-right-mm,stand-anterior-mm,"
          + "from-s,to-s,realised-right-mm,realised-anterior-mm,realised-up-n";

  /**
   * The truth about a stand.
   *
   * @param state the person as they stand on average over many tries
   * @param stand this try
   * @param fromS start of the settled part, s from the first sample
   * @param toS its end, s, that sample not included
   */
  static List<Truth> of(String recording, Person state, Stand stand, double fromS, double toS) {
    Person now = stand.person();
    FootTrace whole = stand.whole();
    Stretch part = new Stretch(recording, stand.rateHz(), fromS, toS);
    return List.of(
        part.truth("left foot", at(state.left()), at(now.left()), stand.left()),
        part.truth("right foot", at(state.right()), at(now.right()), stand.right()),
        part.truth("whole body", at(state), at(now), whole));
  }

  /** A line of the file. */
  String line() {
    return Stream.concat(Stream.of(recording, of), numbers.stream().map(n -> Digits.write(n, 5)))
        .collect(Collectors.joining(","));
  }

  private static List<Double> at(Foothold foot) {
    return List.of(foot.rightMm(), foot.anteriorMm());
  }

  private static List<Double> at(Person person) {
    return List.of(person.rightMm(), person.anteriorMm());
  }

  private record Stretch(String recording, double rateHz, double fromS, double toS) {

    Truth truth(String of, List<Double> state, List<Double> stand, FootTrace trace) {
      int from = (int) StrictMath.round(fromS * rateHz);
      int to = (int) StrictMath.round(toS * rateHz);
      List<Double> realised =
          List.of(
              trace.mean(trace.rightMm(), from, to),
              trace.mean(trace.anteriorMm(), from, to),
              trace.meanUpN(from, to));
      return new Truth(
          recording,
          of,
          Stream.of(state, stand, List.of(fromS, toS), realised).flatMap(List::stream).toList());
    }
  }
}
