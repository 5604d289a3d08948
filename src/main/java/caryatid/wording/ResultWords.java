package caryatid.wording;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.GroupedRemark;
import caryatid.alignment.Undecided;
import caryatid.geometry.Plane;
import caryatid.loadline.Finding;
import caryatid.loadline.KneeSafety;
import caryatid.loadline.Target;
import caryatid.loadline.Verdict;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Results in words. A mark stands in front of each, so that colour is never needed; the load line
 * is the subject of every direction, and no word for a result can be read as medial or lateral.
 */
public final class ResultWords {
  private final Wording wording;

  /** Words in a language. */
  public ResultWords(Wording wording) {
    this.wording = wording;
  }

  /**
   * Whether a sentence about safety comes before every result: then no result asks for another
   * measurement first.
   */
  public static boolean isSafetyFirst(AlignmentState state) {
    return GroupedRemark.of(state).stream().anyMatch(s -> s.remark().topic().isSafety());
  }

  /**
   * What to do next if some result of a state is undecided, and more stands may decide it or not.
   */
  public Optional<String> undecided(AlignmentState state) {
    List<Verdict> verdicts = state.findings().stream().map(Finding::verdict).toList();
    List<Undecided> open =
        state.findings().stream().flatMap(f -> Undecided.of(state, f).stream()).toList();
    String key =
        open.contains(Undecided.STANDS)
            ? "Findings.TOO_CLOSE"
            : open.contains(Undecided.MARKS) ? "Findings.LASTING_MARKS" : "Findings.LASTING";
    return undecided(verdicts, KneeSafety.mayBend(state.remarks()), key);
  }

  /**
   * What to do next if some result in a record is undecided: what is not met is changed before
   * anything is measured again.
   *
   * @param kneeMayBend whether a prosthetic knee may bend: then the alignment is corrected first,
   *     and nothing else is said
   */
  public Optional<String> undecided(List<Verdict> verdicts, boolean kneeMayBend) {
    return undecided(verdicts, kneeMayBend, "Findings.UNDECIDED_IN_RECORD");
  }

  private Optional<String> undecided(List<Verdict> verdicts, boolean kneeMayBend, String key) {
    boolean notMet = verdicts.contains(Verdict.OUTSIDE);
    return verdicts.stream().noneMatch(Verdict::tooClose) || kneeMayBend
        ? Optional.empty()
        : Optional.of(wording.word(notMet ? "Findings.NOT_MET_FIRST" : key));
  }

  /** The result and, where it is undecided, how uncertain the measurement is. */
  public String inFull(Finding finding) {
    return finding.verdict().tooClose()
        ? wording.fill(
            "ResultWords.GIVE_OR_TAKE",
            Argument.text(result(finding)),
            Argument.text(whole(finding.offset().mm().expanded(Estimate.COVERAGE))))
        : result(finding);
  }

  /** The result, its mark in front: {@code ○ undecided: 3 mm within the tolerance}. */
  public String result(Finding finding) {
    Target target = finding.target();
    double mm = finding.offset().mm().value();
    return result(finding.verdict(), mm, target.lowestMm(), target.highestMm());
  }

  /**
   * The result, its mark in front.
   *
   * @param offsetMm the offset, mm
   * @param lowestMm the smallest offset that meets the tolerance, mm
   * @param highestMm the largest offset that meets it, mm
   */
  public String result(Verdict verdict, double offsetMm, double lowestMm, double highestMm) {
    double edgeMm = edgeMm(offsetMm, lowestMm, highestMm);
    return switch (verdict) {
      case WITHIN -> wording.fill("ResultWords.WITHIN", Argument.term(verdict));
      case INSIDE_TOO_CLOSE -> fill("INSIDE_TOO_CLOSE", edgeMm);
      case OUTSIDE_TOO_CLOSE -> fill("OUTSIDE_TOO_CLOSE", edgeMm);
      case OUTSIDE -> wording.fill("ResultWords.OUTSIDE", Argument.term(verdict));
    };
  }

  /** How far the load line runs from the edge of the tolerance and from the recommendation. */
  public String distances(Finding finding) {
    Target target = finding.target();
    double mm = finding.offset().mm().value();
    double beyond = beyondMm(mm, target.lowestMm(), target.highestMm());
    double aside = mm - target.recommendedMm();
    List<String> parts = new ArrayList<>();
    if (beyond != 0) {
      parts.add(line("TOO_FAR", target.plane(), beyond));
      parts.add(fill("FROM_RECOMMENDATION", aside));
    } else {
      parts.add(Math.round(aside) == 0 ? wording.word("ResultWords.AT") : line(target, aside));
      if (finding.verdict() == Verdict.WITHIN) {
        parts.add(fill("TO_SPARE", edgeMm(mm, target.lowestMm(), target.highestMm())));
      }
    }
    return String.join(", ", parts);
  }

  /**
   * What the target's document says to check, if the load line is beyond the tolerance and the
   * clinician wrote it down.
   */
  public static Optional<String> advice(Finding finding) {
    Target target = finding.target();
    double beyond = beyondMm(finding.offset().mm().value(), target.lowestMm(), target.highestMm());
    return target
        .lookAt()
        .filter(l -> beyond != 0)
        .flatMap(lookAt -> lookAt.at(target.plane(), beyond > 0));
  }

  private String line(Target target, double asideMm) {
    return line("NEAR", target.plane(), asideMm);
  }

  private String line(String of, Plane plane, double mm) {
    return fill(of + "." + OffsetWords.direction(plane, mm > 0), mm);
  }

  private String fill(String of, double mm) {
    return wording.fill("ResultWords." + of, Argument.text(whole(mm)));
  }

  /** A distance in whole millimetres, without its sign; one that rounds to 0 is under 1 mm. */
  private String whole(double mm) {
    long rounded = Math.round(Math.abs(mm));
    String words = Math.max(1, rounded) + "\u00a0" + Unit.MM.symbol();
    return rounded == 0 ? wording.fill("ResultWords.UNDER_ONE", Argument.text(words)) : words;
  }

  /** Distance to the nearer edge of the tolerance, mm. */
  private static double edgeMm(double mm, double lowestMm, double highestMm) {
    return Math.min(Math.abs(mm - lowestMm), Math.abs(highestMm - mm));
  }

  /** How far an offset lies beyond the tolerance, signed as offsets are, mm; 0 in it. */
  private static double beyondMm(double mm, double lowestMm, double highestMm) {
    return mm < lowestMm ? mm - lowestMm : Math.max(0, mm - highestMm);
  }
}
