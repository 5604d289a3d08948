package caryatid.report;

import caryatid.alignment.StateRemark;
import caryatid.loadline.LoadLineRemark;
import caryatid.remark.Topic;
import caryatid.standing.StandRemark;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every topic the program knows, found by its key. */
final class Topics {
  /** One enum a package; an architecture test holds that none is missing. */
  static final List<Class<? extends Topic>> KNOWN =
      List.of(Archived.class, StandRemark.class, LoadLineRemark.class, StateRemark.class);

  private static final Map<String, Topic> BY_KEY =
      KNOWN.stream()
          .flatMap(topics -> Stream.of(topics.getEnumConstants()))
          .collect(Collectors.toUnmodifiableMap(Topic::key, Function.identity()));

  private Topics() {}

  static Optional<Topic> of(String key) {
    return Optional.ofNullable(BY_KEY.get(key));
  }
}
