package caryatid.entry;

import caryatid.remark.Coded;

/** Whether a prosthetic knee was locked. */
public enum KneeLock implements Coded {
  LOCKED("KneeLock.LOCKED"),
  NOT_LOCKED("KneeLock.NOT_LOCKED");

  private final String code;

  KneeLock(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
