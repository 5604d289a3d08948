package caryatid.usecase.prove;

import caryatid.remark.BadInput;
import caryatid.usecase.Inputs;
import caryatid.usecase.Records;
import caryatid.usecase.RememberedLimits;
import caryatid.usecase.RememberedPlates;

/** Inputs of a check with what the clinic remembers. */
public final class ClinicInputs {
  private ClinicInputs() {}

  /**
   * The inputs with the clinic's measured hands and limits in the sheet and the description that it
   * remembers for the recording, as far as they have none of their own.
   *
   * @throws BadInput if what the clinic remembers or the sheet cannot be read
   */
  public static Inputs complete(Records records, Inputs inputs) throws BadInput {
    Inputs measured = MeasuredHands.complete(records, inputs);
    return RememberedLimits.complete(records, RememberedPlates.complete(records, measured));
  }
}
