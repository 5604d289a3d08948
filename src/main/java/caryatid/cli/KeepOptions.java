package caryatid.cli;

import caryatid.alignment.Result;
import caryatid.entry.Entry;
import caryatid.fitting.Addable;
import caryatid.fitting.Addition;
import caryatid.fitting.Doubles;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.fitting.Stands;
import caryatid.fitting.Store;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Check;
import caryatid.usecase.Inputs;
import caryatid.usecase.RecordedStand;
import caryatid.usecase.ReportPage;
import caryatid.wording.Wording;
import java.io.PrintWriter;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** Whether a check goes into a fitting record at once. */
final class KeepOptions {
  @Option(
      names = "--record",
      paramLabel = "CODE",
      description = "Add the stand to this fitting record, with its files.")
  private String code;

  @Option(
      names = "--by",
      paramLabel = "INITIALS",
      description = "Initials of who adds it; the sheet's practitioner if left out.")
  private String by;

  @Option(
      names = "--sure",
      description =
          "With --record: the sheet's words say nothing about who the wearer is, whatever they look"
              + " like.")
  private boolean sure;

  @Mixin private RecordsFolder records;

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  private Optional<Store> store = Optional.empty();

  /** Refuses early, before any work, a record that cannot be added to. */
  void check(Wording wording) throws BadInput {
    if (code != null) {
      store = Optional.of(records.store(wording));
      Addable.require(store.get().read(RecordCode.of(code)));
    }
  }

  /** Refuses a stand that could not be kept, before anything is written. */
  void check(Inputs inputs, Check.Checked checked) throws BadInput, StoreFailure {
    if (store.isPresent()) {
      FittingRecord record = store.get().read(RecordCode.of(code));
      Addition stand =
          RecordedStand.of(inputs, checked, new byte[0], initials(checked.result()))
              .checked(CaryatidCommand.now(spec));
      if (!sure) {
        stand.anonymous();
      }
      Stands.requireOwn(record, checked.result().states().get(0).stands().get(0).trial());
      Doubles.requireNew(record, stand);
    }
  }

  /** Adds the check to the record, where one was named, and says what is then to be known. */
  void keep(
      Inputs inputs, Check.Checked checked, ReportOptions report, Wording wording, PrintWriter out)
      throws BadInput, StoreFailure {
    if (store.isEmpty()) {
      return;
    }
    RecordCode record = RecordCode.of(code);
    byte[] pdf = ReportPage.pdf(inputs, checked, wording, report.paper());
    Addition stand = RecordedStand.of(inputs, checked, pdf, initials(checked.result()));
    Entry added = store.get().add(record, stand);
    out.println(
        wording.fill(
            "Record.added",
            Argument.count(added.number()),
            Argument.text(code),
            Argument.term(added.kind())));
    RecordText.warnings(store.get().read(record), added, wording).forEach(out::println);
  }

  private String initials(Result result) {
    Optional<String> practitioner =
        result.states().get(0).stands().get(0).trial().notes().practitioner();
    return Optional.ofNullable(by).or(() -> practitioner).orElse("");
  }
}
