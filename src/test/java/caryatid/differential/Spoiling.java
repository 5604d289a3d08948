package caryatid.differential;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * What can happen to an export: on its way, in somebody's settings, or on the plate. Each changes
 * lines (head first, then rows) by chance.
 */
enum Spoiling {
  ROW_LOST((export, random) -> export.rows().remove(export.anyRow(random))),
  ROW_TWICE(
      (export, random) -> {
        int row = export.anyRow(random);
        export.rows().add(row, export.rows().get(row));
      }),
  ROWS_SWAPPED(
      (export, random) -> {
        int row = random.nextInt(export.rows().size() - 1);
        Collections.swap(export.rows(), row, row + 1);
      }),
  ROWS_LOST(
      (export, random) -> {
        int from = export.anyRow(random);
        int to = Math.min(export.rows().size(), from + 1 + random.nextInt(60));
        export.rows().subList(from, to).clear();
      }),
  EVERY_OTHER_ROW(
      (export, random) -> {
        List<String[]> kept = new ArrayList<>();
        for (int i = 0; i < export.rows().size(); i += 2) {
          kept.add(export.rows().get(i));
        }
        export.rows().clear();
        export.rows().addAll(kept);
      }),
  CUT_SHORT(
      (export, random) ->
          export.rows().subList(export.anyRow(random) / 2 + 1, export.rows().size()).clear()),
  HEAD_LINE_LOST((export, random) -> export.head().remove(random.nextInt(export.head().size()))),
  HEAD_LINE_TWICE(
      (export, random) -> {
        int line = random.nextInt(export.head().size());
        export.head().add(line, export.head().get(line));
      }),
  HEAD_CHARACTER(
      (export, random) -> {
        int line = random.nextInt(export.head().size());
        export.head().set(line, withCharacter(export.head().get(line), random));
      }),
  CELL_CHARACTER((export, random) -> export.anyCell(random, cell -> withCharacter(cell, random))),
  CELL_EMPTY((export, random) -> export.anyCell(random, cell -> "")),
  CELL_TEXT((export, random) -> export.anyCell(random, cell -> "n/a")),
  CELL_HUGE((export, random) -> export.anyCell(random, cell -> "9000000000")),
  CELL_QUOTED((export, random) -> export.anyCell(random, cell -> '"' + cell + '"')),
  CELL_MORE(
      (export, random) -> {
        int row = export.anyRow(random);
        String[] cells = export.rows().get(row);
        String[] more = Arrays.copyOf(cells, cells.length + 1);
        more[cells.length] = "5";
        export.rows().set(row, more);
      }),
  LINE_OF_TEXT(
      (export, random) -> export.rows().add(export.anyRow(random), new String[] {"*** event ***"})),
  COLUMN_ZERO((export, random) -> export.anyColumn(random, value -> 0)),
  COLUMN_CONSTANT(
      (export, random) -> {
        double constant = Math.rint(random.nextGaussian() * 1000) / 10;
        export.anyColumn(random, value -> constant);
      }),
  COLUMN_NEGATED((export, random) -> export.anyColumn(random, value -> -value)),
  COLUMN_SCALED(
      (export, random) -> {
        double factor = Math.pow(10, random.nextInt(7) - 3);
        export.anyColumn(random, value -> value * factor);
      }),
  COLUMN_SHIFTED(
      (export, random) -> {
        double by = random.nextGaussian() * 50;
        export.anyColumn(random, value -> value + by);
      }),
  COLUMN_NOISY(
      (export, random) -> {
        double sd = Math.exp(random.nextGaussian() * 2);
        export.anyColumn(random, value -> value + sd * random.nextGaussian());
      }),
  COLUMN_DRIFTS(
      (export, random) -> {
        double each = random.nextGaussian() / 10;
        double[] sum = new double[1];
        export.anyColumn(random, value -> value + (sum[0] += each));
      }),
  COLUMNS_SWAPPED(
      (export, random) -> {
        int one = export.anyColumn(random);
        int other = export.anyColumn(random);
        export
            .rows()
            .forEach(
                row -> {
                  if (row.length > Math.max(one, other)) {
                    String kept = row[one];
                    row[one] = row[other];
                    row[other] = kept;
                  }
                });
      }),
  STEPPED_OFF(
      (export, random) -> {
        int from = export.anyRow(random);
        int to = Math.min(export.rows().size(), from + 200);
        export.rows().subList(from, to).forEach(row -> export.scale(row, 0.02));
      }),
  FORCES_SCALED(
      (export, random) -> {
        double factor = 0.3 + random.nextDouble() * 2;
        export.rows().forEach(row -> export.scale(row, factor));
      }),
  OTHER_DECIMAL_MARK((export, random) -> export.swapMarks()),
  CR_LF((export, random) -> export.endLinesWith("\r\n")),
  BYTE_ORDER_MARK((export, random) -> export.head().set(0, "\uFEFF" + export.head().get(0)));

  private interface Change {
    void on(Export export, Random random);
  }

  private static final String STRANGE = "ax;\"'#\u00e9|_ -+.,0123456789\t";

  private final Change change;

  Spoiling(Change change) {
    this.change = change;
  }

  /** Changes an export, where it has rows and a head left to change. */
  void spoil(Export export, Random random) {
    if (export.rows().size() > 4 && !export.head().isEmpty()) {
      change.on(export, random);
    }
  }

  private static String withCharacter(String text, Random random) {
    if (text.isEmpty()) {
      return "x";
    }
    int at = random.nextInt(text.length());
    char strange = STRANGE.charAt(random.nextInt(STRANGE.length()));
    return text.substring(0, at) + strange + text.substring(at + 1);
  }

  /** All of them, to draw from. */
  static final List<Spoiling> ALL = List.of(values());
}
