package caryatid.usecase.batch;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Topic;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;

/**
 * States in a list: a table (CSV, UTF-8) with the columns {@code state}, {@code recording}, {@code
 * sheet} and, where needed, {@code plate}; a row a stand. Paths count from the list's folder.
 */
final class BatchList {
  private static final List<String> NEEDED = List.of("state", "recording", "sheet");
  private static final String PLATE = "plate";

  /** Parts between single slashes; none is a step upwards, a root, a drive or for a terminal. */
  private static final Pattern NAME =
      Pattern.compile("(?!(.*/)?\\.{1,2}(/|$))[^/\\\\:\\p{C}]+(/[^/\\\\:\\p{C}]+)*(?<![. ])");

  private final String list;
  private final Path folder;
  private final Map<String, BatchState> states = new LinkedHashMap<>();

  private BatchList(Path list) {
    this.list = list.toString();
    this.folder = Optional.ofNullable(list.getParent()).orElse(Path.of(""));
  }

  /**
   * The states of a list, in its order.
   *
   * @param plate the plate description of those for which the list names none
   * @throws BadInput if it cannot be read, or a row of it lacks something
   */
  static List<BatchState> states(Path file, NamedBytes bytes, Optional<Path> plate)
      throws BadInput {
    BatchList list = new BatchList(file);
    String text = new String(bytes.readAll(), UTF_8).replaceFirst("^\uFEFF", "");
    if (text.isBlank()) {
      throw bad(Place.of(list.list), BatchProblem.NOTHING_FOUND);
    }
    String header = text.substring(0, (text + "\n").indexOf('\n'));
    char mark = header.contains(";") ? ';' : ',';
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(mark)
            .setHeader()
            .setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW)
            .setSkipHeaderRecord(true)
            .setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(true)
            .get();
    try (CSVParser rows = format.parse(new StringReader(text))) {
      list.requireColumns(rows.getHeaderNames());
      for (CSVRecord row : rows) {
        list.add(row, plate);
      }
    } catch (IOException | UncheckedIOException e) {
      throw new BadInput(
          Problem.at(Place.of(list.list), BatchProblem.LIST_COLUMNS, Argument.why(e)));
    } catch (IllegalArgumentException e) {
      throw new BadInput(
          Problem.at(Place.of(list.list), BatchProblem.LIST_COLUMNS, Argument.text(header)));
    }
    return new ArrayList<>(list.states.values());
  }

  private void requireColumns(List<String> names) throws BadInput {
    if (!names.containsAll(NEEDED)) {
      throw new BadInput(
          Problem.at(
              Place.of(list), BatchProblem.LIST_COLUMNS, Argument.text(String.join(", ", names))));
    }
  }

  private void add(CSVRecord row, Optional<Path> otherwise) throws BadInput {
    Place at = Place.of(list, (int) row.getParser().getCurrentLineNumber());
    if (!row.isConsistent() || NEEDED.stream().anyMatch(name -> row.get(name).isBlank())) {
      throw bad(at, BatchProblem.LIST_ROW);
    }
    String name = row.get("state");
    if (!NAME.matcher(name).matches()) {
      throw bad(at, BatchProblem.LIST_NAME, Argument.text(name));
    }
    Path sheet = path(row.get("sheet"), at);
    Optional<Path> plate = otherwise;
    if (row.isMapped(PLATE) && !row.get(PLATE).isBlank()) {
      plate = Optional.of(path(row.get(PLATE), at));
    }
    List<Path> recordings = new ArrayList<>();
    BatchState before = states.get(name);
    if (before != null) {
      if (!before.sheet().equals(sheet) || !before.plate().equals(plate)) {
        throw bad(at, BatchProblem.LIST_DIFFERS, Argument.text(name));
      }
      recordings.addAll(before.recordings());
    }
    recordings.add(path(row.get("recording"), at));
    states.put(name, new BatchState(name, recordings, sheet, plate, List.of()));
  }

  private Path path(String typed, Place at) throws BadInput {
    try {
      return folder.resolve(typed);
    } catch (InvalidPathException e) {
      throw bad(at, BatchProblem.LIST_ROW);
    }
  }

  private static BadInput bad(Place at, Topic topic, Argument... arguments) {
    return new BadInput(Problem.at(at, topic, arguments));
  }
}
