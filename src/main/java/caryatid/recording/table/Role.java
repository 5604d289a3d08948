package caryatid.recording.table;

import caryatid.recording.model.Channel;
import caryatid.recording.model.UnitNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a column is taken for, by its name alone. A new name is a new word or pattern in one of the
 * tables here.
 *
 * @param kind what it holds
 * @param channel the channel, where it holds one of a plate
 * @param plate what in the name tells the plates apart; empty where nothing does
 * @param version which of several versions it holds, as raw or filtered; empty where none is named
 */
public record Role(Kind kind, Optional<Channel> channel, String plate, String version) {
  /** What a column can hold. */
  public enum Kind {
    TIME,
    INDEX,
    CHANNEL,
    /** Something computed of a channel, as a velocity or a mean is. */
    DERIVED,
    OTHER
  }

  static final Role OTHER = new Role(Kind.OTHER, Optional.empty(), "", "");

  private static final Set<String> TIME =
      Set.of("time", "t", "timestamp", "seconds", "zeit", "temps", "tijd", "tiempo");
  private static final Set<String> INDEX =
      Set.of("frame", "sample", "samples", "seq", "index", "nr", "no", "item", "#", "row");

  /** The quantities by their words; the first that fits counts. */
  private enum Quantity {
    MOMENT("moment moments torque m mom"),
    COP("cop pressure p c"),
    FORCE("force forces grf f v");

    private final String words;

    Quantity(String words) {
      this.words = words;
    }
  }

  /** Words that neither name a quantity nor tell plates apart. */
  public static final Set<String> FILLERS =
      Set.of(
          "ground",
          "reaction",
          "center",
          "centre",
          "of",
          "pressure",
          "force",
          "forces",
          "moment",
          "moments",
          "torque",
          "cop",
          "grf",
          "plate",
          "platform",
          "forceplate",
          "fp",
          "channel",
          "m",
          "f",
          "p",
          "v",
          "c",
          "mom");

  /** Words for what is computed of a channel and is none itself. */
  private static final Set<String> DERIVED =
      words(
          "velocity velocities vel speed acceleration accel acc jerk area ellipse path pathlength"
              + " length range rms sd std var variance mean average avg error frequency freq power"
              + " angle rate geschwindigkeit fläche weg mittelwert vitesse aire surface longueur"
              + " moyenne velocidad área longitud media");

  /** Words for one of several versions of the same channel. */
  private static final Set<String> VERSIONS =
      words(
          "raw unfiltered filtered filt filter smooth smoothed lowpass butterworth uncorrected"
              + " corrected processed unprocessed roh gefiltert brut filtré crudo filtrado");

  /** Words beside which v and p mean a force and its point, not a velocity and a position. */
  private static final Set<String> FORCE_CONTEXT =
      Set.of("ground", "force", "forces", "grf", "torque");

  /** A quantity's letters, the plate's digits, an axis and the plate's digits in one word. */
  private static final Pattern COMPACT =
      Pattern.compile("(moment|torque|mom|m|cop|c|p|force|grf|f|v)(\\d*)([xyz])(\\d*)");

  /** An axis in a word of its own, perhaps with the plate's digits. */
  private static final Pattern AXIS = Pattern.compile("(\\d*)([xyz])(\\d*)");

  private static Set<String> words(String parted) {
    return Set.of(parted.split(" ", -1));
  }

  public static Role of(ColumnName column) {
    List<String> words = column.words();
    if (words.stream().anyMatch(TIME::contains)) {
      return new Role(Kind.TIME, Optional.empty(), "", "");
    }
    if (words.stream().anyMatch(INDEX::contains)) {
      return new Role(Kind.INDEX, Optional.empty(), "", "");
    }
    Role role = compact(words).or(() -> spelled(words)).orElse(OTHER);
    boolean derived = role.kind == Kind.CHANNEL && words.stream().anyMatch(DERIVED::contains);
    return derived ? new Role(Kind.DERIVED, Optional.empty(), "", "") : role;
  }

  private static Optional<Role> compact(List<String> words) {
    for (int i = words.size() - 1; i >= 0; i--) {
      Matcher word = COMPACT.matcher(words.get(i));
      if (word.matches() && clear(word.group(1), words)) {
        Quantity quantity = quantity(word.group(1), words);
        List<String> rest = new ArrayList<>(words);
        rest.set(i, word.group(2) + word.group(4));
        return Optional.of(channel(quantity, word.group(3), rest));
      }
    }
    return Optional.empty();
  }

  private static boolean clear(String letters, List<String> words) {
    return !letters.matches("[vp]") || words.stream().anyMatch(FORCE_CONTEXT::contains);
  }

  private static Optional<Role> spelled(List<String> words) {
    for (int i = words.size() - 1; i >= 0; i--) {
      Matcher axis = AXIS.matcher(words.get(i));
      if (axis.matches()) {
        List<String> rest = new ArrayList<>(words);
        rest.set(i, axis.group(1) + axis.group(3));
        return quantity(rest).map(q -> channel(q, axis.group(2), rest));
      }
    }
    return Optional.empty();
  }

  private static Quantity quantity(String letters, List<String> words) {
    return quantity(List.of(letters)).orElseThrow(() -> new IllegalStateException("" + words));
  }

  private static Optional<Quantity> quantity(List<String> words) {
    for (Quantity quantity : Quantity.values()) {
      if (words.stream().anyMatch(word -> UnitNames.among(quantity.words, word))) {
        return Optional.of(quantity);
      }
    }
    return Optional.empty();
  }

  private static Role channel(Quantity quantity, String axis, List<String> rest) {
    Channel channel =
        Channel.valueOf(quantity.name() + "_" + axis.toUpperCase(java.util.Locale.ROOT));
    return new Role(
        Kind.CHANNEL,
        Optional.of(channel),
        plate(rest),
        rest.stream().filter(VERSIONS::contains).collect(Collectors.joining(" ")));
  }

  private static String plate(List<String> words) {
    List<String> telling = new ArrayList<>();
    for (String word : words) {
      String bare =
          word.replaceAll("^(fp|plate|forceplate|platform|force|cop|grf|moment)(?=\\d+$)", "");
      if (!bare.isEmpty()
          && !FILLERS.contains(bare)
          && !VERSIONS.contains(bare)
          && !bare.matches("\\d+hz")) {
        telling.add(bare);
      }
    }
    return String.join(" ", telling);
  }

  /** The name a plate gets from what tells it apart. */
  public static String plateName(String telling) {
    if (telling.isEmpty()) {
      return "plate 1";
    }
    return telling.matches("\\d+") ? "plate " + telling : telling;
  }
}
