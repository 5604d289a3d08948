package caryatid.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a column is taken for, by its name alone. A new name is a new word or pattern in one of the
 * tables here.
 *
 * @param kind what it holds
 * @param channel the channel, where it holds one of a plate
 * @param plate what in the name tells the plates apart; empty where nothing does
 */
record Role(Kind kind, Optional<Channel> channel, String plate) {
  /** What a column can hold. */
  enum Kind {
    TIME,
    INDEX,
    CHANNEL,
    OTHER
  }

  static final Role OTHER = new Role(Kind.OTHER, Optional.empty(), "");

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
  private static final Set<String> FILLERS =
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

  /** Words for all plates or all cells together. */
  private static final Set<String> TOGETHER =
      Set.of("total", "sum", "net", "combined", "whole", "gesamt", "summe", "totale", "suma");

  /** Words for what a platform of load cells carries in all. */
  private static final Set<String> WEIGHT =
      Set.of("weight", "bodyweight", "load", "gewicht", "last", "poids", "charge", "peso", "carga");

  /** Words beside which v and p mean a force and its point, not a velocity and a position. */
  private static final Set<String> FORCE_CONTEXT =
      Set.of("ground", "force", "forces", "grf", "torque");

  /** A quantity's letters, the plate's digits, an axis and the plate's digits in one word. */
  private static final Pattern COMPACT =
      Pattern.compile("(moment|torque|mom|m|cop|c|p|force|grf|f|v)(\\d*)([xyz])(\\d*)");

  /** An axis in a word of its own, perhaps with the plate's digits. */
  private static final Pattern AXIS = Pattern.compile("(\\d*)([xyz])(\\d*)");

  static Role of(ColumnName column) {
    List<String> words = column.words();
    if (words.stream().anyMatch(TIME::contains)) {
      return new Role(Kind.TIME, Optional.empty(), "");
    }
    if (words.stream().anyMatch(INDEX::contains)) {
      return new Role(Kind.INDEX, Optional.empty(), "");
    }
    return compact(words).or(() -> spelled(words)).orElse(OTHER);
  }

  /** Whether a plate's name says that it holds all plates together. */
  static boolean together(String plate) {
    return ColumnName.of("", plate).words().stream().anyMatch(TOGETHER::contains);
  }

  /**
   * Whether a column's name says that it holds the whole weight beside load cells: {@code Weight},
   * {@code total force}, or a lone vertical force.
   *
   * @param vertical the export's vertical axis: 0 for x, 1 for y, 2 for z
   */
  static boolean wholeWeight(ColumnName column, int vertical) {
    List<String> words = column.words();
    Optional<Channel> channel = of(column).channel().filter(c -> of(column).plate().isEmpty());
    return channel.equals(Optional.of(Channel.of(Channel.Quantity.FORCE, vertical)))
        || (words.stream().anyMatch(w -> TOGETHER.contains(w) || WEIGHT.contains(w))
            && words.stream()
                .allMatch(w -> TOGETHER.contains(w) || WEIGHT.contains(w) || FILLERS.contains(w)));
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
    return new Role(Kind.CHANNEL, Optional.of(channel), plate(rest));
  }

  private static String plate(List<String> words) {
    List<String> telling = new ArrayList<>();
    for (String word : words) {
      String bare =
          word.replaceAll("^(fp|plate|forceplate|platform|force|cop|grf|moment)(?=\\d+$)", "");
      if (!bare.isEmpty() && !FILLERS.contains(bare)) {
        telling.add(bare);
      }
    }
    return String.join(" ", telling);
  }

  /** The name a plate gets from what tells it apart. */
  static String plateName(String telling) {
    if (telling.isEmpty()) {
      return "plate 1";
    }
    return telling.matches("\\d+") ? "plate " + telling : telling;
  }
}
