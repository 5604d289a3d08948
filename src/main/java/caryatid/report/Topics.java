package caryatid.report;

import caryatid.alignment.StateRemark;
import caryatid.loadline.LoadLineRemark;
import caryatid.recording.RecordingRemark;
import caryatid.remark.Topic;
import caryatid.standing.StandRemark;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every topic a result may hold, found by its key. */
final class Topics {
  /** The remarks of every package; a test holds that none is missing. */
  static final List<Class<? extends Topic>> KNOWN =
      List.of(
          RecordingRemark.class,
          StandRemark.class,
          LoadLineRemark.class,
          StateRemark.class,
          Archived.class);

  private static final Map<String, Topic> BY_KEY =
      KNOWN.stream()
          .flatMap(topics -> Stream.of(topics.getEnumConstants()))
          .collect(Collectors.toUnmodifiableMap(Topic::code, Function.identity()));

  private Topics() {}

  static Optional<Topic> of(String key) {
    return Optional.ofNullable(BY_KEY.get(key));
  }
}
