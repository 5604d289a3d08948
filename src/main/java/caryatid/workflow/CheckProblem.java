package caryatid.workflow;

import caryatid.remark.Topic;

/** Why inputs that are fine one by one cannot be checked together. */
public enum CheckProblem implements Topic {
  SAME_NAME,
  SAME_RECORDING
}
