package caryatid.usecase;

import caryatid.remark.Topic;

/** Why inputs that are fine one by one cannot be checked together. */
public enum CheckProblem implements Topic {
  LINES_WITHOUT_DESCRIPTION,
  SAME_NAME,
  SAME_RECORDING
}
