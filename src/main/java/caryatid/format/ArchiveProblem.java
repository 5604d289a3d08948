package caryatid.format;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** What can be wrong with a result or a report that is read again. */
public enum ArchiveProblem implements Topic {
  /** Arguments: what the reader of JSON found. */
  NOT_JSON("Archived.NOT_JSON"),
  /** Arguments: the key that stands there twice. */
  KEY_TWICE("Archived.KEY_TWICE"),
  /** Whatever is not known of it, a newer version of the program wrote it. */
  NEWER_VERSION("Archived.NEWER_VERSION"),
  /** Of a record's entry. Arguments: the entry. */
  ENTRY_NEWER("Archived.ENTRY_NEWER"),
  /** Of a record's entry. Arguments: the entry. */
  ENTRY_UNREADABLE("Archived.ENTRY_UNREADABLE"),
  /** Neither known nor newer. Arguments: version found, highest version known. */
  OTHER_VERSION("Archived.OTHER_VERSION"),
  /** Arguments: where in the result, the key. */
  UNKNOWN_KEY("Archived.UNKNOWN_KEY"),
  /** Arguments: where in the result, the key. */
  MISSING_KEY("Archived.MISSING_KEY"),
  /** Arguments: where in the result, what was expected, what was found. */
  NOT_EXPECTED("Archived.NOT_EXPECTED"),
  /** Arguments: where in the result, what is wrong with the value. */
  OUT_OF_RANGE("Archived.OUT_OF_RANGE"),
  /** Arguments: what the reader of PDF found. */
  NOT_A_PDF("Archived.NOT_A_PDF"),
  /** Arguments: what is not inside. */
  NOT_INSIDE("Archived.NOT_INSIDE"),
  /** Nothing is inside, as in the report of a record. */
  NO_STAND_REPORT("Archived.NO_STAND_REPORT"),
  /** A file inside a report that is not among those the report is about. Arguments: its name. */
  FOREIGN_FILE("Archived.FOREIGN_FILE"),
  /** Arguments: number of pages found, number expected. */
  OTHER_PAGES("Archived.OTHER_PAGES"),
  /** A page is not what the program prints of the result inside. Arguments: its number. */
  OTHER_PAGE("Archived.OTHER_PAGE"),
  /** Another part of the document. Arguments: its name in the PDF. */
  OTHER_PART("Archived.OTHER_PART"),
  /** Of a page that can no longer be printed again. Arguments: the numbers of one line. */
  NOT_ON_PAGE("Archived.NOT_ON_PAGE"),
  /** Arguments: the page's layout, the method. */
  NEVER_TOGETHER("Archived.NEVER_TOGETHER");

  private final String code;

  ArchiveProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Weight weight() {
    return Weight.IMPORTANT;
  }
}
