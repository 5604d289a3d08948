package caryatid.cli;

import caryatid.entry.form.Answers;
import caryatid.fitting.Comparison;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.Store;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.wording.EntryWords;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Compares two states of a record. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description =
        "Shows what differs between two states of a record, each as it was after an entry.")
final class RecordCompareCommand extends RecordPart {
  @Parameters(index = "0", paramLabel = "CODE", description = CODE)
  private String code;

  @Parameters(
      index = "1",
      paramLabel = "ENTRY",
      description = "The earlier state: up to this entry.")
  private int from;

  @Parameters(index = "2", paramLabel = "ENTRY", description = "The later state: up to this entry.")
  private int to;

  @Override
  int run(Store store) throws BadInput, StoreFailure {
    FittingRecord record = store.read(code(code));
    Comparison comparison = Comparison.of(record, from, to);
    RecordText.lost(record, wording()).forEach(out()::println);
    List<String> lines =
        comparison.differences().stream().flatMap(d -> line(d).stream()).distinct().toList();
    say(lines.isEmpty() ? "Record.same" : "Record.differs", from, to);
    lines.forEach(line -> out().println(Shown.line(line)));
    return sound(record.damage());
  }

  /** A difference, unless it is in digits that are not shown. */
  private Optional<String> line(Comparison.Difference difference) {
    String before = text(difference, difference.before());
    String after = text(difference, difference.after());
    String row = difference.row().isEmpty() ? "" : ", " + difference.row();
    String what =
        wording().word(difference.kind())
            + row
            + ", "
            + new EntryWords(wording()).label(difference.field());
    return before.equals(after)
        ? Optional.empty()
        : Optional.of(wording().fill("Record.difference", texts(what, before, after)));
  }

  private String text(Comparison.Difference difference, Optional<Answers.Value> value) {
    boolean number = value.filter(Answers.Value.Amount.class::isInstance).isPresent();
    String unit = number && !difference.unit().isEmpty() ? " " + difference.unit() : "";
    return value
        .map(v -> new EntryWords(wording()).value(difference.field(), v) + unit)
        .orElse(wording().word("Record.nothing"));
  }
}
