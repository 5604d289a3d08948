package caryatid.wording;

import caryatid.alignment.GroupedRemark;
import caryatid.remark.Argument;
import caryatid.remark.Coded;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The program's sentences in one language. Sentences are kept in resource bundles: one for each
 * room that has any, and {@code words}, {@code record}, {@code recheck} and {@code inspect} for
 * what several commands say. They stand under the topic's key; {@code {0}}, {@code {1}} stand for
 * the arguments.
 */
public final class Wording {
  private static final List<String> BUNDLES =
      List.of(
          "words",
          "recording",
          "inspect",
          "sheet",
          "plate",
          "standing",
          "loadline",
          "alignment",
          "chart",
          "report",
          "entry",
          "fitting",
          "store",
          "views",
          "advice",
          "record",
          "usecase",
          "recheck",
          "exchange",
          "cli",
          "web");
  private static final Pattern PLACE_HOLDER = Pattern.compile("\\{(\\d+)\\}");

  /** The spaces that French sets before a mark of two parts and inside its quotation marks. */
  private static final Pattern FRENCH_SPACE = Pattern.compile(" (?=[:;?!»])|(?<=«) ");

  private final Locale locale;
  private final Map<String, String> sentences = new HashMap<>();
  private final Iterator<String> unread = BUNDLES.iterator();
  private final Numbers numbers;

  private Wording(Locale locale) {
    this.locale = locale;
    this.numbers = new Numbers(locale);
  }

  /** The sentences in a language; English where there is no bundle of it. */
  public static Wording in(Locale locale) {
    return new Wording(locale);
  }

  /** The language. */
  public Locale locale() {
    return locale;
  }

  /** A remark's sentence. */
  public String say(Remark remark) {
    return sentence(remark.topic().code(), remark.arguments());
  }

  /** A remark about a state; with the number of stands if it holds for several. */
  public String say(GroupedRemark said) {
    String sentence = say(said.remark());
    return said.stands() > 1
        ? sentence + " " + fill("Said.stands", Argument.count(said.stands()))
        : sentence;
  }

  /** A problem's sentence, led by where it stands: {@code walk3.csv line 812, column Fz: ...}. */
  public String say(Problem problem) {
    String within = within(problem.place());
    String file = problem.place().file();
    boolean column = problem.place().line().isEmpty() && problem.place().column().isPresent();
    String where = within.isEmpty() ? file : file + (column ? ", " : " ") + within;
    return where + ": " + sentence(problem.topic().code(), problem.arguments());
  }

  /** The same without the file's name, for a page that is about one file. */
  public String sayWithin(Problem problem) {
    String within = within(problem.place());
    String sentence = sentence(problem.topic().code(), problem.arguments());
    return within.isEmpty() ? sentence : within + ": " + sentence;
  }

  private String within(Place place) {
    List<String> parts = new ArrayList<>();
    place.cell().ifPresent(parts::add);
    place.line().ifPresent(line -> parts.add(word("Place.line") + " " + line));
    place.column().ifPresent(column -> parts.add(word("Place.column") + " " + column));
    return String.join(", ", parts);
  }

  /** Whether a text is kept under a key. */
  public boolean knows(String key) {
    return find(key).isPresent();
  }

  /** Bundles are read as they are needed; few commands need all. */
  private synchronized Optional<String> find(String key) {
    while (!sentences.containsKey(key) && unread.hasNext()) {
      ResourceBundle bundle =
          ResourceBundle.getBundle(
              "caryatid.wording." + unread.next(),
              locale,
              ResourceBundle.Control.getNoFallbackControl(
                  ResourceBundle.Control.FORMAT_PROPERTIES));
      bundle.keySet().forEach(each -> sentences.put(each, spaced(bundle.getString(each))));
    }
    return Optional.ofNullable(sentences.get(key));
  }

  /** French, so that no line ends before a colon or a closing quotation mark. */
  private String spaced(String sentence) {
    return locale.getLanguage().equals(Language.FR.tag())
        ? FRENCH_SPACE.matcher(sentence).replaceAll(Numbers.NO_BREAK_SPACE)
        : sentence;
  }

  /** The word for one of the program's own terms. */
  public String word(Coded term) {
    return word(term.code());
  }

  /** A term before a colon; French sets a space between them. */
  public String lead(Coded term) {
    String word = word(term);
    return locale.getLanguage().equals(Language.FR.tag()) ? word + Numbers.NO_BREAK_SPACE : word;
  }

  /**
   * The text kept under a key, without arguments.
   *
   * @throws IllegalArgumentException if there is none
   */
  public String word(String key) {
    return find(key).orElseThrow(() -> new IllegalArgumentException("no wording for " + key));
  }

  /** The text kept under a key, its place holders filled in order. */
  public String fill(String key, List<Argument> arguments) {
    return fill(key, arguments, this::say);
  }

  /** The same with as many digits as it takes to tell the numbers apart. */
  private String sentence(String key, List<Argument> arguments) {
    return fill(
        key,
        arguments,
        argument ->
            argument instanceof Argument.Quantity q
                ? numbers.withUnit(q.value(), q.unit(), Decimals.of(q.unit(), arguments))
                : say(argument));
  }

  private String fill(String key, List<Argument> arguments, Function<Argument, String> say) {
    return PLACE_HOLDER
        .matcher(word(key))
        .replaceAll(
            m ->
                java.util.regex.Matcher.quoteReplacement(
                    say.apply(arguments.get(Integer.parseInt(m.group(1))))));
  }

  /** The text kept under a key, its place holders filled in order. */
  public String fill(String key, Argument... arguments) {
    return fill(key, List.of(arguments));
  }

  /** A number with its unit, rounded as the unit is shown. */
  public String number(double value, Unit unit) {
    return numbers.withUnit(value, unit);
  }

  /** A number without its unit, for a column that says the unit. */
  public String plain(double value, Unit unit) {
    return numbers.plain(value, unit);
  }

  /** A number with all the digits it was given with, without its unit. */
  public String exact(BigDecimal value) {
    return numbers.exact(value);
  }

  /** A number with its sign always written, for offsets: {@code +12.3}; without its unit. */
  public String signed(double value, Unit unit) {
    return numbers.signed(value, unit);
  }

  private String say(Argument argument) {
    if (argument instanceof Argument.Text text) {
      return text.value();
    }
    if (argument instanceof Argument.Quantity quantity) {
      return number(quantity.value(), quantity.unit());
    }
    return word(((Argument.Term) argument).key());
  }
}
