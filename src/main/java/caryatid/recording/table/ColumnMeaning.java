package caryatid.recording.table;

import caryatid.geometry.Axis;
import caryatid.recording.model.Channel;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.UnitNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a column means, by its name alone. A new name is a new word in {@link ColumnWords} or a
 * pattern here.
 *
 * @param kind what it holds
 * @param channel the channel, where it holds one of a plate
 * @param plate the part of the name that distinguishes plates; empty if there is none
 * @param version which of several versions it holds, as raw or filtered; empty where none is named
 */
public record ColumnMeaning(
    ColumnKind kind, Optional<Channel> channel, String plate, String version) {
  /** What a column can hold. */
  public enum ColumnKind {
    TIME,
    INDEX,
    CHANNEL,
    /** Something computed of a channel, as a velocity or a mean is. */
    DERIVED,
    OTHER
  }

  static final ColumnMeaning OTHER = new ColumnMeaning(ColumnKind.OTHER, Optional.empty(), "", "");

  /** The quantities by their words; the first that fits counts. */
  private enum QuantityWords {
    MOMENT(
        Channel.Quantity.MOMENT,
        "moment moments torque m mom momento drehmoment couple coppia torsione torque"),
    COP(
        Channel.Quantity.COP,
        "cop pressure p c cp cdp druckmittelpunkt druckzentrum druckpunkt pression presion"
            + " pressione pressao"),
    FORCE(Channel.Quantity.FORCE, "force forces grf f v kraft fuerza forza forca");

    private final Channel.Quantity held;
    private final String words;

    QuantityWords(Channel.Quantity held, String words) {
      this.held = held;
      this.words = words;
    }
  }

  /** A quantity's letters, the plate's digits, an axis and the plate's digits in one word. */
  private static final Pattern COMPACT =
      Pattern.compile("(moment|torque|mom|m|cop|cdp|cp|c|p|force|grf|f|v)(\\d*)([xyz])(\\d*)");

  /** An axis in a word of its own, perhaps with the plate's digits. */
  private static final Pattern AXIS = Pattern.compile("(\\d*)([xyz])(\\d*)");

  private static final Pattern APPLIED = Pattern.compile("a(\\d*)([xyz])(\\d*)");

  public static ColumnMeaning of(ColumnName column) {
    List<String> words = ColumnWords.of(column);
    if (words.stream().anyMatch(ColumnWords.TIME::contains)) {
      return new ColumnMeaning(ColumnKind.TIME, Optional.empty(), "", "");
    }
    if (words.stream().anyMatch(ColumnWords.INDEX::contains)) {
      return new ColumnMeaning(ColumnKind.INDEX, Optional.empty(), "", "");
    }
    ColumnMeaning meaning =
        compact(words)
            .or(() -> spelled(words))
            .or(() -> vertical(words))
            .or(() -> level(words))
            .or(() -> applied(column, words))
            .orElse(OTHER);
    boolean derived =
        meaning.kind == ColumnKind.CHANNEL
            && words.stream().anyMatch(ColumnWords.DERIVED::contains);
    return derived ? new ColumnMeaning(ColumnKind.DERIVED, Optional.empty(), "", "") : meaning;
  }

  /**
   * What neighbouring columns mean. Names that are bare axes, x and y and no z, are a centre of
   * pressure where no other name tells of one or of moments.
   */
  public static List<ColumnMeaning> of(List<ColumnName> columns) {
    List<ColumnMeaning> meanings =
        new ArrayList<>(columns.stream().map(ColumnMeaning::of).toList());
    boolean known = meanings.stream().anyMatch(ColumnMeaning::tellsCentre);
    List<String> axes = columns.stream().map(ColumnMeaning::bareAxis).toList();
    boolean pair =
        axes.stream().filter("x"::equals).count() == 1
            && axes.stream().filter("y"::equals).count() == 1
            && !axes.contains("z");
    for (int i = 0; pair && !known && i < meanings.size(); i++) {
      if (!axes.get(i).isEmpty()) {
        meanings.set(i, channel(QuantityWords.COP, axes.get(i), List.of()));
      }
    }
    return List.copyOf(meanings);
  }

  private boolean tellsCentre() {
    return channel.map(Channel::quantity).filter(q -> q != Channel.Quantity.FORCE).isPresent();
  }

  /** The axis that is all a name says, as in {@code X - Global}; else empty. */
  private static String bareAxis(ColumnName column) {
    List<String> words = ColumnWords.of(column).stream().filter(w -> !w.equals("global")).toList();
    return words.size() == 1 && words.get(0).matches("[xyz]") ? words.get(0) : "";
  }

  private static Optional<ColumnMeaning> compact(List<String> words) {
    for (int i = words.size() - 1; i >= 0; i--) {
      Matcher word = COMPACT.matcher(words.get(i));
      if (word.matches() && clear(word.group(1), words)) {
        QuantityWords quantity = quantity(word.group(1), words);
        List<String> rest = new ArrayList<>(words);
        rest.set(i, word.group(2) + word.group(4));
        return Optional.of(channel(quantity, word.group(3), rest));
      }
    }
    return Optional.empty();
  }

  private static boolean clear(String letters, List<String> words) {
    return !letters.matches("[vp]") || words.stream().anyMatch(ColumnWords.FORCE_CONTEXT::contains);
  }

  private static Optional<ColumnMeaning> spelled(List<String> words) {
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

  /** A vertical force, or a moment about the vertical, whose name says no axis. */
  private static Optional<ColumnMeaning> vertical(List<String> words) {
    if (words.contains("vertikalkraft")) {
      return Optional.of(channel(QuantityWords.FORCE, "z", words));
    }
    return words.stream().anyMatch(ColumnWords.VERTICAL::contains)
        ? quantity(words)
            .filter(quantity -> quantity != QuantityWords.COP)
            .map(quantity -> channel(quantity, "z", words))
        : Optional.empty();
  }

  /** What lies across the plate or along it, and whose name says so in place of an axis. */
  private static Optional<ColumnMeaning> level(List<String> words) {
    boolean across = words.stream().anyMatch(ColumnWords.ACROSS::contains);
    boolean along = words.stream().anyMatch(ColumnWords.ALONG::contains);
    return across == along
        ? Optional.empty()
        : quantity(words).map(quantity -> channel(quantity, across ? "x" : "y", words));
  }

  /** The point at which the force is applied, as in {@code Ax (m)}: only where it is a length. */
  private static Optional<ColumnMeaning> applied(ColumnName column, List<String> words) {
    boolean length = column.unit().flatMap(LengthUnit::named).isPresent();
    for (int i = words.size() - 1; length && i >= 0; i--) {
      Matcher word = APPLIED.matcher(words.get(i));
      if (word.matches()) {
        List<String> rest = new ArrayList<>(words);
        rest.set(i, word.group(1) + word.group(3));
        return Optional.of(channel(QuantityWords.COP, word.group(2), rest));
      }
    }
    return Optional.empty();
  }

  private static QuantityWords quantity(String letters, List<String> words) {
    return quantity(List.of(letters)).orElseThrow(() -> new IllegalStateException("" + words));
  }

  private static Optional<QuantityWords> quantity(List<String> words) {
    for (QuantityWords quantity : QuantityWords.values()) {
      if (words.stream().anyMatch(word -> UnitNames.among(quantity.words, word))) {
        return Optional.of(quantity);
      }
    }
    return Optional.empty();
  }

  private static ColumnMeaning channel(QuantityWords quantity, String axis, List<String> rest) {
    Channel channel = Channel.of(quantity.held, Axis.of(axis.charAt(0)));
    return new ColumnMeaning(
        ColumnKind.CHANNEL,
        Optional.of(channel),
        plate(rest),
        rest.stream().filter(ColumnWords.VERSIONS::contains).collect(Collectors.joining(" ")));
  }

  private static String plate(List<String> words) {
    List<String> telling = new ArrayList<>();
    for (String word : words) {
      String bare =
          word.replaceAll("^(fp|plate|forceplate|platform|force|cop|grf|moment)(?=\\d+$)", "");
      if (!bare.isEmpty()
          && !ColumnWords.FILLERS.contains(bare)
          && !ColumnWords.VERSIONS.contains(bare)
          && !bare.matches("\\d+hz")) {
        telling.add(bare);
      }
    }
    return String.join(" ", telling);
  }

  /** The name a plate gets from the part of a column's name that distinguishes it. */
  public static String plateName(String telling) {
    if (telling.isEmpty()) {
      return "plate 1";
    }
    return telling.matches("\\d+") ? "plate " + telling : telling;
  }
}
