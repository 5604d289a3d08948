package caryatid.chart;

import caryatid.chart.leg.Leg;
import caryatid.chart.leg.LoadLine;
import caryatid.chart.leg.Strip;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.PrintableText;
import caryatid.chart.mark.Style.Lettering;
import caryatid.geometry.Plane;
import caryatid.loadline.Finding;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.standing.LoadLineOwner;
import caryatid.wording.LandmarkWords;
import caryatid.wording.OffsetWords;
import caryatid.wording.ResultWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The words above a strip: what and how high, the result, and how far from what. */
final class StripWords {
  private static final double GAP_MM = 4;
  private static final String SEPARATOR = " · ";

  private final Leg leg;
  private final LandmarkWords landmarks;
  private final Wording wording;
  private final double roomMm;

  StripWords(Leg leg, LandmarkWords landmarks, Wording wording, double roomMm) {
    this.leg = leg;
    this.landmarks = landmarks;
    this.wording = wording;
    this.roomMm = roomMm;
  }

  /**
   * A line of words: a name in strong letters, what follows it, and what is flush right.
   *
   * @param name may be empty
   * @param after may be empty
   * @param result may be empty
   * @param strong whether the result is set in strong letters
   */
  record HeadLine(String name, String after, String result, boolean strong) {
    Lettering lettering() {
      return strong ? Lettering.STRONG : Lettering.PLAIN;
    }
  }

  /** Everything in as many lines as it takes. */
  List<HeadLine> lines(Strip strip) {
    List<HeadLine> lines = new ArrayList<>(heading(strip, result(strip)));
    more(strip).forEach(words -> lines.add(new HeadLine("", words, "", false)));
    return lines;
  }

  /** The name and the result with its distances, in one line where they fit. */
  List<HeadLine> brief(Strip strip) {
    String result = result(strip);
    ResultWords words = new ResultWords(wording);
    String whole =
        strip.finding().map(f -> words.result(f) + SEPARATOR + words.distances(f)).orElse(result);
    String name = name(strip);
    double both =
        Fonts.widthMm(name, Lettering.STRONG) + GAP_MM + Fonts.widthMm(whole, Lettering.STRONG);
    return heading(strip, both <= roomMm ? whole : result);
  }

  private String name(Strip strip) {
    return landmarks.name(strip.level().landmark().name(), leg.view().side());
  }

  private List<HeadLine> heading(Strip strip, String result) {
    String name = name(strip);
    boolean strong = strip.target().isPresent();
    List<HeadLine> lines = new ArrayList<>();
    double left = Fonts.widthMm(name, Lettering.STRONG);
    HeadLine first = new HeadLine(name, height(strip), result, strong);
    double both = left + GAP_MM + Fonts.widthMm(result, first.lettering());
    double free = roomMm - both - Fonts.widthMm(first.after(), Lettering.PLAIN);
    if (both <= roomMm) {
      String of = free >= 0 ? definition(strip, free) : "";
      String after = free >= 0 ? first.after() + of : "";
      lines.add(new HeadLine(name, after, result, strong));
    } else {
      String cut = Fonts.fit(name, Lettering.STRONG, roomMm);
      lines.add(new HeadLine(cut, "", "", false));
      lines.add(new HeadLine("", "", Fonts.fit(result, first.lettering(), roomMm), strong));
    }
    return lines;
  }

  private String height(Strip strip) {
    long up = Math.round(strip.level().heightMm());
    return ", " + wording.fill("StripWords.UP", Argument.count(up));
  }

  /** Which axis or edge it is, in the clinician's words, as far as there is room. */
  private String definition(Strip strip, double freeMm) {
    return strip
        .level()
        .landmark()
        .definition()
        .map(words -> SEPARATOR + PrintableText.of(words))
        .map(words -> Fonts.fit(words, Lettering.PLAIN, freeMm))
        .filter(words -> words.length() > SEPARATOR.length() + 1)
        .orElse("");
  }

  private String result(Strip strip) {
    List<String> parts = new ArrayList<>();
    strip.finding().ifPresent(f -> parts.add(new ResultWords(wording).result(f)));
    strip
        .offset()
        .ifPresent(o -> parts.add(new OffsetWords(wording).rounded(o.plane(), o.mm().value())));
    if (strip.target().isEmpty()) {
      parts.add(wording.word("StripWords.NO_TARGET"));
    } else if (strip.finding().isEmpty()) {
      parts.add(wording.word("Findings.WITHHELD"));
    }
    return String.join(SEPARATOR, parts);
  }

  private List<String> more(Strip strip) {
    List<String> parts = new ArrayList<>();
    strip.finding().ifPresent(f -> parts.add(new ResultWords(wording).distances(f)));
    strip.target().ifPresent(target -> parts.add(recommended(target)));
    strip
        .finding()
        .filter(Finding::undecidable)
        .ifPresent(f -> parts.add(wording.word("OffsetWords.undecidable")));
    if (isOther(strip)) {
      parts.add(wording.word(LoadLineOwner.WHOLE_BODY));
    }
    strip.finding().flatMap(this::advice).ifPresent(parts::add);
    return parts.isEmpty()
        ? List.of()
        : Fonts.wrap(String.join(SEPARATOR, parts), Lettering.PLAIN, roomMm);
  }

  /** Whether a strip is about another load line than the leg's. */
  boolean isOther(Strip strip) {
    Optional<LoadLineOwner> of = leg.line().map(LoadLine::of);
    return strip.offset().filter(o -> of.filter(o.of()::equals).isEmpty()).isPresent();
  }

  private String recommended(Target target) {
    return wording.fill(
        "StripWords.RECOMMENDED",
        Argument.text(signed(target.recommendedMm())),
        Argument.text(signed(target.lowestMm())),
        Argument.text(signed(target.highestMm())));
  }

  private String signed(double mm) {
    return wording.signed(mm, mm == Math.rint(mm) ? Unit.COUNT : Unit.MM);
  }

  /** What the document says to check if the line is off in that direction. */
  private Optional<String> advice(Finding finding) {
    return ResultWords.advice(finding)
        .map(words -> wording.fill("StripWords.ADVICE", Argument.text(PrintableText.of(words))));
  }

  /** The words at the left and right ends of a strip. */
  String end(boolean right) {
    boolean positive = right == (leg.view().sign() > 0);
    String way =
        leg.view().plane() == Plane.SAGITTAL
            ? positive ? "FRONT" : "BACK"
            : positive ? "LATERAL" : "MEDIAL";
    return wording.word("StripWords." + way);
  }
}
