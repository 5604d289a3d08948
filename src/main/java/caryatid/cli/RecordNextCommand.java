package caryatid.cli;

import caryatid.fitting.FittingRecord;
import caryatid.fitting.NextSheet;
import caryatid.fitting.Store;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Output;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes the trial sheet for the next stand. */
@Command(
    name = "next",
    mixinStandardHelpOptions = true,
    description =
        "Writes the trial sheet for the next stand; targets and landmarks carry over from the last"
            + " one.")
final class RecordNextCommand extends RecordPart {
  @Parameters(index = "0", paramLabel = "CODE", description = CODE)
  private String code;

  @Parameters(
      index = "1",
      paramLabel = "SHEET",
      description = "The file to write; it must not be there yet.")
  private Path sheet;

  @Override
  int run(Store store) throws BadInput, StoreFailure {
    FittingRecord record = store.read(code(code));
    NextSheet next = NextSheet.of(record);
    RecordText.lost(record, wording()).forEach(out()::println);
    Output file = new Output(sheet, false);
    CaryatidCommand.FILES.requireFree(file);
    for (Map.Entry<String, byte[]> earlier : next.earlier().entrySet()) {
      beside(sheet.resolveSibling(earlier.getKey()), earlier.getValue());
    }
    CaryatidCommand.FILES.write(file, next.text().getBytes(StandardCharsets.UTF_8));
    say("Record.next", sheet);
    return 0;
  }

  /** An earlier sheet that lies there already, the same, is left alone. */
  private static void beside(Path path, byte[] bytes) throws BadInput, StoreFailure {
    try {
      if (Files.isRegularFile(path) && Arrays.equals(Files.readAllBytes(path), bytes)) {
        return;
      }
    } catch (IOException e) {
      // Then it cannot be the same.
    }
    Output file = new Output(path, false);
    CaryatidCommand.FILES.requireFree(file);
    CaryatidCommand.FILES.write(file, bytes);
  }
}
