package caryatid.recording.table;

import caryatid.recording.model.ImportFact;
import caryatid.recording.model.UnderstoodFact;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a stage of reading has to tell. Immutable: adding a message gives a new value.
 *
 * @param file the file's name as the user gave it
 * @param problems what is wrong or open, up to {@link BadInput#CAP}
 * @param remarks what the reader of a result should know
 * @param understood what was understood and from where
 */
public record StageMessages(
    String file, List<Problem> problems, List<Remark> remarks, List<UnderstoodFact> understood) {
  public StageMessages {
    problems = List.copyOf(problems);
    remarks = List.copyOf(remarks);
    understood = List.copyOf(understood);
  }

  /** Nothing found in a file yet. */
  public static StageMessages none(String file) {
    return new StageMessages(file, List.of(), List.of(), List.of());
  }

  /** These and a problem; one beyond the cap is left out. */
  public StageMessages withProblem(Place place, Topic topic, Argument... arguments) {
    return full()
        ? this
        : new StageMessages(
            file, plus(problems, Problem.at(place, topic, arguments)), remarks, understood);
  }

  /** These and a problem that concerns the file, not a line of it. */
  public StageMessages withProblem(Topic topic, Argument... arguments) {
    return withProblem(Place.of(file), topic, arguments);
  }

  /** These and problems, up to the cap. */
  public StageMessages withProblems(List<Problem> more) {
    return and(new StageMessages(file, more, List.of(), List.of()));
  }

  /** These and a remark. */
  public StageMessages withRemark(Topic topic, Argument... arguments) {
    return new StageMessages(
        file, problems, plus(remarks, Remark.of(topic, arguments)), understood);
  }

  /** These and something understood. */
  public StageMessages withFact(
      ImportFact aspect, UnderstoodFact.Basis basis, Argument... arguments) {
    UnderstoodFact fact = new UnderstoodFact(aspect, List.of(arguments), basis);
    return new StageMessages(file, problems, remarks, plus(understood, fact));
  }

  /** These and what a later step found; its problems beyond the cap are left out. */
  public StageMessages and(StageMessages later) {
    if (later.problems.isEmpty() && later.remarks.isEmpty() && later.understood.isEmpty()) {
      return this;
    }
    List<Problem> all = joined(problems, later.problems);
    return new StageMessages(
        file,
        all.subList(0, Math.min(BadInput.CAP, all.size())),
        joined(remarks, later.remarks),
        joined(understood, later.understood));
  }

  /** These without the problems of a kind. */
  public StageMessages without(Topic topic) {
    return new StageMessages(
        file, problems.stream().filter(p -> p.topic() != topic).toList(), remarks, understood);
  }

  /** These without what was understood of some kinds. */
  public StageMessages without(Set<ImportFact> aspects) {
    return new StageMessages(
        file,
        problems,
        remarks,
        understood.stream().filter(fact -> !aspects.contains(fact.aspect())).toList());
  }

  /** Whether a further problem would be left out. */
  boolean full() {
    return problems.size() >= BadInput.CAP;
  }

  /** Whether there is no problem. */
  public boolean clean() {
    return problems.isEmpty();
  }

  /** Whether there is a problem of a kind. */
  public boolean has(Topic topic) {
    return problems.stream().anyMatch(p -> p.topic() == topic);
  }

  private static <T> List<T> plus(List<T> list, T one) {
    return joined(list, List.of(one));
  }

  private static <T> List<T> joined(List<T> list, List<T> more) {
    return Stream.concat(list.stream(), more.stream()).toList();
  }
}
