package caryatid.usecase.batch;

import caryatid.remark.Topic;

/** Why a state of a batch, or the batch itself, cannot be checked. */
enum BatchProblem implements Topic {
  /** An export that belongs to no sheet. */
  NO_SHEET("BatchProblem.NO_SHEET"),
  /** A sheet that no export belongs to. Argument: a name that one would have. */
  NO_RECORDING("BatchProblem.NO_RECORDING"),
  /** More than one plate description beside a sheet. Argument: their names. */
  SEVERAL_PLATES("BatchProblem.SEVERAL_PLATES"),
  /** Two states of one name. */
  SAME_NAME("BatchProblem.SAME_NAME"),
  /** A folder or list without a state. */
  NOTHING_FOUND("BatchProblem.NOTHING_FOUND"),
  /** A folder that cannot be read. Argument: the reason. */
  NO_FOLDER("BatchProblem.NO_FOLDER"),
  /** A list without the columns it needs. Argument: those that are there. */
  LIST_COLUMNS("BatchProblem.LIST_COLUMNS"),
  /** A row of a list without a state's name, a recording or a sheet. */
  LIST_ROW("BatchProblem.LIST_ROW"),
  /** A state's name that would lead out of the folder. Argument: the name. */
  LIST_NAME("BatchProblem.LIST_NAME"),
  /** Rows of one state with different sheets or plate descriptions. Argument: the state. */
  LIST_DIFFERS("BatchProblem.LIST_DIFFERS"),
  /** The folder for what is made holds something else. */
  NOT_OURS("BatchProblem.NOT_OURS"),
  /** The program itself failed. Argument: the kind of failure. */
  UNFORESEEN("BatchProblem.UNFORESEEN");

  private final String code;

  BatchProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
