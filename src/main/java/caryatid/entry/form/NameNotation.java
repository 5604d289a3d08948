package caryatid.entry.form;

/** How names are written where a form is filled in. */
public enum NameNotation {
  /** By a person: as words; usual rows that the program offers come as codes. */
  INPUT,
  /** As words alone: entries of version 1. */
  WORDS,
  /** As a group of code and text: entries from version 2 on. */
  CODES
}
