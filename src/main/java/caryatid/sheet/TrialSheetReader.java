package caryatid.sheet;

import caryatid.recording.NamedBytes;
import caryatid.remark.BadInput;
import java.util.Optional;
import java.util.function.Function;

/** Reads trial sheets. */
public final class TrialSheetReader {
  private TrialSheetReader() {}

  /**
   * Reads a trial sheet (YAML).
   *
   * @param yaml the sheet
   * @param beside finds the file that {@code based-on} names; empty when there is none of that name
   * @throws BadInput with every problem found, each with its line and column
   */
  public static TrialSheet read(NamedBytes yaml, Function<String, Optional<NamedBytes>> beside)
      throws BadInput {
    throw new UnsupportedOperationException("not built yet");
  }
}
