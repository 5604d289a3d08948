package caryatid.recording.time;

import caryatid.recording.model.TimeUnit;
import caryatid.recording.table.StageMessages;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The third stage: the recording's times.
 *
 * @param timeline the times; empty, with a problem, where they cannot be known
 * @param unit the unit of the column of times, where there is one and it is known
 * @param messages what was found on the way
 */
public record Timed(Optional<Timeline> timeline, Optional<TimeUnit> unit, StageMessages messages) {
  /** No times are sought. */
  public static Timed unsought(StageMessages messages) {
    return new Timed(Optional.empty(), Optional.empty(), messages);
  }

  /** The same times with other messages. */
  public Timed with(StageMessages others) {
    return new Timed(timeline, unit, others);
  }

  public OptionalDouble rateHz() {
    return timeline.map(t -> OptionalDouble.of(t.rateHz())).orElse(OptionalDouble.empty());
  }
}
