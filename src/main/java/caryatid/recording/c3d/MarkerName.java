package caryatid.recording.c3d;

import caryatid.geometry.Side;
import caryatid.recording.model.BodyPoint;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a marker's name says: a side and a place of a leg, in English words or their first letters,
 * perhaps with which side of the joint. A name in front of a colon is the subject's.
 */
record MarkerName(Side side, BodyPoint point) {
  private static final String PLACE = "(knee|kne|ankle|ank|heel|hee|toe)";
  private static final String WHICH = "(?:lateral|medial|lat|med|in|out|l|m)?";
  private static final Pattern SIDE_FIRST =
      Pattern.compile("(right|left|r|l)" + WHICH + PLACE + WHICH);
  private static final Pattern SIDE_LAST =
      Pattern.compile(WHICH + PLACE + WHICH + "(right|left|r|l)");

  static Optional<MarkerName> of(String label) {
    String plain =
        label
            .substring(label.lastIndexOf(':') + 1)
            .toLowerCase(Locale.ROOT)
            .replaceAll("[\\s._-]", "");
    Matcher first = SIDE_FIRST.matcher(plain);
    if (first.matches()) {
      return Optional.of(new MarkerName(side(first.group(1)), place(first.group(2))));
    }
    Matcher last = SIDE_LAST.matcher(plain);
    return last.matches()
        ? Optional.of(new MarkerName(side(last.group(2)), place(last.group(1))))
        : Optional.empty();
  }

  private static Side side(String word) {
    return word.startsWith("r") ? Side.RIGHT : Side.LEFT;
  }

  private static BodyPoint place(String word) {
    return switch (word.charAt(0)) {
      case 'k' -> BodyPoint.KNEE;
      case 'a' -> BodyPoint.ANKLE;
      case 'h' -> BodyPoint.HEEL;
      default -> BodyPoint.TOE;
    };
  }
}
