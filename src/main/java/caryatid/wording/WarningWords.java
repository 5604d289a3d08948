package caryatid.wording;

import caryatid.entry.Acceptance;
import caryatid.entry.Entry;
import caryatid.remark.Argument;
import caryatid.views.ResultOrigin;
import caryatid.views.StandWarnings.Warning;
import java.util.ArrayList;
import java.util.List;

/** The warnings of stands in words: the stand, the warning, and who accepted it and why. */
public final class WarningWords {
  private final Wording wording;
  private final LandmarkWords landmarks;

  /** Words in a language, the landmarks by the trade's names. */
  public WarningWords(Wording wording, LandmarkWords landmarks) {
    this.wording = wording;
    this.landmarks = landmarks;
  }

  /** The word that leads a warning. */
  public String lead(Warning warning) {
    return wording.word(warning.said().remark().topic().weight());
  }

  /** A warning without its lead. */
  public String say(Warning warning) {
    List<String> sentences = new ArrayList<>();
    String said = landmarks.say(warning.said());
    sentences.add(said);
    String stand =
        warning.stand().number() + warning.footwear().map(shoe -> ", " + shoe.strip()).orElse("");
    String typed = warning.stand().isTyped() ? wording.word(ResultOrigin.TYPED) : "";
    sentences.add(wording.fill("StandWarnings.STAND", Argument.text(stand + typed)));
    warning.accepted().forEach(entry -> sentences.add(accepted(entry, said)));
    return String.join(" ", sentences);
  }

  /** Who accepted it and why; what was accepted is said only where it is not this very warning. */
  private String accepted(Entry entry, String said) {
    Acceptance accepted = entry.content(Acceptance.class).orElseThrow();
    Argument by = Argument.text(entry.by());
    Argument number = Argument.count(entry.number());
    Argument why = Argument.text(accepted.why().replaceFirst("\\.$", ""));
    return plain(accepted.what()).contains(plain(said))
        ? wording.fill("StandWarnings.ANSWERED", by, number, why)
        : wording.fill("StandWarnings.ACCEPTED", by, number, Argument.text(accepted.what()), why);
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ').replace('\u202f', ' ');
  }
}
