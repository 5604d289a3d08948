package caryatid.cli;

/** Starts the program. */
public final class Main {
  private Main() {}

  /** Runs one command and ends with its exit code. */
  public static void main(String[] args) {
    System.exit(0);
  }
}
