package caryatid.usecase.stand;

import caryatid.entry.EntryKind;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Records;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** What was typed into the form of an entry and is not kept yet. It goes with its record. */
public final class FormDraft {
  private static final Pattern NAMES = Pattern.compile("[a-z][a-z0-9.\\[\\]-]*");

  private final DraftFile file;

  private FormDraft(DraftFile file) {
    this.file = file;
  }

  /**
   * The draft of a kind of entry.
   *
   * @throws BadInput if a record cannot have this code
   */
  public static FormDraft of(Records records, String code, EntryKind kind) throws BadInput {
    return of(records, code, kind.key());
  }

  /**
   * The draft of a form.
   *
   * @param form small letters, digits and hyphens
   * @throws BadInput if a record cannot have this code
   */
  public static FormDraft of(Records records, String code, String form) throws BadInput {
    return new FormDraft(
        new DraftFile(records.drafts(RecordCode.of(code)).resolve("form-" + form)));
  }

  /** What was typed, by the names of the fields; nothing where nothing was. */
  public Map<String, String> fields() throws StoreFailure {
    return file.read();
  }

  /** Whether anything was typed. */
  public boolean isBegun() throws StoreFailure {
    return !fields().isEmpty();
  }

  /** Keeps what was typed; it is on the disk when this returns. */
  public void type(Map<String, String> fields) throws StoreFailure {
    Map<String, String> named = new LinkedHashMap<>(fields);
    named.keySet().removeIf(name -> !NAMES.matcher(name).matches());
    file.write(named);
  }

  /** Removes it. */
  public void clear() throws StoreFailure {
    file.remove();
  }
}
