package caryatid.loadline;

/** How a load line was drawn. */
public enum LoadLineMethod {
  /** The vertical through the centre of pressure. */
  VERTICAL,
  /** The line of the mean measured force through the centre of pressure: a second opinion. */
  MEASURED_FORCE
}
