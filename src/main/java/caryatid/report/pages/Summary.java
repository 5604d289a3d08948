package caryatid.report.pages;

import caryatid.alignment.AlignmentState;
import caryatid.geometry.Plane;
import caryatid.loadline.Finding;
import caryatid.loadline.Verdict;
import caryatid.remark.Argument;
import caryatid.wording.LandmarkWords;
import caryatid.wording.ResultWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The top of page one: what to do, in one line, and a sentence for each plane. */
final class Summary {
  private static final int MOST_NAMED = 2;

  private final AlignmentState state;
  private final Wording wording;
  private final LandmarkWords names;

  Summary(AlignmentState state, Wording wording) {
    this.state = state;
    this.wording = wording;
    this.names = new LandmarkWords(wording, state.stands().get(0).trial().level());
  }

  /** What to do next; empty where a sentence about safety says it. */
  Optional<String> next() {
    if (ResultWords.isSafetyFirst(state)) {
      return Optional.empty();
    }
    String notMet = where(verdict -> verdict == Verdict.OUTSIDE);
    String undecided = where(Verdict::tooClose);
    if (!notMet.isEmpty()) {
      return Optional.of(wording.fill("Lead.NOT_MET", Argument.text(notMet)));
    }
    if (!undecided.isEmpty()) {
      return Optional.of(wording.fill("Lead.UNDECIDED", Argument.text(undecided)));
    }
    return Optional.of(wording.word("Lead." + met()));
  }

  private String met() {
    if (state.findings().isEmpty()) {
      return state.withheld().isEmpty() ? "NO_TARGET" : "NO_RESULT";
    }
    return state.withheld().isEmpty() ? "MET" : "MET_SO_FAR";
  }

  /** The landmarks of some results, each with its plane; of many, how many they are. */
  private String where(Predicate<Verdict> which) {
    List<String> names =
        state.findings().stream()
            .filter(f -> which.test(f.verdict()))
            .map(this::where)
            .distinct()
            .toList();
    return names.size() <= MOST_NAMED
        ? String.join(", ", names)
        : wording.fill(
            "Lead.COUNT", Argument.count(names.size()), Argument.count(state.findings().size()));
  }

  private String where(Finding finding) {
    String name = names.name(finding.target().landmark());
    return name + " (" + wording.word(finding.target().plane()) + side(finding) + ")";
  }

  private String side(Finding finding) {
    boolean both = state.stands().get(0).trial().side().sides().size() > 1;
    return both ? ", " + wording.word(finding.target().side()) : "";
  }

  /** A sentence for each plane, on the finding that is furthest from met. */
  List<String> planes() {
    List<String> sentences = new ArrayList<>();
    for (Plane plane : Plane.values()) {
      worst(plane).ifPresent(finding -> sentences.add(sentence(finding)));
    }
    return sentences;
  }

  private Optional<Finding> worst(Plane plane) {
    return ofPlane(plane)
        .min(
            Comparator.<Finding>comparingInt(f -> -f.verdict().ordinal())
                .thenComparingDouble(Finding::probabilityWithin));
  }

  private Stream<Finding> ofPlane(Plane plane) {
    return state.findings().stream().filter(f -> f.target().plane() == plane);
  }

  private String sentence(Finding finding) {
    return wording.fill(
        "Lead.PLANE",
        Argument.text(Capitals.first(wording.word(finding.target().plane()) + side(finding))),
        Argument.text(names.name(finding.target().landmark())),
        Argument.text(new ResultWords(wording).distances(finding)));
  }
}
