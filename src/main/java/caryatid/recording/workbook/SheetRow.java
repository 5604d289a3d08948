package caryatid.recording.workbook;

import java.util.List;

/**
 * A row of a sheet.
 *
 * @param number its number, from 1
 * @param cells what its cells show, from column A to the last one that shows anything
 */
record SheetRow(int number, List<String> cells) {}
