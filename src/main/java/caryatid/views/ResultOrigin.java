package caryatid.views;

import caryatid.remark.Argument;
import caryatid.remark.Coded;

/** Where a stand's numbers come from, which follows its entry, with a leading comma. */
public enum ResultOrigin implements Coded {
  /** Somebody typed them: no recording is kept from which they could be computed. */
  TYPED("Origin.TYPED");

  private final String code;

  ResultOrigin(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** What stands behind an entry; nothing where its numbers were computed from a recording. */
  public static Argument behind(boolean typed) {
    return typed ? Argument.term(TYPED) : Argument.text("");
  }
}
