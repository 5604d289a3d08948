package caryatid.entry.form;

import caryatid.entry.TermOrText;
import caryatid.remark.Coded;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A form filled in.
 *
 * @param values the answers by their field's key, in the form's order; what was not answered is not
 *     in it
 */
public record Answers(Map<String, Value> values) {

  /** Nothing answered. */
  public static final Answers NONE = new Answers(Map.of());

  /** An answer. */
  public sealed interface Value {

    /** Words, or one of a field's choices. */
    record Words(String text) implements Value {}

    /**
     * A name: a term of the program, words, or both.
     *
     * @param code the term; empty where only words name it
     * @param text the words; empty where the term says it all
     */
    record Name(Optional<Coded> code, String text) implements Value {
      /**
       * @throws IllegalArgumentException if there is neither
       */
      public Name {
        if (code.isEmpty() && text.isBlank()) {
          throw new IllegalArgumentException("a name without a word");
        }
      }

      /** Names are compared as {@link TermOrText} says. */
      public TermOrText.NameKey key() {
        return new TermOrText<>(code, text).key();
      }
    }

    /** A number, with its digits as they were given. */
    record Amount(BigDecimal number) implements Value {}

    /** Yes or no. */
    record YesNo(boolean yes) implements Value {}

    /** Rows, in their order. */
    record Rows(List<Answers> rows) implements Value {
      public Rows {
        rows = List.copyOf(rows);
      }
    }
  }

  public Answers {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** The words under a key. */
  public Optional<String> words(String key) {
    return value(key, Value.Words.class).map(Value.Words::text);
  }

  /** The name under a key. */
  public Optional<Value.Name> name(String key) {
    return value(key, Value.Name.class);
  }

  /** The number under a key, in the unit that ends the key. */
  public Optional<BigDecimal> number(String key) {
    return value(key, Value.Amount.class).map(Value.Amount::number);
  }

  /** The yes or no under a key. */
  public Optional<Boolean> yesNo(String key) {
    return value(key, Value.YesNo.class).map(Value.YesNo::yes);
  }

  /** The rows under a key; none where there are none. */
  public List<Answers> rows(String key) {
    return value(key, Value.Rows.class).map(Value.Rows::rows).orElse(List.of());
  }

  private <T extends Value> Optional<T> value(String key, Class<T> kind) {
    return Optional.ofNullable(values.get(key)).filter(kind::isInstance).map(kind::cast);
  }
}
