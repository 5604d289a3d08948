package caryatid.remark;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The store cannot be read or written now: another program is writing, the disk is full or fails,
 * or the folder does not permit it. Nothing is wrong with what was given; the same may succeed
 * later or elsewhere.
 */
public final class StoreFailure extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /**
   * @param problems at least one
   * @throws IllegalArgumentException if there is none
   */
  public StoreFailure(List<Problem> problems) {
    super(problems.stream().map(p -> p.topic().code()).collect(Collectors.joining(", ")));
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("failure of a store without a problem");
    }
    this.problems = List.copyOf(problems);
  }

  /** A single problem. */
  public StoreFailure(Problem problem) {
    this(List.of(problem));
  }

  /** What failed and where, at least one. */
  public List<Problem> problems() {
    return problems;
  }
}
