package caryatid.recording.table;

import caryatid.remark.Coded;
import java.util.Arrays;
import java.util.Optional;

/** The character before a number's decimals. */
enum DecimalMark implements Coded {
  POINT("DecimalMark.POINT", '.'),
  COMMA("DecimalMark.COMMA", ',');

  private final String code;
  private final char character;

  DecimalMark(String code, char character) {
    this.code = code;
    this.character = character;
  }

  @Override
  public String code() {
    return code;
  }

  /** The mark a description states. */
  static Optional<DecimalMark> of(char character) {
    return Arrays.stream(values()).filter(m -> m.character == character).findFirst();
  }

  public char character() {
    return character;
  }

  DecimalMark other() {
    return this == POINT ? COMMA : POINT;
  }
}
