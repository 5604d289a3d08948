package caryatid.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;

/**
 * Replaces characters that could control a terminal or reverse the direction of text, whatever file
 * or argument they came from.
 */
final class TerminalSanitiser extends FilterWriter {
  private TerminalSanitiser(Writer to) {
    super(to);
  }

  static PrintWriter to(Writer terminal) {
    return new PrintWriter(new TerminalSanitiser(terminal), true);
  }

  @Override
  public void write(int character) throws IOException {
    super.write(TerminalText.isActing((char) character) ? TerminalText.REPLACED : character);
  }

  @Override
  public void write(char[] characters, int from, int length) throws IOException {
    write(new String(characters, from, length), 0, length);
  }

  @Override
  public void write(String text, int from, int length) throws IOException {
    String shown = TerminalText.harmless(text.substring(from, from + length));
    super.write(shown, 0, shown.length());
  }
}
