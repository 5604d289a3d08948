package caryatid.usecase;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.alignment.Foresight;
import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.StoreFailure;
import caryatid.sheet.AmputationLevel;
import caryatid.store.StoredRecord;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.Output;
import caryatid.views.LostEntryRemark;
import caryatid.views.NextSheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** The trial sheet for a record's next stand. */
public final class NextStand {
  private final NextSheet sheet;
  private final List<Foresight> ahead;
  private final boolean prostheticKnee;
  private final List<Remark> lost;
  private final List<Problem> damage;

  private NextStand(
      NextSheet sheet,
      List<Foresight> ahead,
      boolean prostheticKnee,
      List<Remark> lost,
      List<Problem> damage) {
    this.sheet = sheet;
    this.ahead = ahead;
    this.prostheticKnee = prostheticKnee;
    this.lost = lost;
    this.damage = damage;
  }

  /**
   * Makes the sheet.
   *
   * @throws BadInput if there is no such record, or no stand in it has an undamaged sheet
   */
  public static NextStand of(Records records, String code) throws BadInput {
    StoredRecord stored = records.store().open(RecordCode.of(code));
    FittingRecord record = stored.record();
    try {
      NextSheet sheet = NextSheet.of(record, stored::bytes);
      return new NextStand(
          sheet,
          ahead(stored),
          record.levels().stream().anyMatch(AmputationLevel::prostheticKnee),
          LostEntryRemark.of(record),
          record.notShown());
    } catch (BadInput e) {
      throw Records.damageFirst(record, e);
    }
  }

  private static List<Foresight> ahead(StoredRecord stored) {
    List<Entry> stands =
        stored.record().valid().stream()
            .filter(entry -> entry.file(KeptFile.Role.RESULT).isPresent())
            .toList();
    if (stands.isEmpty()) {
      return List.of();
    }
    Entry last = stands.get(stands.size() - 1);
    return KeptResults.of(stored, List.of(last), new ArrayList<>(), new ArrayList<>())
        .values()
        .stream()
        .flatMap(state -> Foresight.of(state).stream())
        .toList();
  }

  /** What the next stand's state will be able to tell, measured as the last one was. */
  public List<Foresight> ahead() {
    return ahead;
  }

  /** Whether a knee of the record belongs to a prosthesis. */
  public boolean prostheticKnee() {
    return prostheticKnee;
  }

  /** Which entries cannot be read, so that the latest stand may be another. */
  public List<Remark> lost() {
    return lost;
  }

  /** What is damaged in the record, and what cannot be read. */
  public List<Problem> damage() {
    return damage;
  }

  /**
   * Writes the sheet, and next to it the earlier ones that it is based on.
   *
   * @param path the sheet; nothing is overwritten
   * @throws BadInput if it is there already, or another file lies where an earlier sheet goes
   * @throws StoreFailure if a file cannot be written
   */
  public void write(Path path, FileAccess files) throws BadInput, StoreFailure {
    Output output = new Output(path, false);
    files.requireFree(output);
    for (Map.Entry<String, byte[]> earlier : sheet.earlier().entrySet()) {
      beside(path.resolveSibling(earlier.getKey()), earlier.getValue(), files);
    }
    files.write(output, sheet.text().getBytes(UTF_8));
  }

  /** An earlier sheet that lies there already, the same, is left alone. */
  private static void beside(Path path, byte[] bytes, FileAccess files)
      throws BadInput, StoreFailure {
    if (files.find(path).filter(there -> isSame(there, bytes)).isPresent()) {
      return;
    }
    Output output = new Output(path, false);
    files.requireFree(output);
    files.write(output, bytes);
  }

  private static boolean isSame(NamedBytes there, byte[] bytes) {
    try {
      return Arrays.equals(there.readAll(), bytes);
    } catch (BadInput unreadable) {
      return false;
    }
  }
}
