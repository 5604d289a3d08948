package caryatid.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What was written and is not yet on the disk: bytes of files, and names in folders. */
final class Unforced {
  private final Set<Path> files = new TreeSet<>();
  private final Set<Path> folders = new TreeSet<>();
  private final List<String> early = new ArrayList<>();

  synchronized void written(Path file) {
    files.add(file);
  }

  synchronized void forced(Path fileOrFolder) {
    files.remove(fileOrFolder);
    folders.remove(fileOrFolder);
  }

  /** A move before the bytes are on the disk may leave the new name with no bytes. */
  synchronized void moved(Path from, Path to) {
    files.stream()
        .filter(file -> file.startsWith(from))
        .forEach(file -> early.add("moved before it was forced: " + file));
    folders.add(to.getParent());
  }

  synchronized void deleted(Path file) {
    files.remove(file);
  }

  /** Moves that came too early. */
  synchronized List<String> early() {
    return List.copyOf(early);
  }

  /** What lies in a folder and is not on the disk, files and folders. */
  synchronized List<Path> in(Path folder) {
    List<Path> left = new ArrayList<>();
    files.stream().filter(file -> file.startsWith(folder)).forEach(left::add);
    folders.stream().filter(each -> each.startsWith(folder)).forEach(left::add);
    return left;
  }
}
