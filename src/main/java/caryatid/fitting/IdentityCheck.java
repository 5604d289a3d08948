package caryatid.fitting;

import caryatid.entry.form.Answers;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds words that might identify the wearer: a title with a name, a word for a birth with a
 * number, a full date so long ago that it may be somebody's birth, a telephone number, an address.
 * These are rules of thumb: dates of the fitting and of recent years pass, and the user may confirm
 * that the words identify nobody.
 */
final class IdentityCheck {
  /** Dates of operations and of earlier fittings are mostly more recent. */
  private static final int YEARS_AGO = 18;

  private static final Pattern NAME =
      Pattern.compile(
          "(?<!\\p{L})(?:(?:Mrs?|Ms|Miss|Herrn?|Hr|Frau|Mme|Mlle|Monsieur|Madame|Se\u00f1ora?|Sra?)"
              + "\\.?\\s+(?:Dr\\.?\\s+)?|(?i:name)\\s*(?:is|ist|:|=)\\s*)\\p{Lu}[\\p{L}'-]*(?!\\d)");

  /** A patient with a word that begins with a capital. */
  private static final Pattern PATIENT =
      Pattern.compile("(?<!\\p{L})(?i:patient(?:in|e)?|paciente)\\s+\\p{Lu}\\p{Ll}+");

  /** Two words of a file's name, or of a code, as first and last names are. */
  private static final Pattern PAIR =
      Pattern.compile("(?<!\\p{L})(\\p{Lu}\\p{Ll}{2,})[ _,.-]{1,2}(\\p{Lu}\\p{Ll}{2,})(?!\\p{L})");

  /** Words that stand so in names of recordings. */
  private static final Set<String> NO_NAMES =
      Set.of(
          ("left right both stand standing static trial plate force export recording report sheet"
                  + " barefoot shoe shoes walking sports test demo take record knee foot ankle"
                  + " links rechts beide stehen statik versuch platte kraft aufnahme bericht blatt"
                  + " messung barfuss schuh gehen probe knie gauche droite essai plaque statique"
                  + " mesure rapport chaussure pied genou izquierda derecha prueba placa estatica"
                  + " medida informe zapato descalzo rodilla pie transtibial transfemoral")
              .split(" "));

  private static final String STREETS = "(?:stra(?:\u00df|ss)e|str\\.|weg|gasse|platz|allee|ufer)";

  /** Telephone numbers of seven digits or more, addresses of mail and of streets. */
  private static final List<Pattern> CONTACTS =
      List.of(
          Pattern.compile("(?<![\\d.,+])(?:\\+\\d|\\(?0)(?:[ ()/-]{0,2}\\d){6,14}(?![\\d.,])"),
          Pattern.compile(
              "(?<!\\p{L})(?:tel|phone|mobile|telefon|handy|t\u00e9l(?:\u00e9phone)?|tel\u00e9fono"
                  + "|m\u00f3vil)\\b\\D{0,6}\\d[\\d /-]{3,}",
              Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE),
          Pattern.compile("[\\w.+-]+@[\\w-]+\\.[\\w.]{2,}"),
          Pattern.compile("(?<!\\p{L})\\p{Lu}[\\p{L}-]*[ -]?" + "(?i:" + STREETS + ")\\s+\\d+"),
          Pattern.compile(
              "(?<!\\d)\\d{1,4}\\s+\\p{Lu}\\p{L}+\\s+(?:Street|St|Road|Rd|Avenue|Ave|Lane|Drive)"
                  + "(?!\\p{L})"),
          Pattern.compile(
              "(?<!\\p{L})(?:\\d+,?\\s+)?(?i:rue|boulevard|calle|avenida)\\s+(?:de(?:"
                  + " la|l)?\\s+|du\\s+)?\\p{Lu}\\p{L}+"));

