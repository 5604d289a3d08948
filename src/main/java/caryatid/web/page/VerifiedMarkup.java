package caryatid.web.page;

import caryatid.remark.Argument;
import caryatid.remark.Problem;
import caryatid.usecase.VerifyRecord;
import caryatid.wording.RecordText;
import caryatid.wording.Wording;
import java.util.List;

/** What verifying a record found. */
public final class VerifiedMarkup {
  private VerifiedMarkup() {}

  /** In a line that it is in good order, or what is wrong with it. */
  public static Markup of(String code, VerifyRecord.Verified verified, Wording wording) {
    if (verified instanceof VerifyRecord.Damaged damaged) {
      return faults(code, damaged.problems(), wording);
    }
    if (verified instanceof VerifyRecord.Erased erased) {
      return new Markup().element("p", RecordText.erased(code, erased.erasure(), wording));
    }
    if (verified instanceof VerifyRecord.NotRead unread) {
      return sound(code, unread.entries(), unread.headDigest(), wording)
          .add(faults(code, unread.problems(), wording));
    }
    VerifyRecord.Sound sound = (VerifyRecord.Sound) verified;
    return sound(code, sound.entries(), sound.headDigest(), wording);
  }

  private static Markup sound(String code, int entries, String digest, Wording wording) {
    return new Markup()
        .element(
            "p",
            wording.fill(
                "Record.sound",
                Argument.text(code),
                Argument.text(RecordText.entries(entries, wording)),
                Argument.text(digest)),
            "class",
            "digest");
  }

  private static Markup faults(String code, List<Problem> problems, Wording wording) {
    Markup out = new Markup().open("div", "class", "fault", "role", "alert").element("p", code);
    problems.forEach(problem -> out.element("p", wording.say(problem)));
    return out.close("div");
  }
}
