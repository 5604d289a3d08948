package caryatid.web.page;

import caryatid.remark.Argument;
import caryatid.usecase.stand.TypedNumber;
import caryatid.wording.Wording;

/** Why a text is no number without a sign. */
public final class NumberFault {
  private NumberFault() {}

  /** The sentence. */
  public static String of(String typed, Wording wording) {
    String plain = typed.strip();
    if (TypedNumber.couldBeThousands(plain)) {
      String point = plain.replace(',', '.');
      String none = plain.replace(",", "");
      return wording.fill("Web.fault.comma", Argument.text(point), Argument.text(none));
    }
    return wording.word(plain.startsWith("-") ? "Web.fault.sign" : "Web.fault.number");
  }
}
