package caryatid.format;

import java.io.IOException;

/** How a value's members are written into its object. */
interface MemberWriter<T> {

  /** Writes every member, in the order of the format. */
  void write(T value, JsonObjectWriter out) throws IOException;
}
