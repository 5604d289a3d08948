package caryatid.usecase;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.sheet.SheetAnswers;
import caryatid.standing.NamedStretch;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Everything a check works from.
 *
 * @param recordings the stands of one alignment state, at least one, in the order they were made
 * @param sheet the trial sheet that holds for all of them
 * @param description the plate description, where the file needs one
 * @param beside finds the earlier sheet that a sheet is {@code based-on}, by the name it gives
 * @param byHand which part of a recording is used, where the user set it beside the sheet
 * @param earlier the states before that the result is shown with
 */
public record Inputs(
    List<NamedBytes> recordings,
    NamedBytes sheet,
    Optional<NamedBytes> description,
    Function<String, Optional<NamedBytes>> beside,
    List<NamedStretch> byHand,
    Optional<NamedBytes> earlier) {
  /**
   * @throws IllegalArgumentException if there is no recording
   */
  public Inputs {
    if (recordings.isEmpty()) {
      throw new IllegalArgumentException("no recording");
    }
    recordings = List.copyOf(recordings);
    byHand = List.copyOf(byHand);
  }

  /** Inputs without a state before, and without a stretch beside those of the sheet. */
  public Inputs(
      List<NamedBytes> recordings,
      NamedBytes sheet,
      Optional<NamedBytes> description,
      Function<String, Optional<NamedBytes>> beside) {
    this(recordings, sheet, description, beside, List.of(), Optional.empty());
  }

  /** The same with another sheet under the same name. */
  public Inputs withSheet(byte[] yaml) {
    NamedBytes other = NamedBytes.of(sheet.name(), yaml);
    return new Inputs(recordings, other, description, beside, byHand, earlier);
  }

  /** The same with a plate description. */
  Inputs withDescription(Optional<NamedBytes> other) {
    return new Inputs(recordings, sheet, other, beside, byHand, earlier);
  }

  /** The same with stretches that the user set. */
  public Inputs withByHand(List<NamedStretch> set) {
    return new Inputs(recordings, sheet, description, beside, set, earlier);
  }

  /** The same with states before. */
  public Inputs withEarlier(Optional<NamedBytes> states) {
    return new Inputs(recordings, sheet, description, beside, byHand, states);
  }

  /**
   * The same with answers in the sheet.
   *
   * @throws BadInput if the sheet cannot be read
   */
  public Inputs answered(List<String> answers) throws BadInput {
    return withSheet(SheetAnswers.with(sheet.readAll(), answers));
  }
}
