package caryatid.format;

import caryatid.entry.TermOrText;
import caryatid.entry.form.Answers;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.entry.form.Vocabulary;
import caryatid.remark.Coded;
import caryatid.sheet.yaml.NameSuggester;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The words that stand for the program's terms, in four languages: those of entries that held words
 * (version 1), and those that people may type today. Words are compared as {@link TermOrText} says;
 * a word of two terms of one vocabulary, and every other word, stays what it is: a term is never
 * guessed.
 */
public final class KnownWords {
  private static final String FIRST = "words-1.txt";
  private static final String ADDED = "words-added.txt";
  private static final String POINTS_TO = ".POINTS_TO";

  /** Parts a knee's lock from its mode. */
  private static final String COMMA = ", ";

  private final Map<String, List<String>> words;
  private final Map<Vocabulary, Map<String, Coded>> terms = new HashMap<>();

  private KnownWords(Map<String, List<String>> words) {
    this.words = words;
    for (Vocabulary vocabulary : Vocabulary.values()) {
      terms.put(vocabulary, terms(vocabulary));
    }
  }

  /** The words of version 1, by which its entries are read. */
  public static KnownWords first() {
    return First.WORDS;
  }

  /** The words that people may type: those of version 1 and those of terms added since. */
  public static KnownWords today() {
    return Typed.WORDS;
  }

  /** Read when it is first needed. */
  private static final class First {
    static final KnownWords WORDS = of(lines(FIRST));
  }

  /** Read when it is first needed. */
  private static final class Typed {
    static final KnownWords WORDS =
        of(Stream.concat(lines(FIRST).stream(), lines(ADDED).stream()).toList());
  }

  private static List<String> lines(String table) {
    try (InputStream bytes = KnownWords.class.getResourceAsStream(table);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      return lines.lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Words from lines {@code code = word | word}; those that begin with # are left out. */
  static KnownWords of(List<String> lines) {
    Map<String, List<String>> words = new LinkedHashMap<>();
    for (String line : lines) {
      if (!line.startsWith("#")) {
        String[] parts = line.split(" = ", 2);
        words.put(parts[0], List.of(parts[1].split(" \\| ")));
      }
    }
    return new KnownWords(words);
  }

  private Map<String, Coded> terms(Vocabulary vocabulary) {
    Map<String, Coded> found = new HashMap<>();
    List<String> ambiguous = new ArrayList<>();
    for (Coded term : vocabulary.terms()) {
      for (String word : words.getOrDefault(key(vocabulary, term), List.of())) {
        Coded other = found.putIfAbsent(TermOrText.fold(word), term);
        if (other != null && !other.equals(term)) {
          ambiguous.add(TermOrText.fold(word));
        }
      }
    }
    found.keySet().removeAll(ambiguous);
    return Map.copyOf(found);
  }

  private static String key(Vocabulary vocabulary, Coded term) {
    return vocabulary == Vocabulary.POINTS_TO ? term.code() + POINTS_TO : term.code();
  }

  /** The term that a text is a word for. */
  public Optional<Coded> term(Vocabulary vocabulary, String text) {
    return Optional.ofNullable(terms.get(vocabulary).get(TermOrText.fold(text)));
  }

  /** The word, in any language, that a text which is none differs from by a slip of the pen. */
  Optional<String> nearly(Vocabulary vocabulary, String text) {
    return term(vocabulary, text).isPresent()
        ? Optional.empty()
        : NameSuggester.slip(
                text,
                vocabulary.terms().stream()
                    .flatMap(term -> wordsOf(vocabulary, term).stream())
                    .toList())
            .or(() -> begunBy(vocabulary, text));
  }

  private List<String> wordsOf(Vocabulary vocabulary, Coded term) {
    return words.getOrDefault(key(vocabulary, term), List.of());
  }

  /** The word of the one term that begins with the words typed; empty if several terms do. */
  private Optional<String> begunBy(Vocabulary vocabulary, String text) {
    String start = TermOrText.fold(text) + " ";
    List<String> begun =
        vocabulary.terms().stream()
            .flatMap(
                term ->
                    wordsOf(vocabulary, term).stream()
                        .filter(word -> TermOrText.fold(word).startsWith(start))
                        .limit(1))
            .toList();
    return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
  }

  /** Every code that has words. */
  Set<String> codes() {
    return Set.copyOf(words.keySet());
  }

  /** Answers in which names that are words for a term have become that term. */
  public Answers understood(Form form, Answers answers) {
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    answers
        .values()
        .forEach((key, value) -> values.put(key, understood(form, key, value, answers)));
    return new Answers(values);
  }

  private Answers.Value understood(Form form, String key, Answers.Value value, Answers row) {
    FieldType type = form.field(key).orElseThrow().type();
    if (value instanceof Answers.Value.Rows rows && type instanceof FieldType.Rows of) {
      return new Answers.Value.Rows(
          rows.rows().stream().map(r -> understood(of.form(), r)).toList());
    }
    boolean words = value instanceof Answers.Value.Name name && name.code().isEmpty();
    return words && type instanceof FieldType.Name of
        ? name(of.vocabulary(), ((Answers.Value.Name) value).text(), row)
        : value;
  }

  private Answers.Value.Name name(Vocabulary vocabulary, String text, Answers row) {
    if (vocabulary == Vocabulary.KNEE_LOCK) {
      return kneeLock(text);
    }
    Optional<Coded> term =
        term(vocabulary, text).filter(t -> vocabulary != Vocabulary.POINTS_TO || isOf(row, t));
    return new Answers.Value.Name(term, term.isPresent() ? "" : text);
  }

  /** What another deviation points to is no code in a row of this one. */
  private boolean isOf(Answers row, Coded deviation) {
    return row.name("deviation")
        .flatMap(n -> n.code().or(() -> term(Vocabulary.DEVIATION, n.text())))
        .filter(deviation::equals)
        .isPresent();
  }

  /** Whether a knee was locked, alone or followed by a comma and its mode. */
  public Answers.Value.Name kneeLock(String text) {
    int comma = text.indexOf(COMMA);
    String lock = comma < 0 ? text : text.substring(0, comma);
    String mode = comma < 0 ? "" : text.substring(comma + COMMA.length());
    Optional<Coded> term = term(Vocabulary.KNEE_LOCK, lock);
    return new Answers.Value.Name(term, term.isPresent() ? mode : text);
  }
}
