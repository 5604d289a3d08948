package caryatid.exchange;

import caryatid.remark.Topic;

/** Why a record cannot be told or sent to a clinic's system. */
enum ExchangeProblem implements Topic {
  /** Arguments: an example. */
  BAD_PATIENT("Exchange.BAD_PATIENT"),
  ERASED("Exchange.ERASED"),
  /** Arguments: the entry's number. */
  NEWER("Exchange.NEWER"),
  /** Arguments: the report's size and the largest one, MB. */
  TOO_LARGE("Exchange.TOO_LARGE"),
  /** Arguments: an example. */
  BAD_ADDRESS("Exchange.BAD_ADDRESS"),
  NOT_ENCRYPTED("Exchange.NOT_ENCRYPTED"),
  BAD_TOKEN("Exchange.BAD_TOKEN"),
  BAD_SENDER("Exchange.BAD_SENDER"),
  OTHER_FILE("Exchange.OTHER_FILE"),
  NO_PATIENT("Exchange.NO_PATIENT"),
  /** Arguments: how many. */
  SEVERAL_PATIENTS("Exchange.SEVERAL_PATIENTS"),
  UNREACHABLE("Exchange.UNREACHABLE"),
  NOT_TRUSTED("Exchange.NOT_TRUSTED"),
  /** Arguments: seconds. */
  TOO_SLOW("Exchange.TOO_SLOW"),
  BROKEN_OFF("Exchange.BROKEN_OFF"),
  /** Arguments: the other host. */
  ELSEWHERE("Exchange.ELSEWHERE"),
  /** Arguments: HTTP status. */
  NOT_LET_IN("Exchange.NOT_LET_IN"),
  /** Arguments: HTTP status. */
  SYSTEM_FAILED("Exchange.SYSTEM_FAILED"),
  /** Arguments: HTTP status, codes of what is wrong. */
  REFUSED("Exchange.REFUSED"),
  NOT_UNDERSTOOD("Exchange.NOT_UNDERSTOOD"),
  /** Arguments: the resource's type. */
  NOT_THERE("Exchange.NOT_THERE"),
  /** Arguments: the resource's type. */
  OTHER_PATIENT("Exchange.OTHER_PATIENT"),
  /** Arguments: the resource's type, the member. */
  STORED_OTHERWISE("Exchange.STORED_OTHERWISE"),
  /** A second sentence: the file is there, and one can go on. */
  KEPT_TO_GO_ON("Exchange.KEPT_TO_GO_ON");

  private final String code;

  ExchangeProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
