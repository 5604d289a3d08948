package caryatid.recording;

/** What a column of an export holds for one plate; x, y, z are the export's own axes. */
public enum Channel {
  FORCE_X,
  FORCE_Y,
  FORCE_Z,
  MOMENT_X,
  MOMENT_Y,
  MOMENT_Z,
  COP_X,
  COP_Y,
  COP_Z
}
