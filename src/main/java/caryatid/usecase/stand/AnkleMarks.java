package caryatid.usecase.stand;

import caryatid.entry.RecordOpening;
import caryatid.fitting.FittingRecord;
import caryatid.geometry.Side;
import caryatid.sheet.AmputationLevel;
import caryatid.views.CurrentComponent;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Ankle axes that are typed for an ankle which has none, as the record's components say. */
final class AnkleMarks {
  private static final String ANKLE_AXIS = "ankle axis";
  private static final String FOOT = "foot reference point";

  private AnkleMarks() {}

  /** The legs whose ankle has no axis. */
  static Set<Side> without(FittingRecord record, RecordOpening opening) {
    return opening.side().sides().stream()
        .filter(leg -> opening.level(leg) != AmputationLevel.PARTIAL_FOOT)
        .filter(
            leg ->
                CurrentComponent.statedAnkleAxis(record.valid(), leg)
                    .filter(has -> !has)
                    .isPresent())
        .collect(Collectors.toSet());
  }

  /**
   * The fields that name such an axis; none for a leg whose foot reference point is marked too.
   *
   * @param without the legs whose ankle has no axis
   * @param both whether each row says its leg
   */
  static List<String> fields(Map<String, String> typed, Set<Side> without, boolean both) {
    return rows(typed, ANKLE_AXIS)
        .filter(row -> without.stream().anyMatch(leg -> isOf(typed, row, leg, both)))
        .filter(
            row ->
                rows(typed, FOOT).noneMatch(other -> side(typed, other).equals(side(typed, row))))
        .map(row -> row + "name")
        .toList();
  }

  private static Stream<String> rows(Map<String, String> typed, String name) {
    return IntStream.rangeClosed(1, StandFields.MOST_ROWS)
        .mapToObj(i -> StandFields.LANDMARK + "[" + i + "].")
        .filter(row -> name.equals(typed.get(row + "name")) && StandFields.isTyped(typed, row));
  }

  private static boolean isOf(Map<String, String> typed, String row, Side leg, boolean both) {
    return !both || side(typed, row).equals(leg == Side.LEFT ? "left" : "right");
  }

  private static String side(Map<String, String> typed, String row) {
    return typed.getOrDefault(row + "side", "");
  }
}
