package caryatid.report.pages;

import caryatid.alignment.Stand;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.TimeText;
import caryatid.remark.Unit;
import caryatid.sheet.TrialSheet;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Who stood, when, in what and how loaded, in one line. */
final class TrialSummary {
  private final Wording wording;

  private TrialSummary(Wording wording) {
    this.wording = wording;
  }

  /** The line; what several stands know of the load is averaged. */
  static String of(List<Stand> stands, Wording wording) {
    TrialSummary summary = new TrialSummary(wording);
    TrialSheet trial = stands.get(0).trial();
    List<String> parts = new ArrayList<>();
    parts.add(wording.word(trial.level()));
    parts.add(summary.footwear(trial));
    parts.add(TimeText.of(trial.at()));
    if (stands.size() > 1) {
      parts.add(wording.fill("TrialFacts.COUNT", Argument.count(stands.size())));
    }
    for (Side side : trial.side().sides()) {
      summary.share(stands, side).ifPresent(parts::add);
    }
    return String.join(" · ", parts);
  }

  private Optional<String> share(List<Stand> stands, Side side) {
    return meanShare(stands, side)
        .map(
            of ->
                wording.fill(
                    "TrialFacts.SHARE_OF",
                    Argument.term(side),
                    Argument.of(100 * of.value(), Unit.PERCENT),
                    Argument.of(100 * of.expanded(Estimate.COVERAGE), Unit.PERCENT)));
  }

  private String footwear(TrialSheet trial) {
    return wording.fill(
        "TrialFacts.HEEL",
        Argument.text(trial.footwear().description()),
        Argument.of(trial.footwear().heelHeightMm(), Unit.MM));
  }

  /** The mean share of a side over the stands that know it. */
  private static Optional<Estimate> meanShare(List<Stand> stands, Side side) {
    List<Estimate> known =
        stands.stream()
            .map(stand -> stand.standing().share())
            .filter(share -> share.containsKey(side))
            .map(share -> share.get(side))
            .toList();
    return known.stream()
        .reduce((sum, one) -> sum.plus(1, one))
        .map(sum -> sum.times(1.0 / known.size()));
  }
}
