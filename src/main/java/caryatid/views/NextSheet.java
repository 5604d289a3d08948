package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordProblem;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The trial sheet for the next stand, made from the newest one of a record: targets and landmarks
 * are carried over from it, each landmark must be confirmed or measured again, and what changes
 * from stand to stand is left to be filled in. The old landmarks stand in it as comments. Hands
 * that were not free are left to be said again.
 *
 * @param text the new sheet
 * @param earlier the sheets it is based on, by the file names they must have in the same folder
 */
public record NextSheet(String text, Map<String, byte[]> earlier) {
  /** Keys that are carried over by {@code based-on}, or must be filled in each time. */
  private static final Set<String> LEFT_OUT =
      Set.of(
          "trial-sheet",
          "based-on",
          "confirmed",
          "left-out",
          "at",
          "landmarks",
          "targets",
          "notes",
          "as-meant",
          "minutes-walked");

  public NextSheet {
    earlier = Map.copyOf(earlier);
  }

  /** The files that entries keep. */
  public interface KeptBytes {
    /**
     * The bytes of a kept file, as they were added.
     *
     * @throws BadInput if they cannot be read, or are no longer what was added
     */
    byte[] of(Entry entry, KeptFile file) throws BadInput;
  }

  /**
   * Makes the sheet.
   *
   * @param files the files that the record's entries keep
   * @throws BadInput if no stand in the record has a sheet, or it is no longer what was added
   */
  public static NextSheet of(FittingRecord record, KeptBytes files) throws BadInput {
    Entry stand =
        record.valid().stream()
            .filter(e -> e.file(KeptFile.Role.SHEET).isPresent())
            .reduce((before, after) -> after)
            .orElseThrow(
                () ->
                    new BadInput(
                        Problem.at(Place.of(record.code().text()), RecordProblem.NO_STAND)));
    Map<String, byte[]> earlier = new LinkedHashMap<>();
    for (KeptFile file : stand.files()) {
      if (file.is() == KeptFile.Role.SHEET || file.is() == KeptFile.Role.EARLIER_SHEET) {
        earlier.put(file.original(), files.of(stand, file));
      }
    }
    String last = stand.file(KeptFile.Role.SHEET).orElseThrow().original();
    return new NextSheet(text(last, earlier), earlier);
  }

  private static String text(String name, Map<String, byte[]> earlier) {
    List<String> lines =
        new ArrayList<>(List.of("trial-sheet: 1", "based-on: " + name, "confirmed: []"));
    earlier.forEach((sheet, bytes) -> lines.addAll(oldLandmarks(sheet, bytes)));
    lines.add("at:");
    lines(earlier.get(name), key -> !LEFT_OUT.contains(key))
        .map(NextSheet::said)
        .forEach(lines::add);
    return String.join("\n", lines) + "\n";
  }

  /** So that a mark that is measured again is typed over, and none is taken over by itself. */
  private static List<String> oldLandmarks(String name, byte[] sheet) {
    List<String> lines = new ArrayList<>();
    lines(sheet, "landmarks"::equals).map(line -> "# " + line).forEach(lines::add);
    if (!lines.isEmpty()) {
      lines.add(0, "# In " + name + ":");
    }
    return lines;
  }

  /** A hand that touched once is no reason to say so of the next stand. */
  private static String said(String line) {
    return line.matches("hands\\s*:.*") && !line.matches("hands\\s*:\\s*['\"]?free\\b.*")
        ? "hands:"
        : line;
  }

  /** A sheet's lines under some of its keys, in its order. */
  private static Stream<String> lines(byte[] sheet, Predicate<String> wanted) {
    List<String> lines = new ArrayList<>();
    Optional<String> block = Optional.empty();
    for (String line : new String(sheet, StandardCharsets.UTF_8).lines().toList()) {
      if (line.matches("[a-z-]+\\s*:.*")) {
        block = Optional.of(line.substring(0, line.indexOf(':')).strip());
      }
      if (block.filter(wanted).isPresent() && !line.isBlank()) {
        lines.add(line);
      }
    }
    return lines.stream();
  }
}
