package caryatid.recording.c3d;

import java.util.List;

/**
 * A parameter as it lies in the file.
 *
 * @param type -1 text, 1 byte, 2 integer, 4 real
 * @param dimensions how many in each direction, the first running fastest; empty for a single one
 * @param at its first byte
 * @param count how many elements there are
 */
record C3dParameter(int type, List<Integer> dimensions, int at, int count) {
  C3dParameter {
    dimensions = List.copyOf(dimensions);
  }

  /** The bytes of an element. */
  int width() {
    return Math.abs(type);
  }

  int bytes() {
    return count * width();
  }

  /** Whether another one says the same. */
  boolean same(C3dParameter other, C3dBytes bytes) throws C3dFault {
    return type == other.type
        && dimensions.equals(other.dimensions)
        && bytes.same(at, other.at, bytes());
  }
}
