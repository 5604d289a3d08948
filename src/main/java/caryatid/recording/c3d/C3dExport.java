package caryatid.recording.c3d;

import caryatid.recording.model.Markers;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.table.HeaderBlock;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.RowLines;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * The force plates of a C3D file as a table along the laboratory's axes, with all that the file
 * states of them.
 *
 * @param head the names of its columns
 * @param columns the columns by their places in a row
 * @param lines the number of each row
 * @param rateHz samples in a second; 0 where the file does not say
 * @param description what the file, its markers and the stated description say together
 * @param axesFromMarkers whether the axes are concluded, not described
 * @param markers what the markers show; none while the axes are not known
 */
public record C3dExport(
    HeaderBlock head,
    Map<Integer, NumberColumn> columns,
    RowLines lines,
    double rateHz,
    PlateDescription description,
    boolean axesFromMarkers,
    Markers markers) {
  public C3dExport {
    columns = Collections.unmodifiableMap(new TreeMap<>(columns));
  }
}
