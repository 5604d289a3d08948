package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.CompareStates;
import caryatid.usecase.ListRecords;
import caryatid.usecase.NextStand;
import caryatid.usecase.Records;
import caryatid.usecase.ShowRecord;
import caryatid.views.LastGood;
import caryatid.views.RecordView;
import caryatid.views.SinceVisit;
import caryatid.wording.AdviceText;
import caryatid.wording.ChangeText;
import caryatid.wording.ComparisonText;
import caryatid.wording.ForesightText;
import caryatid.wording.RecordText;
import caryatid.wording.VisitText;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The fitting record; its work is in the commands below it. */
@Command(
    name = RecordCommand.NAME,
    mixinStandardHelpOptions = true,
    description = "Keeps the fitting record: one folder per prosthesis, from the bench to walking.")
final class RecordCommand extends CommandGroup {
  static final String NAME = "record";

  /** What one can do with a record, in the order the help names it. */
  static final List<Class<?>> COMMANDS =
      List.of(
          RecordListCommand.class,
          RecordStartCommand.class,
          RecordFormCommand.class,
          RecordAddCommand.class,
          RecordNextCommand.class,
          RecordShowCommand.class,
          RecordCompareCommand.class,
          RecordSinceCommand.class,
          RecordBackCommand.class,
          RecordAdviceCommand.class,
          RecordReportCommand.class,
          RecordVerifyCommand.class,
          RecordBundleCommand.class,
          RecordSendCommand.class,
          RecordPackCommand.class,
          RecordUnpackCommand.class,
          RecordBackupCommand.class,
          RecordRestoreCommand.class,
          RecordEraseCommand.class);

  /** Shows a record. */
  @Command(
      name = "show",
      mixinStandardHelpOptions = true,
      description =
          "Shows a record: its timeline, the offsets from stand to stand, makers' limits.")
  private static final class RecordShowCommand extends OneRecordCommand {
    @Override
    int run(Records records) throws BadInput {
      RecordView view = ShowRecord.run(records, code());
      print(RecordText.lines(view, wording()));
      print(ChangeText.history(ShowRecord.changes(records, code()), view, wording()));
      return sound(view.notShown());
    }
  }

  /** Lists the records. */
  @Command(
      name = "list",
      mixinStandardHelpOptions = true,
      description = "Lists the codes of all records, and of erased ones when and why.")
  private static final class RecordListCommand extends RecordSubcommand {
    @Override
    int run(Records records) throws StoreFailure {
      List<ListRecords.Listed> all = ListRecords.run(records);
      all.forEach(this::print);
      if (all.isEmpty()) {
        say("Record.none", records.folder());
      }
      return 0;
    }

    private void print(ListRecords.Listed record) {
      String line =
          record
              .erasure()
              .map(erasure -> RecordText.erased(record.code(), erasure, wording()))
              .orElse(record.code());
      print(List.of(line));
    }
  }

  /** Compares two states of a record. */
  @Command(
      name = "compare",
      mixinStandardHelpOptions = true,
      description =
          "Shows what differs between two states of a record, each as it was after an entry.")
  private static final class RecordCompareCommand extends OneRecordCommand {
    @Parameters(
        index = "1",
        paramLabel = "ENTRY",
        description = "The earlier state: up to this entry.")
    private int from;

    @Parameters(
        index = "2",
        paramLabel = "ENTRY",
        description = "The later state: up to this entry.")
    private int to;

    @Option(
        names = "--intended",
        paramLabel = "MM",
        description =
            "By how many mm the offsets were meant to change; says how many stands would show it.")
    private Double intendedMm;

    @Option(
        names = "--back",
        paramLabel = "ENTRY",
        description =
            "A state after the later one in which the first setting was back: up to this entry. The"
                + " change is judged against both, so that an even drift cancels.")
    private Integer back;

    @Override
    int run(Records records) throws BadInput {
      CompareStates.Compared compared = CompareStates.run(records, code(), from, to);
      print(RecordText.remarks(compared.lost(), wording()));
      print(ComparisonText.lines(compared.comparison(), wording()));
      print(
          ChangeText.lines(
              compared.changes(),
              compared.comparison().prostheticKnee(),
              intendedMm == null ? OptionalDouble.empty() : OptionalDouble.of(intendedMm),
              wording()));
      if (back != null) {
        CompareStates.Back again = CompareStates.back(records, code(), from, to, back);
        print(
            ChangeText.back(
                back,
                again.sameSetting(),
                again.changes(),
                compared.comparison().prostheticKnee(),
                wording()));
      }
      return sound(compared.damage());
    }
  }

  /** Writes the trial sheet for the next stand. */
  @Command(
      name = "next",
      mixinStandardHelpOptions = true,
      description =
          "Writes the trial sheet for the next stand; targets and landmarks carry over from the"
              + " last one.")
  private static final class RecordNextCommand extends OneRecordCommand {
    @Parameters(
        index = "1",
        paramLabel = "SHEET",
        description = "The file to write; it must not exist yet.")
    private Path sheet;

    @Override
    int run(Records records) throws BadInput, StoreFailure {
      NextStand next = NextStand.of(records, code());
      print(RecordText.remarks(next.lost(), wording()));
      next.write(sheet, CaryatidCommand.FILES);
      say("Record.next", sheet);
      print(ForesightText.lines(next.ahead(), next.prostheticKnee(), wording()));
      return sound(next.damage());
    }
  }

  /** What changed since the last visit. */
  @Command(
      name = "since",
      mixinStandardHelpOptions = true,
      description =
          "Shows what was added to a record since a visit, what it changed, and what is open.")
  private static final class RecordSinceCommand extends OneRecordCommand {
    @Option(
        names = "--day",
        paramLabel = "DAY",
        description =
            "The visit, such as 2026-03-04; the last one before the newest entry's day if left"
                + " out.")
    private LocalDate day;

    @Override
    int run(Records records) throws BadInput {
      Optional<SinceVisit> since = ShowRecord.since(records, code(), Optional.ofNullable(day));
      if (since.isEmpty()) {
        Optional<LocalDate> asked = Optional.ofNullable(day);
        String why = ShowRecord.nothingSince(records, code(), asked).code();
        say(why, code(), asked.map(LocalDate::toString).orElse(""));
        return 0;
      }
      print(VisitText.lines(since.get(), ShowRecord.run(records, code()), wording()));
      return 0;
    }
  }

  /** The way back to the last good setting. */
  @Command(
      name = "back",
      mixinStandardHelpOptions = true,
      description =
          "Shows what to turn to get back to the settings of the last stand in which every"
              + " tolerance was met, in one footwear.")
  private static final class RecordBackCommand extends OneRecordCommand {
    @Option(
        names = "--footwear",
        paramLabel = "FOOTWEAR",
        description =
            "In what the wearer is to stand, as the stands name it; that of the newest stand if"
                + " left out.")
    private String footwear;

    @Override
    int run(Records records) throws BadInput {
      LastGood good = ShowRecord.lastGood(records, code(), Optional.ofNullable(footwear));
      print(VisitText.lines(good, code(), wording()));
      return 0;
    }
  }

  /** What to change next. */
  @Command(
      name = "advice",
      mixinStandardHelpOptions = true,
      description =
          "Says what to change next, learnt from this wearer's stands, how probable it is that"
              + " every tolerance is then met, and what a heel or the wearer's own setting"
              + " changes.")
  private static final class RecordAdviceCommand extends OneRecordCommand {
    @Override
    int run(Records records) throws BadInput {
      ShowRecord.advice(records, code()).forEach(leg -> print(AdviceText.lines(leg, wording())));
      return 0;
    }
  }
}
