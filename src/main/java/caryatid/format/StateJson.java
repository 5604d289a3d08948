package caryatid.format;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.PrecisionHint;
import caryatid.alignment.Stand;
import caryatid.alignment.StateOffset;
import caryatid.recording.model.Provenance;
import java.io.IOException;

/** An alignment state with its stands. */
final class StateJson {
  private StateJson() {}

  static void write(AlignmentState state, JsonObjectWriter out) throws IOException {
    out.list("stands", state.stands(), StateJson::writeStand)
        .list("offsets", state.offsets(), StateJson::writeOffset)
        .list("findings", state.findings(), OffsetJson::writeFinding)
        .list("withheld", state.withheld(), OffsetJson::writeWithheld)
        .list("remarks", state.remarks(), RemarkJson::write);
  }

  static AlignmentState read(JsonObjectReader in) {
    return new AlignmentState(
        in.list("stands", StateJson::readStand),
        in.list("offsets", StateJson::readOffset),
        in.list("findings", OffsetJson::readFinding),
        in.list("withheld", OffsetJson::readWithheld),
        in.list("remarks", RemarkJson::read));
  }

  private static void writeStand(Stand stand, JsonObjectWriter out) throws IOException {
    out.object("recording", stand.recording(), StateJson::writeFile)
        .object("sheet", stand.sheet(), StateJson::writeFile)
        .object("description", stand.description(), StateJson::writeFile)
        .object("trial", stand.trial(), TrialJson::write)
        .list("landmarks", stand.landmarks(), LandmarkJson::write)
        .object("standing", stand.standing(), StandingJson::write)
        .list("offsets", stand.offsets(), OffsetJson::write)
        .list("moments", stand.moments(), OffsetJson::writeMoment)
        .list("remarks", stand.remarks(), RemarkJson::write);
  }

  private static Stand readStand(JsonObjectReader in) {
    return new Stand(
        in.object("recording", StateJson::readFile),
        in.object("sheet", StateJson::readFile),
        in.objectIfThere("description", StateJson::readFile),
        in.object("trial", TrialJson::read),
        in.list("landmarks", LandmarkJson::read),
        in.object("standing", StandingJson::read),
        in.list("offsets", OffsetJson::read),
        in.list("moments", OffsetJson::readMoment),
        in.list("remarks", RemarkJson::read));
  }

  private static void writeOffset(StateOffset offset, JsonObjectWriter out) throws IOException {
    out.object("offset", offset.offset(), OffsetJson::write)
        .number("smallest-difference-mm", offset.smallestDifferenceMm())
        .object("advice", offset.hint(), StateJson::writeAdvice);
  }

  private static StateOffset readOffset(JsonObjectReader in) {
    return new StateOffset(
        in.object("offset", OffsetJson::read),
        in.number("smallest-difference-mm"),
        in.objectIfThere("advice", StateJson::readAdvice));
  }

  private static void writeAdvice(PrecisionHint hint, JsonObjectWriter out) throws IOException {
    out.word("dominant", FindingSpellings.CAUSE, hint.dominant())
        .number("dominant-share", hint.dominantShare())
        .word("remedy", FindingSpellings.REMEDY, hint.remedy())
        .number("half-width-mm", hint.halfWidthMm())
        .number("half-width-then-mm", hint.halfWidthThenMm());
  }

  private static PrecisionHint readAdvice(JsonObjectReader in) {
    return new PrecisionHint(
        in.word("dominant", FindingSpellings.CAUSE),
        in.number("dominant-share"),
        in.word("remedy", FindingSpellings.REMEDY),
        in.number("half-width-mm"),
        in.number("half-width-then-mm"));
  }

  static void writeFile(Provenance file, JsonObjectWriter out) throws IOException {
    out.text("name", file.name()).whole("bytes", file.bytes()).text("sha512", file.sha512());
  }

  static Provenance readFile(JsonObjectReader in) {
    return new Provenance(in.text("name"), in.longWhole("bytes"), in.text("sha512"));
  }
}
