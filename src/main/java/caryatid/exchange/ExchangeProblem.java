package caryatid.exchange;

import caryatid.remark.Topic;

/** Why a record cannot be told or sent to a clinic's system. */
enum ExchangeProblem implements Topic {
  /** Arguments: an example. */
  BAD_PATIENT("Exchange.BAD_PATIENT"),
  ERASED("Exchange.ERASED"),
  /** Arguments: the entry's number. */
  NEWER("Exchange.NEWER");

  private final String code;

  ExchangeProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
