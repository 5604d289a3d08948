package caryatid.web;

import caryatid.remark.BadInput;
import caryatid.usecase.NextStand;
import caryatid.usecase.Records;
import caryatid.web.page.Markup;
import caryatid.wording.ForesightText;
import caryatid.wording.Wording;
import java.util.List;

/** What the next state will be able to tell of each tolerance, said before anything is recorded. */
final class AheadNote {
  private AheadNote() {}

  /** Nothing where no state was kept that says how this wearer is measured. */
  static Markup of(Records records, OpenRecord record) {
    Markup out = new Markup();
    List<String> lines = lines(records, record.code(), record.wording());
    if (!lines.isEmpty()) {
      out.open("details", "class", "note").element("summary", lines.get(0));
      out.open("ul", "class", "facts");
      lines.subList(1, lines.size()).forEach(line -> out.element("li", line));
      out.close("ul").close("details");
    }
    return out;
  }

  private static List<String> lines(Records records, String code, Wording wording) {
    try {
      NextStand next = NextStand.of(records, code);
      return ForesightText.lines(next.ahead(), next.prostheticKnee(), wording);
    } catch (BadInput e) {
      return List.of();
    }
  }
}
