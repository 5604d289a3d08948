package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.usecase.CompareStates;
import caryatid.usecase.Records;
import caryatid.wording.ComparisonText;
import caryatid.wording.RecordText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Compares two states of a record. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description =
        "Shows what differs between two states of a record, each as it was after an entry.")
final class RecordCompareCommand extends RecordSubcommand {
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
  int run(Records records) throws BadInput {
    CompareStates.Compared compared = CompareStates.run(records, code, from, to);
    print(RecordText.remarks(compared.lost(), wording()));
    print(ComparisonText.lines(compared.comparison(), wording()));
    return sound(compared.damage());
  }
}
