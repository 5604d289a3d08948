package caryatid.chart;

import caryatid.chart.leg.Leg.Level;
import caryatid.chart.leg.LoadLine;
import caryatid.chart.leg.Strip;
import caryatid.chart.mark.Scale;
import caryatid.geometry.Plane;
import caryatid.loadline.Finding;
import caryatid.loadline.Offset;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.uncertainty.Estimate;
import caryatid.wording.LandmarkWords;
import caryatid.wording.OffsetWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** Descriptions of the parts of a leg drawing, for hovering, keyboard and screen reader. */
final class LegSentences {
  private LegSentences() {}

  static String line(LoadLine line, Wording wording) {
    return wording.fill(
        "Sentences.LINE." + line.of().lastPart(), Argument.of(line.halfMm(), Unit.MM));
  }

  static String level(Level level, LandmarkWords names, Plane plane, Wording wording) {
    String landmark = landmark(level, names, wording);
    String offset = level.offset().map(o -> " " + offset(o, plane, wording)).orElse("");
    String finding = level.finding().map(f -> " " + finding(f, wording)).orElse("");
    return landmark + offset + finding;
  }

  private static String landmark(Level level, LandmarkWords names, Wording wording) {
    return wording.fill(
        "Sentences.LANDMARK",
        Argument.text(names.name(level.landmark().name(), level.landmark().side())),
        Argument.count(Math.round(level.heightMm())),
        Argument.of(level.halfMm(), Unit.MM));
  }

  /** The same of a strip, with the trade's names and how far the line is from what. */
  static String strip(Strip strip, LandmarkWords names, Plane plane, Wording wording) {
    List<String> sentences = new ArrayList<>();
    sentences.add(landmark(strip.level(), names, wording));
    strip.offset().ifPresent(o -> sentences.add(offset(o, plane, wording)));
    strip.finding().ifPresent(f -> sentences.add(finding(f, wording)));
    strip.beforeMm().ifPresent(mm -> sentences.add(before(mm, plane, wording)));
    if (strip.finding().isEmpty()) {
      String why = strip.target().isPresent() ? "Findings.WITHHELD" : "StripWords.NO_TARGET";
      sentences.add(wording.word(why) + ".");
    }
    return String.join(" ", sentences);
  }

  private static String offset(Offset offset, Plane plane, Wording wording) {
    return wording.fill(
        "Sentences.OFFSET",
        Argument.text(new OffsetWords(wording).rounded(plane, offset.mm().value())),
        Argument.text(wording.signed(offset.mm().value(), Unit.MM)),
        Argument.of(offset.mm().expanded(Estimate.COVERAGE), Unit.MM));
  }

  private static String before(double mm, Plane plane, Wording wording) {
    return wording.fill(
        "Sentences.BEFORE",
        Argument.text(new OffsetWords(wording).rounded(plane, mm)),
        Argument.text(wording.signed(mm, Unit.MM)));
  }

  private static String finding(Finding finding, Wording wording) {
    return wording.fill(
        "Sentences.FINDING",
        Argument.text(wording.signed(finding.target().recommendedMm(), Unit.MM)),
        Argument.text(wording.signed(finding.target().lowestMm(), Unit.MM)),
        Argument.text(wording.signed(finding.target().highestMm(), Unit.MM)),
        Argument.text(new OffsetWords(wording).result(finding)));
  }

  static String scale(Scale scale, double barMm, Wording wording) {
    return wording.fill(
        "Key.SCALE", Argument.text(scale.words()), Argument.count(Math.round(barMm)));
  }
}