  private static final Pattern BIRTH =
      Pattern.compile(
          "(?<!\\p{L})(?:(?:born|geboren\\p{L}{0,2}|geb\\.?|n\u00e9e?|nacid[oa])"
              + "(?:\\s+(?:on|in|am|im|le|en|el))?:?\\s*\\d+"
              + "|(?:birthday|geburtstag|anniversaire|cumplea\u00f1os)\\D{0,12}\\d+"
              + "|(?:d\\.?o\\.?b|date of birth|birth ?date|year of birth|geburtsdatum|jahrgang"
              + "|date de naissance|fecha de nacimiento)(?!\\p{L}))",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private static final String MONTH =
      "(?:jan|f[e\u00e9]v?b?|mar|m\u00e4r|apr|avr|abr|ma[iy]|jui?[nl]|ao\u00fb|aug|ago|sep|o[ck]t|nov"
          + "|d[e\u00e9][cz]|dic|ene)\\p{L}*\\.?,?";

  /** Each with the year as its only group. */
  private static final List<Pattern> DATES =
      List.of(
          Pattern.compile(
              "(?<!\\d)(\\d{4})[-./](?:0?[1-9]|1[0-2])[-./](?:0?[1-9]|[12]\\d|3[01])(?!\\d)"),
          Pattern.compile(
              "(?<!\\d)(?:0?[1-9]|[12]\\d|3[01])[-./](?:0?[1-9]|[12]\\d|3[01])[-./](\\d{4})(?!\\d)"),
          Pattern.compile(
              "(?<![\\d.])(?:0[1-9]|[12]\\d|3[01])[./](?:0[1-9]|[12]\\d|3[01])[./](\\d{2})(?![\\d.]\\d)"),
          Pattern.compile(
              "(?<!\\d)\\d{1,2}\\.?\\s+(?:de\\s+)?" + MONTH + "\\s+(?:de\\s+)?(\\d{4})(?!\\d)",
              Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE),
          Pattern.compile(
              "(?<!\\p{L})" + MONTH + "\\s+\\d{1,2},?\\s+(\\d{4})(?!\\d)",
              Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));

  private IdentityCheck() {}

  /**
   * Questions all texts and file names of an addition.
   *
   * @throws BadInput with each field that looks like a name or a date of birth
   */
  static void require(Addition addition) throws BadInput {
    Map<String, String> texts = new LinkedHashMap<>();
    collect("", addition.answers(), texts);
    addition.corrects().ifPresent(c -> texts.put("because", c.why()));
    Set<String> files = new HashSet<>();
    for (Addition.Attached file : addition.files()) {
      texts.put(file.name(), file.name());
      files.add(file.name());
    }
    List<Problem> problems = new ArrayList<>();
    Place place = Place.of(addition.kind().key());
    int year = addition.at().getYear();
    texts.forEach(
        (field, text) ->
            found(text, files.contains(field), year)
                .map(found -> problem(place, found, field))
                .ifPresent(problems::add));
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }

  private static void collect(String lead, Answers answers, Map<String, String> texts) {
    answers
        .values()
        .forEach(
            (key, value) -> {
              if (value instanceof Answers.Value.Words words) {
                texts.put(lead + key, words.text());
              } else if (value instanceof Answers.Value.Name name) {
                texts.put(lead + key, name.text());
              } else if (value instanceof Answers.Value.Rows rows) {
                for (int i = 0; i < rows.rows().size(); i++) {
                  collect(key + "[" + (i + 1) + "].", rows.rows().get(i), texts);
                }
              }
            });
  }

  /**
   * Words that might identify the wearer.
   *
   * @param like what they look like
   * @param words as they were written
   */
  record Suspicion(RecordProblem like, String words) {}

  /**
   * What a text holds that might identify the wearer.
   *
   * @param isName whether it is a file's name or a code, where two words may be a person's
   * @param year of the entry
   */
  static Optional<Suspicion> found(String text, boolean isName, int year) {
    return name(text)
        .or(() -> isName ? pair(text) : Optional.empty())
        .map(words -> new Suspicion(RecordProblem.TEXT_LIKE_NAME, words))
        .or(() -> birth(text, year).map(w -> new Suspicion(RecordProblem.TEXT_LIKE_BIRTH, w)))
        .or(() -> contact(text).map(w -> new Suspicion(RecordProblem.TEXT_LIKE_CONTACT, w)));
  }

  private static Problem problem(Place place, Suspicion found, String field) {
    return Problem.at(place, found.like(), Argument.text(field), Argument.text(found.words()));
  }

  /** The words that look like a telephone number or an address. */
  static Optional<String> contact(String text) {
    return CONTACTS.stream()
        .flatMap(pattern -> pattern.matcher(text).results())
        .map(MatchResult::group)
        .findFirst();
  }

  private static Optional<String> pair(String text) {
    return PAIR.matcher(text)
        .results()
        .filter(m -> !isTrade(m.group(1)) && !isTrade(m.group(2)))
        .map(MatchResult::group)
        .findFirst();
  }

  private static boolean isTrade(String word) {
    return NO_NAMES.contains(word.toLowerCase(Locale.ROOT));
  }

  /** The words that look like a name. */
  static Optional<String> name(String text) {
    return Stream.of(NAME, PATIENT)
        .flatMap(pattern -> pattern.matcher(text).results())
        .map(MatchResult::group)
        .findFirst();
  }

  /**
   * The words that look like a birth.
   *
   * @param year of the entry
   */
  static Optional<String> birth(String text, int year) {
    return Stream.concat(
            BIRTH.matcher(text).results(),
            DATES.stream()
                .flatMap(date -> date.matcher(text).results())
                .filter(date -> isLongAgo(date.group(1), year)))
        .map(MatchResult::group)
        .findFirst();
  }

  /** Two digits are of this century where that has been, else of the one before. */
  private static boolean isLongAgo(String digits, int now) {
    int year = Integer.parseInt(digits);
    int whole = digits.length() == 4 ? year : year + (year > now % 100 ? 1900 : 2000);
    return whole >= 1900 && whole <= now - YEARS_AGO;
  }
}
