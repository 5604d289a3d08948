package caryatid.blackbox;

import caryatid.cli.Main;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/**
 * One command as a person would give it, run inside the test's own JVM.
 *
 * @param code exit code
 * @param out what it printed
 * @param err what it complained about
 */
public record Run(int code, String out, String err) {
  /** After everything that tests and docs tell, whenever they are run. */
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-12-01T08:00:00Z"), ZoneOffset.UTC);

  public static Run caryatid(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(CLOCK, new PrintWriter(out), new PrintWriter(err), arguments);
    return new Run(code, out.toString(), err.toString());
  }
}
