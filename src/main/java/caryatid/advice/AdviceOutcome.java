package caryatid.advice;

/** What an advice comes to. */
public enum AdviceOutcome {
  /** Nothing can be advised. */
  NOT_GIVEN,
  /** Plain causes are to be ruled out first. */
  CAUSES_FIRST,
  /** Every tolerance is met. */
  NOTHING_TO_CHANGE,
  /** What is uncertain is the measurement. */
  MEASURE_AGAIN,
  /** None of the allowed changes makes it more probable. */
  NO_CHANGE_HELPS,
  CHANGE
}
