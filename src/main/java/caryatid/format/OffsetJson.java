package caryatid.format;

import caryatid.loadline.Finding;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Moment;
import caryatid.loadline.Offset;
import caryatid.loadline.UnjudgedTarget;
import java.io.IOException;

/** Offsets, findings, and moments. */
final class OffsetJson {
  private OffsetJson() {}

  /** The landmark and plane that offsets, targets and moments begin with. */
  static void writeAt(LandmarkInPlane at, JsonObjectWriter out) throws IOException {
    out.word("plane", BodySpellings.PLANE, at.plane())
        .word("side", BodySpellings.SIDE, at.side())
        .text("landmark", at.landmark());
  }

  static LandmarkInPlane readAt(JsonObjectReader in) {
    return new LandmarkInPlane(
        in.word("plane", BodySpellings.PLANE),
        in.word("side", BodySpellings.SIDE),
        in.text("landmark"));
  }

  static void write(Offset offset, JsonObjectWriter out) throws IOException {
    writeAt(offset.at(), out);
    out.word("of", FindingSpellings.LINE_OF, offset.of())
        .word("kind", FindingSpellings.LINE, offset.kind())
        .object("mm", offset.mm(), EstimateJson::write);
  }

  static Offset read(JsonObjectReader in) {
    return new Offset(
        readAt(in),
        in.word("of", FindingSpellings.LINE_OF),
        in.word("kind", FindingSpellings.LINE),
        in.object("mm", EstimateJson::read));
  }

  static void writeFinding(Finding finding, JsonObjectWriter out) throws IOException {
    out.object("offset", finding.offset(), OffsetJson::write)
        .object("target", finding.target(), TargetJson::write)
        .number("probability-within", finding.probabilityWithin())
        .flag("decidable", finding.decidable())
        .word("verdict", FindingSpellings.VERDICT, finding.verdict());
  }

  static Finding readFinding(JsonObjectReader in) {
    return new Finding(
        in.object("offset", OffsetJson::read),
        in.object("target", TargetJson::read),
        in.number("probability-within"),
        in.flag("decidable"),
        in.word("verdict", FindingSpellings.VERDICT));
  }

  static void writeWithheld(UnjudgedTarget withheld, JsonObjectWriter out) throws IOException {
    out.object("target", withheld.target(), TargetJson::write)
        .object("reason", withheld.reason(), RemarkJson::write);
  }

  static UnjudgedTarget readWithheld(JsonObjectReader in) {
    return new UnjudgedTarget(
        in.object("target", TargetJson::read), in.object("reason", RemarkJson::read));
  }

  static void writeMoment(Moment moment, JsonObjectWriter out) throws IOException {
    writeAt(moment.at(), out);
    out.word("kind", FindingSpellings.LINE, moment.kind())
        .object("newton-metres", moment.newtonMetres(), EstimateJson::write)
        .object("newton-metres-per-kg", moment.newtonMetresPerKg(), EstimateJson::write)
        .word("effect", FindingSpellings.EFFECT, moment.effect());
  }

  static Moment readMoment(JsonObjectReader in) {
    return new Moment(
        readAt(in),
        in.word("kind", FindingSpellings.LINE),
        in.object("newton-metres", EstimateJson::read),
        in.objectIfThere("newton-metres-per-kg", EstimateJson::read),
        in.word("effect", FindingSpellings.EFFECT));
  }
}
