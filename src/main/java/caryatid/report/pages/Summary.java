package caryatid.report.pages;

import caryatid.alignment.AlignmentState;
import caryatid.geometry.Plane;
import caryatid.loadline.Finding;
import caryatid.remark.Argument;
import caryatid.wording.LandmarkWords;
import caryatid.wording.LeadLine;
import caryatid.wording.ResultWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The top of page one: what to do, in one line, and a sentence for each plane. */
final class Summary {
  private final AlignmentState state;
  private final Wording wording;
  private final LandmarkWords names;

  Summary(AlignmentState state, Wording wording) {
    this.state = state;
    this.wording = wording;
    this.names = new LandmarkWords(wording, state.trial());
  }

  /** What to do next; empty where a sentence about safety says it. */
  Optional<String> next() {
    return LeadLine.of(state, wording);
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
        Argument.text(
            Capitals.first(
                wording.word(finding.target().plane())
                    + LandmarkWords.leg(state.trial(), finding.target().side(), wording))),
        Argument.text(names.name(finding.target().landmark(), finding.target().side())),
        Argument.text(new ResultWords(wording).distances(finding)));
  }
}
