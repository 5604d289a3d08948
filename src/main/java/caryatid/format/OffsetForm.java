package caryatid.format;

import caryatid.loadline.Finding;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Moment;
import caryatid.loadline.Offset;
import caryatid.loadline.UnjudgedTarget;
import java.io.IOException;

/** Offsets, findings, and moments. */
final class OffsetForm {
  private OffsetForm() {}

  /** The landmark and plane that offsets, targets and moments begin with. */
  static void writeAt(LandmarkInPlane at, ObjectOut out) throws IOException {
    out.word("plane", BodyWords.PLANE, at.plane())
        .word("side", BodyWords.SIDE, at.side())
        .text("landmark", at.landmark());
  }

  static LandmarkInPlane readAt(ObjectIn in) {
    return new LandmarkInPlane(
        in.word("plane", BodyWords.PLANE), in.word("side", BodyWords.SIDE), in.text("landmark"));
  }

  static void write(Offset offset, ObjectOut out) throws IOException {
    writeAt(offset.at(), out);
    out.word("of", FindingWords.LINE_OF, offset.of())
        .word("kind", FindingWords.LINE, offset.kind())
        .object("mm", offset.mm(), EstimateForm::write);
  }

  static Offset read(ObjectIn in) {
    return new Offset(
        readAt(in),
        in.word("of", FindingWords.LINE_OF),
        in.word("kind", FindingWords.LINE),
        in.object("mm", EstimateForm::read));
  }

  static void writeFinding(Finding finding, ObjectOut out) throws IOException {
    out.object("offset", finding.offset(), OffsetForm::write)
        .object("target", finding.target(), TargetForm::write)
        .number("probability-within", finding.probabilityWithin())
        .flag("decidable", finding.decidable())
        .word("verdict", FindingWords.VERDICT, finding.verdict());
  }

  static Finding readFinding(ObjectIn in) {
    return new Finding(
        in.object("offset", OffsetForm::read),
        in.object("target", TargetForm::read),
        in.number("probability-within"),
        in.flag("decidable"),
        in.word("verdict", FindingWords.VERDICT));
  }

  static void writeWithheld(UnjudgedTarget withheld, ObjectOut out) throws IOException {
    out.object("target", withheld.target(), TargetForm::write)
        .object("reason", withheld.reason(), RemarkForm::write);
  }

  static UnjudgedTarget readWithheld(ObjectIn in) {
    return new UnjudgedTarget(
        in.object("target", TargetForm::read), in.object("reason", RemarkForm::read));
  }

  static void writeMoment(Moment moment, ObjectOut out) throws IOException {
    writeAt(moment.at(), out);
    out.word("kind", FindingWords.LINE, moment.kind())
        .object("newton-metres", moment.newtonMetres(), EstimateForm::write)
        .object("newton-metres-per-kg", moment.newtonMetresPerKg(), EstimateForm::write)
        .word("effect", FindingWords.EFFECT, moment.effect());
  }

  static Moment readMoment(ObjectIn in) {
    return new Moment(
        readAt(in),
        in.word("kind", FindingWords.LINE),
        in.object("newton-metres", EstimateForm::read),
        in.objectIfThere("newton-metres-per-kg", EstimateForm::read),
        in.word("effect", FindingWords.EFFECT));
  }
}
