package caryatid.recording.track;

import caryatid.recording.model.Channel;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.table.ColumnMeaning;
import caryatid.recording.table.HeaderBlock;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The plates that columns' names tell apart, and the versions in which one is there. */
final class NamedPlates {
  /** A plate's columns by version, in the file's order. */
  private static final class Versions {
    private final Map<String, Map<Channel, Integer>> columns = new LinkedHashMap<>();

    /** Takes a column; false if the version has one of that channel already. */
    boolean take(ColumnMeaning meaning, int index) {
      Map<Channel, Integer> channels =
          columns.computeIfAbsent(meaning.version(), v -> new EnumMap<>(Channel.class));
      return channels.putIfAbsent(meaning.channel().orElseThrow(), index) == null;
    }

    /** One column a channel, the first version's where there are several. */
    Map<Channel, Integer> first() {
      Map<Channel, Integer> first = new TreeMap<>();
      columns.values().forEach(version -> version.forEach(first::putIfAbsent));
      return first;
    }

    /** The channels of which there are several versions. */
    Set<Channel> open() {
      Set<Channel> open = new TreeSet<>(first().keySet());
      open.removeIf(channel -> of(channel).size() < 2);
      return open;
    }

    List<Integer> of(Channel channel) {
      return columns.values().stream()
          .flatMap(v -> Optional.ofNullable(v.get(channel)).stream())
          .toList();
    }
  }

  private final HeaderBlock head;

  NamedPlates(HeaderBlock head) {
    this.head = head;
  }

  /**
   * The plates.
   *
   * @param asking whether to ask what the names leave open, as no description says it
   */
  Outcome<List<PlateColumns>> plates(boolean asking, String file) {
    StageMessages messages = StageMessages.none(file);
    Map<String, Versions> plates = new LinkedHashMap<>();
    List<ColumnMeaning> meanings = ColumnMeaning.of(head.columns());
    for (int i = 0; i < meanings.size(); i++) {
      ColumnMeaning meaning = meanings.get(i);
      if (meaning.channel().isPresent()
          && !plates.computeIfAbsent(meaning.plate(), p -> new Versions()).take(meaning, i)
          && asking) {
        messages =
            messages.withProblem(
                place(file),
                ImportProblem.TWICE,
                Argument.text(name(i)),
                Argument.text(head.names()));
      }
    }
    List<PlateColumns> found = new ArrayList<>();
    for (Map.Entry<String, Versions> each : plates.entrySet()) {
      PlateColumns plate = plate(name(each.getKey(), plates.keySet()), each.getValue());
      found.add(plate);
      if (asking && plate.tellsCop() && !plate.open().isEmpty()) {
        messages = messages.and(ask(plate, each.getValue(), file));
      }
    }
    return new Outcome<>(found, messages);
  }

  /** A plate's name; one without a number gets the first that no other has. */
  private static String name(String telling, Set<String> all) {
    Set<String> taken =
        all.stream()
            .filter(t -> !t.isEmpty())
            .map(ColumnMeaning::plateName)
            .collect(Collectors.toCollection(TreeSet::new));
    int number = 1;
    while (telling.isEmpty() && taken.contains(ColumnMeaning.plateName(Integer.toString(number)))) {
      number++;
    }
    return ColumnMeaning.plateName(telling.isEmpty() ? Integer.toString(number) : telling);
  }

  private static PlateColumns plate(String name, Versions versions) {
    return new PlateColumns(PlateColumns.bare(name), versions.first(), Map.of(), versions.open());
  }

  private StageMessages ask(PlateColumns plate, Versions versions, String file) {
    String several =
        plate.open().stream()
            .map(c -> versions.of(c).stream().map(this::name).collect(Collectors.joining(" / ")))
            .collect(Collectors.joining(", "));
    String first =
        plate.columns().entrySet().stream()
            .map(c -> AxesText.key(c.getKey()) + ": " + name(c.getValue()))
            .collect(Collectors.joining(", "));
    return StageMessages.none(file)
        .withProblem(
            place(file),
            ImportProblem.WHICH_VERSION,
            Argument.text(plate.name()),
            Argument.text(several),
            Argument.text(first));
  }

  private Place place(String file) {
    return new Place(file, head.headerLine(), Optional.empty());
  }

  private String name(int index) {
    return head.columns().get(index).full();
  }
}
