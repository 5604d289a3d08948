package caryatid.faults;

import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A sample stand with a changed description. */
public final class SampleStands {
  private SampleStands() {}

  /** What is refused of the first sample with other words in its description, without places. */
  public static List<String> refusals(String words, String others) throws IOException {
    SampleStand stand = SampleStand.ALL.get(0);
    try {
      stand.checked(stand.export().asItIs(), Optional.of(stand.plate().replace(words, others)));
      return List.of();
    } catch (BadInput e) {
      Wording wording = Wording.in(Locale.ENGLISH);
      return e.problems().stream()
          .map(p -> wording.say(p).replace('\u00a0', ' ').replaceFirst("^[^:]*: ", ""))
          .toList();
    }
  }
}
