package caryatid.web.page;

import caryatid.entry.SettingDirection;
import caryatid.remark.Argument;
import caryatid.usecase.stand.AlignmentChange;
import caryatid.usecase.stand.AlignmentChange.Changeable;
import caryatid.usecase.stand.TypedNumber;
import caryatid.wording.Wording;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

/**
 * To what an item is set: its new value, or by how much it is changed and in which direction.
 *
 * @param what the item
 * @param to the new value as it was typed; empty if it was not
 * @param by the difference as it was typed, without a sign; empty if it was not
 * @param way the code of its direction; empty if none was chosen
 */
public record TypedSetting(Changeable what, String to, String by, String way) {
  /** The name of the field with the new value. */
  public static final String TO = AlignmentChange.lead(1) + "set";

  /** The names of the fields with the difference and its direction. */
  public static final String BY = "change-by";

  public static final String WAY = "change-way";

  /** What a form says of an item. */
  public static TypedSetting of(Changeable what, Request request) {
    return new TypedSetting(
        what,
        request.field(TO).orElse(""),
        request.field(BY).orElse(""),
        request.field(WAY).orElse(""));
  }

  /** Whether nothing was typed. */
  public static boolean isEmpty(Request request) {
    return request.field(TO).isEmpty() && request.field(BY).isEmpty();
  }

  /** The value it is set to, as it was typed or as it comes out. */
  public String set() {
    return by.isEmpty() ? to : result().map(BigDecimal::toPlainString).orElse("");
  }

  /** The change in words: what, from, to. */
  public String said(Wording wording) {
    String is = by.isEmpty() ? to : result().map(wording::exact).orElse("");
    return AlignmentChange.said(what, is, wording);
  }

  private Optional<BigDecimal> result() {
    BigDecimal difference = new BigDecimal(TypedNumber.plain(by));
    boolean rises = direction().map(SettingDirection::rises).orElse(true);
    return what.now()
        .map(now -> rises ? now.add(difference) : now.subtract(difference))
        .map(BigDecimal::stripTrailingZeros);
  }

  private Optional<SettingDirection> direction() {
    return what.directions().stream().filter(d -> d.name().equals(way)).findFirst();
  }

  /** What is wrong, by the name of its field; nothing if it can be taken. */
  public Map<String, String> faults(Wording wording) {
    if (by.isEmpty()) {
      return inValue(wording);
    }
    if (!to.isEmpty()) {
      return Map.of(BY, wording.word("Web.change.eitherOr"));
    }
    if (!TypedNumber.isPlain(TypedNumber.plain(by))) {
      return Map.of(BY, NumberFault.of(by, wording));
    }
    if (what.now().isEmpty()) {
      return Map.of(BY, wording.word("Web.change.fromUnknown"));
    }
    return direction().isPresent() ? Map.of() : Map.of(WAY, noDirection(wording));
  }

  private Map<String, String> inValue(Wording wording) {
    if (to.isEmpty()) {
      return Map.of(TO, wording.word("Web.change.toOrBy"));
    }
    return way.isEmpty() ? Map.of() : Map.of(BY, wording.word("Web.change.wayOnly"));
  }

  private String noDirection(Wording wording) {
    return wording.fill(
        "Web.change.chooseWay",
        Argument.text(what.item()),
        Argument.term(what.directions().get(0)),
        Argument.term(what.directions().get(1)));
  }
}
