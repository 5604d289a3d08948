package caryatid.recording;

import java.util.Arrays;
import java.util.Optional;

/** What stands before a number's decimals. */
enum DecimalMark {
  POINT('.'),
  COMMA(',');

  private final char character;

  DecimalMark(char character) {
    this.character = character;
  }

  /** The mark a description states. */
  static Optional<DecimalMark> of(char character) {
    return Arrays.stream(values()).filter(m -> m.character == character).findFirst();
  }

  char character() {
    return character;
  }

  DecimalMark other() {
    return this == POINT ? COMMA : POINT;
  }
}
