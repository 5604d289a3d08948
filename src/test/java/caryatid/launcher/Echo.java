package caryatid.launcher;

/**
 * Stands in for the program: says its arguments, and exits with the number that is the last one.
 */
public final class Echo {
  private Echo() {}

  public static void main(String[] arguments) {
    System.out.println("echo " + String.join("|", arguments));
    String last = arguments.length == 0 ? "" : arguments[arguments.length - 1];
    System.exit(last.matches("\\d") ? Integer.parseInt(last) : 0);
  }
}
