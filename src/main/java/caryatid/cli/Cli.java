package caryatid.cli;

import caryatid.remark.Topic;

/** What can go wrong at the command line. */
enum Cli implements Topic {
  NO_SUCH_FILE,
  IS_A_FOLDER,
  NO_ORDINARY_FILE,
  NOT_READABLE,
  OUTPUT_EXISTS,
  CANNOT_WRITE,
  NOT_A_FOLDER,
  NOT_REPRODUCED,
  NOT_AN_ASSIGNMENT,
  /** Arguments: the key. */
  GIVEN_TWICE,
  STORAGE_ROOT
}
