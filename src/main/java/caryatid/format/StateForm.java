package caryatid.format;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.PrecisionHint;
import caryatid.alignment.Stand;
import caryatid.alignment.StateOffset;
import caryatid.recording.model.Provenance;
import java.io.IOException;

/** An alignment state with its stands. */
final class StateForm {
  private StateForm() {}

  static void write(AlignmentState state, JsonObjectWriter out) throws IOException {
    out.list("stands", state.stands(), StateForm::writeStand)
        .list("offsets", state.offsets(), StateForm::writeOffset)
        .list("findings", state.findings(), OffsetForm::writeFinding)
        .list("withheld", state.withheld(), OffsetForm::writeWithheld)
        .list("remarks", state.remarks(), RemarkForm::write);
  }

  static AlignmentState read(JsonObjectReader in) {
    return new AlignmentState(
        in.list("stands", StateForm::readStand),
        in.list("offsets", StateForm::readOffset),
        in.list("findings", OffsetForm::readFinding),
        in.list("withheld", OffsetForm::readWithheld),
        in.list("remarks", RemarkForm::read));
  }

  private static void writeStand(Stand stand, JsonObjectWriter out) throws IOException {
    out.object("recording", stand.recording(), StateForm::writeFile)
        .object("sheet", stand.sheet(), StateForm::writeFile)
        .object("description", stand.description(), StateForm::writeFile)
        .object("trial", stand.trial(), TrialForm::write)
        .list("landmarks", stand.landmarks(), LandmarkForm::write)
        .object("standing", stand.standing(), StandingForm::write)
        .list("offsets", stand.offsets(), OffsetForm::write)
        .list("moments", stand.moments(), OffsetForm::writeMoment)
        .list("remarks", stand.remarks(), RemarkForm::write);
  }

  private static Stand readStand(JsonObjectReader in) {
    return new Stand(
        in.object("recording", StateForm::readFile),
        in.object("sheet", StateForm::readFile),
        in.objectIfThere("description", StateForm::readFile),
        in.object("trial", TrialForm::read),
        in.list("landmarks", LandmarkForm::read),
        in.object("standing", StandingForm::read),
        in.list("offsets", OffsetForm::read),
        in.list("moments", OffsetForm::readMoment),
        in.list("remarks", RemarkForm::read));
  }

  private static void writeOffset(StateOffset offset, JsonObjectWriter out) throws IOException {
    out.object("offset", offset.offset(), OffsetForm::write)
        .number("smallest-difference-mm", offset.smallestDifferenceMm())
        .object("advice", offset.advice(), StateForm::writeAdvice);
  }

  private static StateOffset readOffset(JsonObjectReader in) {
    return new StateOffset(
        in.object("offset", OffsetForm::read),
        in.number("smallest-difference-mm"),
        in.objectIfThere("advice", StateForm::readAdvice));
  }

  private static void writeAdvice(PrecisionHint advice, JsonObjectWriter out) throws IOException {
    out.word("dominant", FindingSpellings.CAUSE, advice.dominant())
        .number("dominant-share", advice.dominantShare())
        .word("remedy", FindingSpellings.REMEDY, advice.remedy())
        .number("half-width-mm", advice.halfWidthMm())
        .number("half-width-then-mm", advice.halfWidthThenMm());
  }

  private static PrecisionHint readAdvice(JsonObjectReader in) {
    return new PrecisionHint(
        in.word("dominant", FindingSpellings.CAUSE),
        in.number("dominant-share"),
        in.word("remedy", FindingSpellings.REMEDY),
        in.number("half-width-mm"),
        in.number("half-width-then-mm"));
  }

  private static void writeFile(Provenance file, JsonObjectWriter out) throws IOException {
    out.text("name", file.name()).whole("bytes", file.bytes()).text("sha512", file.sha512());
  }

  private static Provenance readFile(JsonObjectReader in) {
    return new Provenance(in.text("name"), in.longWhole("bytes"), in.text("sha512"));
  }
}
