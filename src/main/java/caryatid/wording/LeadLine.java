package caryatid.wording;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Undecided;
import caryatid.loadline.Finding;
import caryatid.loadline.Verdict;
import caryatid.remark.Argument;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What a state of alignment asks for next, in one line. */
public final class LeadLine {
  private static final int MOST_NAMED = 2;

  private final AlignmentState state;
  private final Wording wording;
  private final LandmarkWords names;

  private LeadLine(AlignmentState state, Wording wording) {
    this.state = state;
    this.wording = wording;
    this.names = new LandmarkWords(wording, state.trial());
  }

  /** What to do next; empty if a sentence about safety says it. */
  public static Optional<String> of(AlignmentState state, Wording wording) {
    return ResultWords.isSafetyFirst(state)
        ? Optional.empty()
        : Optional.of(new LeadLine(state, wording).line());
  }

  private String line() {
    String notMet = where(verdict -> verdict == Verdict.OUTSIDE);
    String undecided = where(Verdict::tooClose);
    if (!notMet.isEmpty()) {
      return undecided.isEmpty()
          ? wording.fill("Lead.NOT_MET", Argument.text(notMet))
          : wording.fill("Lead.NOT_MET_YET", Argument.text(notMet), Argument.text(undecided));
    }
    if (!undecided.isEmpty()) {
      return undecided(undecided);
    }
    return wording.word("Lead." + met());
  }

  /** Measuring again is asked for where it can decide something; else what helps instead. */
  private String undecided(String all) {
    String lasting = named(state.findings().stream().filter(this::isLasting));
    boolean marks =
        state.findings().stream()
            .anyMatch(f -> Undecided.of(state, f).filter(Undecided.MARKS::equals).isPresent());
    if (lasting.equals(all)) {
      return wording.fill(
          marks ? "Lead.UNDECIDED_MARKS" : "Lead.UNDECIDED_NEITHER", Argument.text(all));
    }
    return lasting.isEmpty()
        ? wording.fill("Lead.UNDECIDED", Argument.text(all))
        : wording.fill("Lead.UNDECIDED_SOME", Argument.text(all), Argument.text(lasting));
  }

  private boolean isLasting(Finding finding) {
    return Undecided.of(state, finding).filter(by -> by != Undecided.STANDS).isPresent();
  }

  private String met() {
    if (state.findings().isEmpty()) {
      return state.withheld().isEmpty() ? "NO_TARGET" : "NO_RESULT";
    }
    return state.withheld().isEmpty() ? "MET" : "MET_SO_FAR";
  }

  /** The landmarks of some results, each with its plane; of many, how many they are. */
  private String where(Predicate<Verdict> which) {
    return named(state.findings().stream().filter(f -> which.test(f.verdict())));
  }

  private String named(Stream<Finding> findings) {
    List<String> some = findings.map(this::where).distinct().toList();
    return some.size() <= MOST_NAMED
        ? String.join(", ", some)
        : wording.fill(
            "Lead.COUNT", Argument.count(some.size()), Argument.count(state.findings().size()));
  }

  private String where(Finding finding) {
    String name = names.name(finding.target().landmark(), finding.target().side());
    return name
        + " ("
        + wording.word(finding.target().plane())
        + LandmarkWords.leg(state.trial(), finding.target().side(), wording)
        + ")";
  }
}
