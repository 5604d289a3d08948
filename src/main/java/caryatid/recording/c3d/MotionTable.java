package caryatid.recording.c3d;

import caryatid.recording.table.ColumnName;
import caryatid.recording.table.HeaderBlock;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.RowLines;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The plates' columns side by side. */
record MotionTable(HeaderBlock head, Map<Integer, NumberColumn> columns, RowLines lines) {
  MotionTable {
    columns = Map.copyOf(columns);
  }

  static MotionTable of(List<MotionPlate> plates, int rows) {
    List<ColumnName> names = new ArrayList<>();
    Map<Integer, NumberColumn> columns = new TreeMap<>();
    for (MotionPlate plate : plates) {
      for (PlateChannels.Columns held : plate.columns()) {
        for (int i = 0; i < 3; i++) {
          columns.put(names.size(), NumberColumn.of(held.values().get(i)));
          names.add(ColumnName.of("", plate.column(held, i)));
        }
      }
    }
    return new MotionTable(HeaderBlock.named(names), columns, RowLines.every(rows));
  }
}
