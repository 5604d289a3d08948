package caryatid.web;

import java.nio.file.Path;
import java.util.List;

/** A browser as a person has one, as far as {@link Hand} needs it. */
interface RealBrowser extends AutoCloseable {
  /** Goes in by the start file, as its owner does. */
  void open(Window window);

  /** Saves what is downloaded into a folder without asking. */
  void saveTo(Path folder);

  /**
   * Runs the body of a function on the page, with texts for its arguments.
   *
   * @return what it returns: a text, a number, a truth, a list of them, or null
   */
  Object run(String script, Object... arguments);

  /** Presses keys, one after the other. */
  void write(CharSequence keys);

  /** Gives files to the field that asks for some. */
  void give(String id, List<Path> files);

  /** What it has asked of anybody, since the last time. */
  List<String> asked();

  /** Errors of scripts, and what the content security policy refused, since the last time. */
  List<String> complaints();

  @Override
  void close();
}
