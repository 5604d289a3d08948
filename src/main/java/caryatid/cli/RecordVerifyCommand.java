package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.ListRecords;
import caryatid.usecase.Records;
import caryatid.usecase.VerifyRecord;
import caryatid.wording.RecordText;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Verifies records. */
@Command(
    name = "verify",
    mixinStandardHelpOptions = true,
    description = "Checks every byte of records against their sums, and names what is damaged.")
final class RecordVerifyCommand extends RecordSubcommand {
  @Parameters(
      paramLabel = "CODE",
      arity = "0..*",
      description = "The records; all if none is named.")
  private List<String> codes = new ArrayList<>();

  @Override
  int run(Records records) throws BadInput, StoreFailure {
    List<Problem> found = new ArrayList<>();
    List<String> named = codes.isEmpty() ? all(records) : codes;
    if (named.isEmpty()) {
      say("Record.none", records.folder());
      return 1;
    }
    for (String code : named) {
      VerifyRecord.Verified verified = VerifyRecord.run(records, code);
      if (verified instanceof VerifyRecord.Damaged damaged) {
        found.addAll(damaged.problems());
      } else {
        out().println(inGoodOrder(code, verified));
        if (verified instanceof VerifyRecord.NotRead unread) {
          found.addAll(unread.problems());
        }
      }
    }
    return sound(found);
  }

  private static List<String> all(Records records) throws StoreFailure {
    return ListRecords.run(records).stream().map(ListRecords.Listed::code).toList();
  }

  private String inGoodOrder(String code, VerifyRecord.Verified verified) {
    if (verified instanceof VerifyRecord.Erased erased) {
      return TerminalText.line(RecordText.erased(code, erased.erasure(), wording()));
    }
    return verified instanceof VerifyRecord.NotRead unread
        ? inGoodOrder(code, unread.entries(), unread.headDigest())
        : inGoodOrder(
            code,
            ((VerifyRecord.Sound) verified).entries(),
            ((VerifyRecord.Sound) verified).headDigest());
  }

  /** With the digest that a colleague compares with the one printed on an earlier report. */
  private String inGoodOrder(String code, int entries, String digest) {
    String counted = RecordText.entries(entries, wording());
    return wording().fill("Record.sound", texts(code, counted, digest));
  }
}
