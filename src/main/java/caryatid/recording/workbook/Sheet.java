package caryatid.recording.workbook;

/**
 * A sheet of cells.
 *
 * @param name as its tab shows it
 * @param part its part of the file
 * @param hidden whether its tab is hidden
 */
public record Sheet(String name, String part, boolean hidden) {}
