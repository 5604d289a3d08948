package caryatid.recording.track;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.table.ColumnMapping;
import caryatid.recording.table.ColumnMeaning;
import caryatid.recording.table.HeaderBlock;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/** Decides what a table's columns mean: by the description, else by their names. */
public final class ColumnMapper {
  private final String file;
  private final Optional<PlateDescription> description;

  public ColumnMapper(String file, Optional<PlateDescription> description) {
    this.file = file;
    this.description = description;
  }

  public ColumnMapping map(HeaderBlock head) {
    Outcome<List<PlateColumns>> plates = plates(head);
    Outcome<OptionalInt> time = time(head, plates.messages());
    StageMessages messages = time.messages().and(twoMeanings(time.value(), plates.value(), head));
    List<PlateColumns> telling = telling(plates);
    OptionalInt index = index(time.value(), telling, head);
    return new ColumnMapping(time.value(), index, telling, messages.problems());
  }

  /**
   * The plates that tell a centre of pressure. Where none does, and no column is missing or in
   * question, those that tell one direction of it.
   */
  private static List<PlateColumns> telling(Outcome<List<PlateColumns>> plates) {
    boolean some =
        plates.value().stream().anyMatch(PlateColumns::tellsCop) || !plates.messages().clean();
    return plates.value().stream()
        .filter(plate -> some ? plate.tellsCop() : plate.tellsOneDirection())
        .toList();
  }

  private Outcome<List<PlateColumns>> plates(HeaderBlock head) {
    Outcome<List<PlateColumns>> named = new NamedPlates(head).plates(columnsUndescribed(), file);
    StageMessages messages = named.messages();
    List<PlateColumns> plates = new ArrayList<>();
    DescribedPlates described = new DescribedPlates(description, head, file);
    for (PlateLayout layout : description.map(PlateDescription::plates).orElse(List.of())) {
      Outcome<Optional<PlateColumns>> plate = described.described(layout, named.value(), messages);
      messages = plate.messages();
      plate.value().ifPresent(plates::add);
    }
    boolean plain = description.map(d -> d.plates().isEmpty()).orElse(true);
    boolean byName = plain && !messages.has(ImportProblem.TWICE);
    return new Outcome<>(byName ? named.value() : plates, messages);
  }

  private Outcome<OptionalInt> time(HeaderBlock head, StageMessages earlier) {
    Optional<String> called = description.flatMap(d -> d.time().column());
    if (called.isPresent()) {
      return new DescribedPlates(description, head, file).find(called.get(), earlier);
    }
    OptionalInt named =
        rateDescribed() ? OptionalInt.empty() : ofKind(head, ColumnMeaning.ColumnKind.TIME);
    return new Outcome<>(named, earlier);
  }

  /**
   * Without times, or with a rate in their place, a column that counts samples reveals lost ones.
   */
  private OptionalInt index(OptionalInt time, List<PlateColumns> plates, HeaderBlock head) {
    OptionalInt numbers = ofKind(head, ColumnMeaning.ColumnKind.INDEX);
    OptionalInt index =
        numbers.isEmpty() && rateDescribed()
            ? ofKind(head, ColumnMeaning.ColumnKind.TIME)
            : numbers;
    boolean taken =
        time.isPresent()
            || plates.stream()
                .flatMap(PlateColumns::wanted)
                .anyMatch(i -> index.equals(OptionalInt.of(i)));
    return taken ? OptionalInt.empty() : index;
  }

  private boolean rateDescribed() {
    return description.map(d -> d.time().rateHz().isPresent()).orElse(false);
  }

  /** The columns that have two meanings, each a problem. */
  private StageMessages twoMeanings(OptionalInt time, List<PlateColumns> plates, HeaderBlock head) {
    Set<Integer> used = new HashSet<>();
    List<Problem> problems =
        IntStream.concat(
                time.stream(), plates.stream().flatMap(PlateColumns::wanted).mapToInt(i -> i))
            .filter(i -> !used.add(i))
            .distinct()
            .mapToObj(i -> head.columns().get(i).full())
            .map(
                name ->
                    Problem.at(place(name, head), ImportProblem.TWO_MEANINGS, Argument.text(name)))
            .toList();
    return StageMessages.none(file).withProblems(problems);
  }

  private Place place(String column, HeaderBlock head) {
    return new Place(file, head.headerLine(), Optional.of(column));
  }

  private static OptionalInt ofKind(HeaderBlock head, ColumnMeaning.ColumnKind kind) {
    return IntStream.range(0, head.columns().size())
        .filter(i -> ColumnMeaning.of(head.columns().get(i)).kind() == kind)
        .findFirst();
  }

  private boolean columnsUndescribed() {
    return description.stream()
        .flatMap(d -> d.plates().stream())
        .allMatch(p -> p.columns().isEmpty() && p.sensors().isEmpty());
  }
}
