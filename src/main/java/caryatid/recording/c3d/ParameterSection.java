package caryatid.recording.c3d;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads the parameter section: groups and parameters one after the other, each with the distance to
 * the next (c3d.org, "Group Format", "Parameter Format").
 */
final class ParameterSection {
  /** Directions of a parameter at the most (c3d.org, "Parameter Format"). */
  private static final int MOST_DIMENSIONS = 7;

  private final C3dBytes bytes;
  private final int start;

  /**
   * @param start the first byte of the section
   */
  ParameterSection(C3dBytes bytes, int start) {
    this.bytes = bytes;
    this.start = start;
  }

  C3dParameters read() throws C3dFault {
    C3dParameters.Collected collected = new C3dParameters.Collected(bytes);
    int at = start + 4;
    while (at >= 0 && at + 2 < bytes.size() && bytes.signed8(at) != 0) {
      at = entry(at, collected);
    }
    return collected.named();
  }

  /** Reads one entry; where the next one starts, or -1 behind the last. */
  private int entry(int at, C3dParameters.Collected collected) throws C3dFault {
    int length = Math.abs(bytes.signed8(at));
    int group = bytes.signed8(at + 1);
    String name = bytes.text(at + 2, length);
    int pointer = at + 2 + length;
    int distance = bytes.unsigned16(pointer);
    if (group < 0) {
      collected.group(-group, name);
    } else {
      collected.parameter(group, name, parameter(pointer + 2));
    }
    return distance == 0 ? -1 : pointer + distance;
  }

  private C3dParameter parameter(int at) throws C3dFault {
    int type = bytes.signed8(at);
    int directions = bytes.unsigned8(at + 1);
    if ((type != -1 && type != 1 && type != 2 && type != 4) || directions > MOST_DIMENSIONS) {
      throw C3dFault.damaged("byte " + at);
    }
    List<Integer> dimensions = new ArrayList<>();
    long count = 1;
    for (int i = 0; i < directions; i++) {
      int dimension = bytes.unsigned8(at + 2 + i);
      dimensions.add(dimension);
      count *= dimension;
      if (count > bytes.size()) {
        throw C3dFault.damaged("byte " + at);
      }
    }
    int values = at + 2 + directions;
    bytes.check(values, count * Math.abs(type));
    return new C3dParameter(type, dimensions, values, (int) count);
  }
}
