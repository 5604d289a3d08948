package caryatid.blackbox;

import caryatid.cli.Main;
import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One command as a person would give it, run inside the test's own JVM.
 *
 * @param code exit code
 * @param out what it printed
 * @param err what it complained about
 */
record Run(int code, String out, String err) {

  static Run caryatid(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
    return new Run(code, out.toString(), err.toString());
  }
}
