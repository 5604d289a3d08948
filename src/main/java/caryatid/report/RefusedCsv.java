package caryatid.report;

import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** The states that could not be checked as a table, a row a reason. */
public final class RefusedCsv {
  /** The table's name. */
  public static final String FILE = "refused.csv";

  private static final List<String> HEADER =
      List.of("state", "code", "file", "line", "column", "reason");

  private RefusedCsv() {}

  /**
   * The table, UTF-8 (RFC 4180); without a row if every state was checked.
   *
   * @param wording language of the reasons; the codes are the same in every language
   */
  public static byte[] table(List<BatchPage.State> states, Wording wording) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEADER);
    for (BatchPage.State state : states) {
      state.problems().forEach(problem -> rows.add(row(state.name(), problem, wording)));
    }
    return Csv.file(rows);
  }

  private static List<String> row(String state, Problem problem, Wording wording) {
    Place place = problem.place();
    return List.of(
        Csv.text(state),
        problem.topic().code(),
        Csv.text(place.file()),
        place.line().stream().mapToObj(Integer::toString).findFirst().orElse(""),
        Csv.text(place.column().orElse("")),
        Csv.text(wording.say(problem)));
  }
}
