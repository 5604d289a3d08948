package caryatid.cli;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.KeptFiles;
import caryatid.fitting.Store;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a record. */
@Command(
    name = "show",
    mixinStandardHelpOptions = true,
    description = "Shows a record: its timeline, the offsets from stand to stand, makers' limits.")
final class RecordShowCommand extends RecordPart {
  @Parameters(paramLabel = "CODE", description = CODE)
  private String code;

  @Override
  int run(Store store) throws BadInput, StoreFailure {
    FittingRecord record = store.read(code(code));
    RecordText.lines(record, wording()).forEach(out()::println);
    List<Problem> damage = new ArrayList<>(record.damage());
    latestStand(record).ifPresent(stand -> damage.addAll(KeptFiles.damage(record, stand)));
    return sound(damage);
  }

  /** The one that what is shown as now is from; `verify` looks at the files of all. */
  private static Optional<Entry> latestStand(FittingRecord record) {
    return record.valid().stream()
        .filter(e -> e.kind() == EntryKind.STAND)
        .reduce((earlier, later) -> later);
  }
}
