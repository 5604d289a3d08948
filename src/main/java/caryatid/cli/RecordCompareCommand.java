package caryatid.cli;

import caryatid.fitting.Answers;
import caryatid.fitting.Comparison;
import caryatid.fitting.Store;
import caryatid.remark.BadInput;
import caryatid.wording.EntryWords;
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
  int run(Store store) throws BadInput {
    Comparison comparison = Comparison.of(store.read(code(code)), from, to);
    say(comparison.differences().isEmpty() ? "Record.same" : "Record.differs", from, to);
    comparison.differences().forEach(this::print);
    return 0;
  }

  private void print(Comparison.Difference difference) {
    String row = difference.row().isEmpty() ? "" : ", " + difference.row();
    say(
        "Record.difference",
        wording().word(difference.kind())
            + row
            + ", "
            + new EntryWords(wording()).label(difference.field()),
        text(difference.field(), difference.before()),
        text(difference.field(), difference.after()));
  }

  private String text(String field, Optional<Answers.Value> value) {
    return value
        .map(v -> new EntryWords(wording()).value(field, v))
        .orElse(wording().word("Record.nothing"));
  }
}
