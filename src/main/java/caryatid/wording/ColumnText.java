package caryatid.wording;

import caryatid.recording.model.Channel;
import caryatid.recording.model.ColumnView;
import caryatid.recording.model.ColumnView.ByName;
import caryatid.recording.model.ColumnView.ByNumbers;
import caryatid.remark.Argument;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The columns of an export, each with its first values, what it probably is, and why. */
public final class ColumnText {
  /** More columns than these are not listed one by one. */
  private static final int MOST = 100;

  private ColumnText() {}

  /** The lines; none where there is no column, and no list of columns whose meaning is settled. */
  public static List<String> lines(List<ColumnView> columns, Wording wording) {
    List<String> lines = new ArrayList<>();
    if (!columns.isEmpty()) {
      lines.add(wording.word("ColumnText.how"));
    }
    List<ColumnView> written = columns.stream().filter(c -> !c.first().isEmpty()).toList();
    if (!written.isEmpty()) {
      lines.add(wording.fill("ColumnText.columns", Argument.count(written.size())));
    }
    written.stream().limit(MOST).map(column -> line(column, wording)).forEach(lines::add);
    return List.copyOf(lines);
  }

  private static String line(ColumnView column, Wording wording) {
    return wording.fill(
        "ColumnText.column",
        Argument.count(column.number()),
        Argument.text(column.name().isEmpty() ? "-" : column.name()),
        Argument.text(String.join(" ", column.first())),
        Argument.text(guess(column, wording)));
  }

  private static String guess(ColumnView column, Wording wording) {
    String byName =
        wording.fill(
            column.byName().code(),
            Argument.text(column.channel().map(ColumnText::key).orElse("")));
    String byNumbers = byNumbers(column, wording);
    boolean weight =
        column.byNumbers() == ByNumbers.WEIGHT_N || column.byNumbers() == ByNumbers.WEIGHT_KG;
    boolean channel = column.byName() == ByName.CHANNEL;
    if (column.byName() == ByName.NOTHING) {
      return byNumbers;
    }
    return channel && weight && column.channel().orElseThrow().quantity() == Channel.Quantity.FORCE
        ? byName + "; " + byNumbers
        : byName;
  }

  private static String byNumbers(ColumnView column, Wording wording) {
    return wording.fill(
        column.byNumbers().code(),
        Argument.text(number((column.low() + column.high()) / 2)),
        Argument.text(number(column.low())),
        Argument.text(number(column.high())));
  }

  private static String key(Channel channel) {
    return channel.lastPart().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String number(double value) {
    return new BigDecimal(value, new MathContext(3)).stripTrailingZeros().toPlainString();
  }
}
