package caryatid.format;

import caryatid.alignment.StateRemark;
import caryatid.loadline.LoadLineRemark;
import caryatid.recording.model.RecordingRemark;
import caryatid.remark.Topic;
import caryatid.standing.StandRemark;
import java.util.stream.Stream;

/** The topics that a result may hold. */
final class Topics {
  /** Each by its code; a test holds that no kind of remark is missing. */
  static final Spellings<Topic> CODES =
      new Spellings<>(
          Stream.<Topic[]>of(
                  RecordingRemark.values(),
                  StandRemark.values(),
                  LoadLineRemark.values(),
                  StateRemark.values())
              .flatMap(Stream::of)
              .toList(),
          Topic::code);

  private Topics() {}
}
