package caryatid.format;

import caryatid.loadline.Landmark;
import caryatid.sheet.LandmarkEntry;
import caryatid.sheet.LandmarkEntry.MeasuredDistance;
import caryatid.uncertainty.Contribution;
import java.io.IOException;

/** Landmarks: as they were written down, and in the person's frame. */
final class LandmarkJson {
  private LandmarkJson() {}

  static void write(Landmark landmark, JsonObjectWriter out) throws IOException {
    out.text("name", landmark.name())
        .word("kind", BodySpellings.LANDMARK, landmark.kind())
        .word("side", BodySpellings.SIDE, landmark.side())
        .object("right-mm", landmark.rightMm(), EstimateJson::writeCoordinate)
        .object("anterior-mm", landmark.anteriorMm(), EstimateJson::writeCoordinate)
        .number("height-mm", landmark.heightMm())
        .text("definition", landmark.definition());
  }

  static Landmark read(JsonObjectReader in) {
    return new Landmark(
        in.text("name"),
        in.word("kind", BodySpellings.LANDMARK),
        in.word("side", BodySpellings.SIDE),
        in.objectIfThere("right-mm", EstimateJson::readCoordinate),
        in.objectIfThere("anterior-mm", EstimateJson::readCoordinate),
        in.number("height-mm"),
        in.textIfThere("definition"));
  }

  static void writeEntry(LandmarkEntry entry, JsonObjectWriter out) throws IOException {
    out.text("name", entry.name())
        .word("kind", BodySpellings.LANDMARK, entry.kind())
        .word("side", BodySpellings.SIDE, entry.side())
        .object("forward", entry.forward(), LandmarkJson::writeMeasured)
        .object("rightward", entry.rightward(), LandmarkJson::writeMeasured)
        .number("up-mm", entry.upMm())
        .text("definition", entry.definition())
        .numbersUnlessEmpty("read-at-s", entry.readAtS());
  }

  static LandmarkEntry readEntry(JsonObjectReader in) {
    return new LandmarkEntry(
        in.text("name"),
        in.word("kind", BodySpellings.LANDMARK),
        in.word("side", BodySpellings.SIDE),
        in.objectIfThere("forward", LandmarkJson::readMeasured),
        in.objectIfThere("rightward", LandmarkJson::readMeasured),
        in.number("up-mm"),
        in.textIfThere("definition"),
        in.numbersIfThere("read-at-s"));
  }

  private static void writeMeasured(MeasuredDistance measured, JsonObjectWriter out)
      throws IOException {
    out.number("mm", measured.mm())
        .text("from", measured.from())
        .flag("from-landmark", measured.fromLandmark())
        .number("marking-mm", measured.markingMm())
        .number("marking-degrees-of-freedom", measured.markingDegrees());
  }

  private static MeasuredDistance readMeasured(JsonObjectReader in) {
    return new MeasuredDistance(
        in.number("mm"),
        in.textIfThere("from"),
        in.flag("from-landmark"),
        in.number("marking-mm"),
        in.numberIfThere("marking-degrees-of-freedom").orElse(Contribution.STATED_DEGREES));
  }
}
