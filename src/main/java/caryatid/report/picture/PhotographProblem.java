package caryatid.report.picture;

import caryatid.remark.Topic;

/** Why a photograph cannot be kept. */
public enum PhotographProblem implements Topic {
  NOT_A_PICTURE("PhotographProblem.NOT_A_PICTURE"),
  /** Arguments: the most megapixels, the most MB. */
  TOO_LARGE("PhotographProblem.TOO_LARGE"),
  /** Arguments: the reason. */
  UNREADABLE("PhotographProblem.UNREADABLE"),
  /** Nobody said whether the original is kept. */
  ORIGINAL("PhotographProblem.ORIGINAL");

  private final String code;

  PhotographProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
