package caryatid.fitting;

import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.List;

/** The files that an entry keeps. */
public final class KeptFiles {
  private KeptFiles() {}

  /** What is wrong with them; empty where all are what was added. */
  public static List<Problem> damage(FittingRecord record, Entry entry) {
    List<Problem> found = new ArrayList<>();
    for (KeptFile file : entry.files()) {
      try {
        record.bytes(entry, file);
      } catch (BadInput e) {
        found.addAll(e.problems());
      }
    }
    return List.copyOf(found);
  }
}
