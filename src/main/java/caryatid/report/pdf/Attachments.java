package caryatid.report.pdf;

import caryatid.remark.Coded;
import java.util.List;

/** Files to be kept inside a report, so that it can be computed again from itself. */
public record Attachments(List<AttachedFile> files) {
  /** Nothing to keep. */
  public static final Attachments NONE = new Attachments(List.of());

  public Attachments {
    files = List.copyOf(files);
  }

  /** What a file is to the report (associated files of PDF/A-3, ISO 19005-3, 6.8). */
  public enum AttachmentRole implements Coded {
    RECORDING("Role.RECORDING"),
    TRIAL_SHEET("Role.TRIAL_SHEET"),
    PLATE_DESCRIPTION("Role.PLATE_DESCRIPTION"),
    OTHER_SHEET("Role.OTHER_SHEET"),
    /** The states before, as the check was given them. */
    EARLIER_STATES("Role.EARLIER_STATES"),
    RESULT("Role.RESULT");

    private final String code;

    AttachmentRole(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /**
   * A file.
   *
   * @param role what it is to the report
   * @param name its name, without folders
   * @param bytes its content; not copied
   */
  @SuppressWarnings("ArrayRecordComponent") // carried through, never compared
  public record AttachedFile(AttachmentRole role, String name, byte[] bytes) {}
}
