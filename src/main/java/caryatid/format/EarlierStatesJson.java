package caryatid.format;

import caryatid.alignment.EarlierState;
import caryatid.alignment.EarlierState.EarlierOffset;
import caryatid.alignment.EarlierStates;
import caryatid.loadline.LandmarkInPlane;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Provenance;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.util.List;

/** Earlier states as a file that a check is given, and as part of its result. */
public final class EarlierStatesJson {
  /** The name under which a report keeps the file. */
  public static final String FILE_NAME = "earlier-states.json";

  private static final int VERSION = 1;
  private static final String KEY = "earlier-states";
  private static final String STATES = "states";

  private EarlierStatesJson() {}

  /** States as UTF-8 JSON; the same states give the same bytes. */
  public static byte[] write(List<EarlierState> states) {
    return ResultTree.write(
        states,
        (all, out) -> out.whole(KEY, VERSION).list(STATES, all, EarlierStatesJson::writeState));
  }

  /**
   * Reads a file of states.
   *
   * @throws BadInput if it is none that this program wrote
   */
  public static EarlierStates read(NamedBytes file) throws BadInput {
    Provenance provenance = Provenance.of(file);
    try {
      return JsonObjectReader.read(
          ResultTree.read(file.readAll()), KEY, in -> states(in, provenance));
    } catch (JsonMismatch e) {
      throw new BadInput(
          Problem.at(Place.of(file.name()), e.topic(), e.arguments().toArray(Argument[]::new)));
    }
  }

  private static EarlierStates states(JsonObjectReader in, Provenance file) {
    int version = in.whole(KEY);
    if (version != VERSION) {
      throw new JsonMismatch(
          ArchiveProblem.OTHER_VERSION, Integer.toString(version), Integer.toString(VERSION));
    }
    return new EarlierStates(file, in.list(STATES, EarlierStatesJson::readState));
  }

  static void writeInside(EarlierStates earlier, JsonObjectWriter out) throws IOException {
    out.object("file", earlier.file(), StateJson::writeFile)
        .list(STATES, earlier.states(), EarlierStatesJson::writeState);
  }

  static EarlierStates readInside(JsonObjectReader in) {
    return new EarlierStates(
        in.object("file", StateJson::readFile), in.list(STATES, EarlierStatesJson::readState));
  }

  private static void writeState(EarlierState state, JsonObjectWriter out) throws IOException {
    out.text("result-sha512", state.resultSha512())
        .text("wearer", state.wearer())
        .time("at", state.at())
        .text("footwear", state.footwear())
        .number("heel-height-mm", state.heelHeightMm())
        .whole("stands", state.stands())
        .list("offsets", state.offsets(), EarlierStatesJson::writeOffset)
        .flag("marked", state.marked());
  }

  private static EarlierState readState(JsonObjectReader in) {
    return new EarlierState(
        in.text("result-sha512"),
        in.text("wearer"),
        in.time("at"),
        in.text("footwear"),
        in.number("heel-height-mm"),
        in.whole("stands"),
        in.list("offsets", EarlierStatesJson::readOffset),
        in.flag("marked"));
  }

  private static void writeOffset(EarlierOffset offset, JsonObjectWriter out) throws IOException {
    out.word("plane", BodySpellings.PLANE, offset.at().plane())
        .word("side", BodySpellings.SIDE, offset.at().side())
        .text("landmark", offset.at().landmark())
        .word("of", FindingSpellings.LINE_OF, offset.of())
        .number("mean-mm", offset.meanMm())
        .number("spread-mm", offset.spreadMm());
  }

  private static EarlierOffset readOffset(JsonObjectReader in) {
    return new EarlierOffset(
        new LandmarkInPlane(
            in.word("plane", BodySpellings.PLANE),
            in.word("side", BodySpellings.SIDE),
            in.text("landmark")),
        in.word("of", FindingSpellings.LINE_OF),
        in.number("mean-mm"),
        in.numberIfThere("spread-mm"));
  }
}
