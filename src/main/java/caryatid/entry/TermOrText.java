package caryatid.entry;

import caryatid.remark.Coded;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;

/**
 * What something goes by: a term of the program, by its code, or a person's own words, or a term
 * with words that say more of it.
 *
 * <p>The one rule for when two names are the same: both have a code and it is the same, whatever
 * words stand with it; or neither has one and the words are the same but for blanks around them,
 * how many blanks are between them, capital and small letters, and how accents are put together
 * (Unicode's NFC). A name with a code is never the same as one without.
 *
 * @param code the term; empty where only words name it
 * @param text the person's words, as they were given; empty where the code says it all
 */
public record TermOrText<C extends Coded>(Optional<C> code, String text) {

  /**
   * @throws IllegalArgumentException if there is neither a code nor a word
   */
  public TermOrText {
    if (code.isEmpty() && text.isBlank()) {
      throw new IllegalArgumentException("a name without a word");
    }
  }

  /** A term that needs no words. */
  public static <C extends Coded> TermOrText<C> of(C code) {
    return new TermOrText<>(Optional.of(code), "");
  }

  /** A name in a person's own words. */
  public static <C extends Coded> TermOrText<C> words(String text) {
    return new TermOrText<>(Optional.empty(), text);
  }

  /** Whether this is the given term. */
  public boolean is(C term) {
    return code.filter(term::equals).isPresent();
  }

  /** What is equal for two names of one kind exactly when they are the same. */
  public NameKey key() {
    return new NameKey(code.map(Coded::code), code.isPresent() ? "" : fold(text));
  }

  /**
   * What distinguishes names.
   *
   * @param code the term's code
   * @param folded the words, folded; empty where there is a code
   */
  public record NameKey(Optional<String> code, String folded) {}

  /** Words as they are compared: the rule above for names without a code. */
  public static String fold(String words) {
    String composed = Normalizer.normalize(words, Normalizer.Form.NFC);
    String spaced = composed.replaceAll("[\\s\\p{Z}]+", " ").strip();
    return spaced.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
  }
}
