package caryatid.clinic;

import caryatid.remark.Topic;

/** Why what the clinic remembers cannot be read or written. */
enum ClinicProblem implements Topic {
  /** Arguments: the reason. */
  CANNOT_READ("ClinicProblem.CANNOT_READ"),
  /** Arguments: the reason. */
  CANNOT_WRITE("ClinicProblem.CANNOT_WRITE");

  private final String code;

  ClinicProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
