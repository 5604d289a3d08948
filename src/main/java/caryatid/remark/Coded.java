package caryatid.remark;

/**
 * One of the program's terms, with a code of its own that outlives the constant's name. The code is
 * what files hold, and the key under which the wordings keep the term's words.
 */
public interface Coded {

  /** The code, for example {@code Plane.SAGITTAL}; never changed once it was written. */
  String code();
}
