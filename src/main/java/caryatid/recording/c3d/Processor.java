package caryatid.recording.c3d;

import java.util.Optional;

/**
 * The processor whose order of bytes a file has, by the fourth byte of the parameter section
 * (c3d.org, "The Parameter Section").
 */
enum Processor {
  INTEL(84),
  DEC(85),
  MIPS(86);

  private final int number;

  Processor(int number) {
    this.number = number;
  }

  static Optional<Processor> of(int number) {
    for (Processor each : values()) {
      if (each.number == number) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  /** Two bytes as a number from 0 to 65535. */
  int unsigned16(byte[] bytes, int at) {
    int first = bytes[at] & 0xff;
    int second = bytes[at + 1] & 0xff;
    return this == MIPS ? first << 8 | second : second << 8 | first;
  }

  /** Four bytes as a real number; a bit pattern that stands for no number gives NaN. */
  double real(byte[] bytes, int at) {
    int low = unsigned16(bytes, at);
    int high = unsigned16(bytes, at + 2);
    return switch (this) {
      case INTEL -> Float.intBitsToFloat(high << 16 | low);
      case MIPS -> Float.intBitsToFloat(low << 16 | high);
      case DEC -> dec(low << 16 | high);
    };
  }

  /**
   * A number in DEC's F_floating format: sign, exponent biased by 128, 23 bits of a fraction from
   * 0.5 on whose first bit is not stored.
   */
  private static double dec(int bits) {
    int exponent = bits >>> 23 & 0xff;
    double sign = bits < 0 ? -1 : 1;
    if (exponent == 0) {
      return bits < 0 ? Double.NaN : 0;
    }
    return sign * Math.scalb((double) (bits & 0x7fffff | 0x800000), exponent - 128 - 24);
  }
}
