package caryatid.views;

import caryatid.entry.KneeLock;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.remark.Argument;
import caryatid.remark.Coded;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether a stand was of the kind that a target is valid for. */
final class TargetValidity {
  private static final String COMMA = ", ";
  private static final Argument NOTHING = Argument.text("");

  private TargetValidity() {}

  /**
   * Whether the stand's footwear or its knee's mode is what a target is valid for. A knee's lock
   * and its mode stand in one, and either may be what is asked for.
   */
  static boolean isSaid(TermOrText<KneeLock> wanted, StandSummary stood) {
    Optional<TermOrText<KneeLock>> knee = stood.kneeMode();
    if (wanted.code().isPresent()) {
      return knee.filter(k -> k.code().equals(wanted.code()))
          .filter(k -> wanted.text().isBlank() || isSame(wanted.text(), k.text()))
          .isPresent();
    }
    return Stream.concat(stood.footwear().stream(), knee.map(TermOrText::text).stream())
        .anyMatch(text -> isSame(wanted.text(), text));
  }

  private static boolean isSame(String one, String other) {
    return TermOrText.fold(one).equals(TermOrText.fold(other));
  }

  /** Footwear, the knee's lock and its mode; empty texts for what is not recorded. */
  static List<Argument> how(Optional<StandSummary> stood) {
    Optional<String> footwear = stood.flatMap(StandSummary::footwear);
    Optional<TermOrText<KneeLock>> knee = stood.flatMap(StandSummary::kneeMode);
    List<Argument> how = new ArrayList<>();
    boolean both = footwear.isPresent() && knee.isPresent();
    how.add(Argument.text(footwear.orElse("") + (both ? COMMA : "")));
    how.addAll(knee.map(TargetValidity::parts).orElse(List.of(NOTHING, NOTHING)));
    return how;
  }

  /** The lock's term and the words, with a comma between where there are both. */
  static List<Argument> parts(TermOrText<? extends Coded> name) {
    boolean both = name.code().isPresent() && !name.text().isBlank();
    return List.of(
        name.code().map(code -> Argument.term(code)).orElse(NOTHING),
        Argument.text((both ? COMMA : "") + name.text()));
  }
}
