package caryatid.differential;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Runs cases in both versions and compares what comes of them.
 *
 * @param old the one
 * @param now the other
 * @param folder the one folder that both write to, in turn; emptied before each
 */
record Pair(Version old, Version now, Path folder) {
  /** Of a fault's trace, the fault counts and not the lines of code on its way. */
  private static final Pattern FRAME = Pattern.compile("(?m)^\\tat .*\\R");

  /** Whether words on the terminal count; exit codes, complaints and files always do. */
  private static final boolean WORDS = !Boolean.getBoolean("numbers.only");

  /** What differs in a case; nothing where both are the same to the last byte. */
  List<Difference> differences(Case one) throws IOException {
    Map<String, byte[]> before = parts(old, one);
    Map<String, byte[]> after = parts(now, one);
    Set<String> names = new TreeSet<>(before.keySet());
    names.addAll(after.keySet());
    List<Difference> differences = new ArrayList<>();
    for (String name : names) {
      byte[] was = before.getOrDefault(name, new byte[0]);
      byte[] is = after.getOrDefault(name, new byte[0]);
      if (!Arrays.equals(was, is) || !before.containsKey(name) || !after.containsKey(name)) {
        differences.add(new Difference(one, name, Lines.changed(was, is)));
      }
    }
    return differences;
  }

  /** Whether the old version does a case without complaint. */
  boolean isDone(Case one) {
    empty();
    return one.commands().stream().allMatch(command -> old.run(command).code() == 0);
  }

  /** Exit codes, prints and files, by their names. */
  private Map<String, byte[]> parts(Version version, Case one) throws IOException {
    empty();
    Map<String, byte[]> parts = new TreeMap<>();
    for (int i = 0; i < one.commands().size(); i++) {
      Version.Printed printed = version.run(one.commands().get(i));
      String command = one.commands().size() == 1 ? "" : " of command " + (i + 1);
      parts.put("exit code" + command, (printed.code() + "\n").getBytes(UTF_8));
      if (WORDS || printed.out().startsWith("{")) {
        parts.put("stdout" + command, ResultForms.content(printed.out().getBytes(UTF_8)));
      }
      parts.put("stderr" + command, FRAME.matcher(printed.err()).replaceAll("").getBytes(UTF_8));
    }
    for (Path file : files()) {
      parts.put("file " + folder.relativize(file), ResultForms.content(Files.readAllBytes(file)));
    }
    return parts;
  }

  private List<Path> files() throws IOException {
    if (!Files.exists(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).filter(file -> !isLock(file)).toList();
    }
  }

  /** Locks say who holds them, since when: the time of the machine. */
  private static boolean isLock(Path file) {
    return file.toString().endsWith(".lock");
  }

  private void empty() {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
