package caryatid.usecase;

/** The program's name and version. */
public final class Program {
  /** The version; a test holds it to the build's. */
  public static final String VERSION = "0.2.0";

  /** Name and version, as written into results. */
  public static final String NAME = "Caryatid " + VERSION;

  private Program() {}
}
