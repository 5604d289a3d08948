package caryatid.sheet;

import caryatid.loadline.Landmark;
import caryatid.recording.MeasuringLine;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import java.util.List;

/** Brings a sheet's landmarks into the person's frame. */
public final class Landmarks {
  private Landmarks() {}

  /**
   * The landmarks in the person's frame.
   *
   * @param entries as the sheet has them
   * @param lines the measuring lines of the plate description
   * @param sheet the sheet, for problems
   * @throws BadInput if a line or a landmark that one is measured from does not exist, or landmarks
   *     are relative to each other in a circle
   */
  public static List<Landmark> place(
      List<LandmarkEntry> entries, List<MeasuringLine> lines, Place sheet) throws BadInput {
    throw new UnsupportedOperationException("not built yet");
  }
}
