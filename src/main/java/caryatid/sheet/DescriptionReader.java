package caryatid.sheet;

import caryatid.recording.NamedBytes;
import caryatid.recording.PlateDescription;
import caryatid.remark.BadInput;

/** Reads plate descriptions. */
public final class DescriptionReader {
  private DescriptionReader() {}

  /**
   * Reads a plate description (YAML).
   *
   * @throws BadInput with every problem found, each with its line and column
   */
  public static PlateDescription read(NamedBytes yaml) throws BadInput {
    throw new UnsupportedOperationException("not built yet");
  }
}
