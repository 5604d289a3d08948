package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.GroupedRemark;
import caryatid.format.ArchiveProblem;
import caryatid.loadline.LoadLineRemark;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The line and column of a problem, and in how many stands a remark is said. */
class PlacesAndCountsTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final String SENTENCE =
      ENGLISH.fill(ArchiveProblem.NEWER_VERSION.code(), java.util.List.of());

  private static Problem at(Place place) {
    return Problem.at(place, ArchiveProblem.NEWER_VERSION);
  }

  @Test
  void aProblemIsLedByFileLineAndColumn() {
    assertThat(ENGLISH.say(at(Place.of("walk.csv", 812, "Fz"))))
        .isEqualTo("walk.csv line 812, column Fz: " + SENTENCE);
    assertThat(ENGLISH.say(at(Place.of("walk.csv", 813))))
        .isEqualTo("walk.csv line 813: " + SENTENCE);
    assertThat(ENGLISH.say(at(new Place("walk.csv", OptionalInt.empty(), Optional.of("7")))))
        .isEqualTo("walk.csv, column 7: " + SENTENCE);
    assertThat(ENGLISH.say(at(Place.of("walk.csv")))).isEqualTo("walk.csv: " + SENTENCE);
  }

  @Test
  void onAPageAboutTheFileItsNameIsLeftOut() {
    assertThat(ENGLISH.sayWithin(at(Place.of("walk.csv", 812, "Fz"))))
        .isEqualTo("line 812, column Fz: " + SENTENCE);
    assertThat(ENGLISH.sayWithin(at(Place.of("walk.csv")))).isEqualTo(SENTENCE);
  }

  @Test
  void inHowManyStandsARemarkIsSaidFollowsItIfSeveral() {
    Remark remark = Remark.of(LoadLineRemark.FRONTAL_OF_WHOLE_BODY);
    String alone = ENGLISH.say(remark);
    assertThat(ENGLISH.say(new GroupedRemark(remark, 1))).isEqualTo(alone);
    assertThat(ENGLISH.say(new GroupedRemark(remark, 3)))
        .isEqualTo(alone + " (In 3 of the stands.)");
  }
}
