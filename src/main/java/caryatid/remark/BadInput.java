package caryatid.remark;

import java.util.List;
import java.util.stream.Collectors;

/** The input cannot be used: every problem found in it, up to a cap. */
public final class BadInput extends Exception {
  private static final long serialVersionUID = 1L;

  /** The largest number of problems that are listed; collecting stops there. */
  public static final int CAP = 50;

  private final transient List<Problem> problems;
  private final transient List<Question> questions;

  /**
   * @param problems at least one; in the order of the input
   * @throws IllegalArgumentException if there is none
   */
  public BadInput(List<Problem> problems) {
    this(problems, List.of());
  }

  private BadInput(List<Problem> problems, List<Question> questions) {
    super(problems.stream().map(p -> p.topic().code()).collect(Collectors.joining(", ")));
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("bad input without a problem");
    }
    this.problems = List.copyOf(problems.subList(0, Math.min(CAP, problems.size())));
    this.questions = List.copyOf(questions);
  }

  /**
   * Nothing is wrong for certain, but questions are open.
   *
   * @param sheet where the answers belong
   * @param questions at least one
   */
  public static BadInput asked(Place sheet, List<Question> questions) {
    return new BadInput(questions.stream().map(q -> q.at(sheet)).toList(), questions);
  }

  /** A single problem. */
  public BadInput(Problem problem) {
    this(List.of(problem));
  }

  /** The problems, at least one, {@value #CAP} at the most. */
  public List<Problem> problems() {
    return problems;
  }

  /** The questions whose answers would do; empty where something else is wrong. */
  public List<Question> questions() {
    return questions;
  }
}
