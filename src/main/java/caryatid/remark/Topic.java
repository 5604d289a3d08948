package caryatid.remark;

/**
 * What a problem or a remark is about. Implemented by one enum a package, so that the sentence for
 * a topic can be found by the enum's and the constant's name.
 */
public interface Topic {

  /** The name of the constant, as an enum gives it. */
  String name();

  /** How much the topic matters to the reader; a note unless the enum says otherwise. */
  default Weight weight() {
    return Weight.NOTE;
  }

  /** The key under which the topic's sentence is kept, for example {@code Quiet.TOO_SHORT}. */
  default String key() {
    return getClass().getSimpleName() + "." + name();
  }
}
