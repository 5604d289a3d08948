package caryatid.format;

import caryatid.loadline.Landmark;
import caryatid.sheet.LandmarkEntry;
import caryatid.sheet.LandmarkEntry.MeasuredDistance;
import java.io.IOException;

/** Landmarks: as they were written down, and in the person's frame. */
final class LandmarkForm {
  private LandmarkForm() {}

  static void write(Landmark landmark, JsonObjectWriter out) throws IOException {
    out.text("name", landmark.name())
        .word("kind", BodySpellings.LANDMARK, landmark.kind())
        .word("side", BodySpellings.SIDE, landmark.side())
        .object("right-mm", landmark.rightMm(), EstimateForm::writeCoordinate)
        .object("anterior-mm", landmark.anteriorMm(), EstimateForm::writeCoordinate)
        .number("height-mm", landmark.heightMm())
        .text("definition", landmark.definition());
  }

  static Landmark read(JsonObjectReader in) {
    return new Landmark(
        in.text("name"),
        in.word("kind", BodySpellings.LANDMARK),
        in.word("side", BodySpellings.SIDE),
        in.objectIfThere("right-mm", EstimateForm::readCoordinate),
        in.objectIfThere("anterior-mm", EstimateForm::readCoordinate),
        in.number("height-mm"),
        in.textIfThere("definition"));
  }

  static void writeEntry(LandmarkEntry entry, JsonObjectWriter out) throws IOException {
    out.text("name", entry.name())
        .word("kind", BodySpellings.LANDMARK, entry.kind())
        .word("side", BodySpellings.SIDE, entry.side())
        .object("forward", entry.forward(), LandmarkForm::writeMeasured)
        .object("rightward", entry.rightward(), LandmarkForm::writeMeasured)
        .number("up-mm", entry.upMm())
        .text("definition", entry.definition());
  }

  static LandmarkEntry readEntry(JsonObjectReader in) {
    return new LandmarkEntry(
        in.text("name"),
        in.word("kind", BodySpellings.LANDMARK),
        in.word("side", BodySpellings.SIDE),
        in.objectIfThere("forward", LandmarkForm::readMeasured),
        in.objectIfThere("rightward", LandmarkForm::readMeasured),
        in.number("up-mm"),
        in.textIfThere("definition"));
  }

  private static void writeMeasured(MeasuredDistance measured, JsonObjectWriter out)
      throws IOException {
    out.number("mm", measured.mm())
        .text("from", measured.from())
        .flag("from-landmark", measured.fromLandmark())
        .number("marking-mm", measured.markingMm());
  }

  private static MeasuredDistance readMeasured(JsonObjectReader in) {
    return new MeasuredDistance(
        in.number("mm"), in.textIfThere("from"), in.flag("from-landmark"), in.number("marking-mm"));
  }
}
