package caryatid.usecase;

import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.store.Backup;
import caryatid.usecase.file.FileAccess;
import java.nio.file.Path;
import java.util.List;

/** Imports a packed record. */
public final class UnpackRecord {
  private UnpackRecord() {}

  /**
   * A record that was taken in.
   *
   * @param headDigest SHA-512 that changes if any byte of any entry changes, hexadecimal
   */
  public record Unpacked(String code, String headDigest) {}

  /**
   * Takes a record in: checked and complete, or not at all.
   *
   * @param by initials of who does it, for others to see meanwhile
   * @throws BadInput if the zip is not there, damaged, hostile or no packed record, or its code is
   *     taken
   * @throws StoreFailure if another program is writing, or the record cannot be written
   */
  public static Unpacked run(Records records, Path zip, String by, FileAccess files)
      throws BadInput, StoreFailure {
    files.read(zip);
    RecordCode code = records.store().unpack(zip, by);
    return new Unpacked(code.text(), records.store().open(code).record().headDigest());
  }

  /**
   * Takes all records of a backup in, where there are none yet: checked and complete, or not at
   * all.
   *
   * @param by initials of who does it, for others to see meanwhile
   * @return their codes
   * @throws BadInput if there are records already, or anything about the backup is wrong
   * @throws StoreFailure if another program is writing, or they cannot be written
   */
  public static List<String> all(Records records, Path folder, String by)
      throws BadInput, StoreFailure {
    return new Backup(records.store(), folder.toAbsolutePath()).restore(by);
  }
}
