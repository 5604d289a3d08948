package caryatid.usecase.file;

import caryatid.remark.Topic;

/** Why a file or folder cannot be used. */
public enum FileProblem implements Topic {
  NO_SUCH_FILE("Cli.NO_SUCH_FILE"),
  IS_A_FOLDER("Cli.IS_A_FOLDER"),
  NO_ORDINARY_FILE("Cli.NO_ORDINARY_FILE"),
  NOT_READABLE("Cli.NOT_READABLE"),
  OUTPUT_EXISTS("Cli.OUTPUT_EXISTS"),
  /** Arguments: the reason, in the system's words. */
  CANNOT_WRITE("Cli.CANNOT_WRITE"),
  NOT_A_FOLDER("Cli.NOT_A_FOLDER"),
  /** A folder that lies in the one that is meant. */
  STORAGE_ROOT("Cli.STORAGE_ROOT");

  private final String code;

  FileProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
