package caryatid.usecase;

import caryatid.alignment.Result;
import caryatid.format.ResultDifference;
import caryatid.remark.Problem;
import java.util.List;

/** The outcome of the recomputation of a report from the files inside it. */
public sealed interface RecheckResult {

  /**
   * The same method gives the same result to the last digit.
   *
   * @param result as computed now
   * @param madeBy name and version of the program that made the report
   */
  record Reproduced(Result result, String madeBy) implements RecheckResult {}

  /**
   * The same method gives the same result, and the pages show its numbers, but they are not what
   * this program prints: another build of the same version made them, or words or drawings on them
   * were altered.
   *
   * @param result as computed now
   * @param madeBy name and version of the program that made the report
   * @param pages numbers of the pages that differ, from 1; at least one
   */
  record PagesDiffer(Result result, String madeBy, List<Integer> pages) implements RecheckResult {
    public PagesDiffer {
      pages = List.copyOf(pages);
    }
  }

  /**
   * The result inside is not what its method makes of the files inside, or the pages do not show
   * it.
   *
   * @param differences in the result
   * @param elsewhere what else was altered; together at least one
   */
  record Altered(List<ResultDifference> differences, List<Problem> elsewhere)
      implements RecheckResult {
    public Altered {
      differences = List.copyOf(differences);
      elsewhere = List.copyOf(elsewhere);
    }
  }

  /**
   * An older method made it. What it found stands; the files inside are those it was found in.
   *
   * @param kept the result inside
   * @param today what this program's method makes of the files
   */
  record Older(Result kept, Today today) implements RecheckResult {}

  /**
   * A newer version made it, which this one cannot compute again.
   *
   * @param problem says so
   */
  record Newer(Problem problem) implements RecheckResult {}

  /** What today's method makes of files that an older one was given. */
  sealed interface Today {

    /** The same numbers to the last digit, and the same remarks. */
    record Same() implements Today {}

    /**
     * Another result.
     *
     * @param differences from the result inside, at least one
     */
    record Different(Result result, List<ResultDifference> differences) implements Today {
      public Different {
        differences = List.copyOf(differences);
      }
    }

    /**
     * It refuses them.
     *
     * @param problems why
     */
    record Refused(List<Problem> problems) implements Today {
      public Refused {
        problems = List.copyOf(problems);
      }
    }
  }
}
