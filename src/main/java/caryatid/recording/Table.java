package caryatid.recording;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A table of an export: its head and the columns that were asked for. */
final class Table {
  private final Head head;
  private final Map<Integer, Column> columns = new TreeMap<>();
  private final RowLines lines = new RowLines();

  private final Plan plan;
  private boolean clock;
  private Optional<TimeUnit> timeUnit = Optional.empty();

  Table(Head head, Plan plan) {
    this.head = head;
    this.plan = plan;
    plan.wanted().stream().forEach(i -> columns.put(i, new Column()));
  }

  Head head() {
    return head;
  }

  Plan plan() {
    return plan;
  }

  /** The columns asked for, by their place in a row, from 0. */
  Map<Integer, Column> columns() {
    return columns;
  }

  /**
   * A column that was asked for.
   *
   * @throws IllegalArgumentException if it was not
   */
  Column column(int index) {
    Column column = columns.get(index);
    if (column == null) {
      throw new IllegalArgumentException("column " + index + " was not asked for");
    }
    return column;
  }

  /** The times are written as times of the day. */
  void clockSeen() {
    clock = true;
  }

  /** Whether the times are written as times of the day. */
  boolean clock() {
    return clock;
  }

  /** The unit of the times was found. */
  void timesIn(TimeUnit unit) {
    timeUnit = Optional.of(unit);
  }

  /** The unit of the times, once it is found. */
  Optional<TimeUnit> timeUnit() {
    return timeUnit;
  }

  RowLines lines() {
    return lines;
  }

  int rows() {
    return lines.rows();
  }

  /** What a problem calls a column: its name, or its number where it has none. */
  String columnName(int index) {
    String name = head.columns().get(index).full();
    return name.isEmpty() ? String.valueOf(index + 1) : name;
  }
}
