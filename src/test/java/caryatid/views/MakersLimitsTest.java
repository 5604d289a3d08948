package caryatid.views;

import static caryatid.demo.Invented.answers;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.fitting.Addition;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MakersLimitsTest {
  private static final Answers FOOT =
      answers(
          "what", "foot",
          "name", "spring foot",
          "body-mass-highest-kg", 100,
          "mobility-grade-lowest", 2,
          "mobility-grade-highest", 3,
          "heel-height-lowest-mm", 5,
          "heel-height-highest-mm", 15);

  @Test
  void whatIsInsideOrAtALimitIsNotRemarked() {
    assertThat(says(wearer(100, 3), components(), stand(100, 15))).isEmpty();
    assertThat(says(wearer(60, 2), components(), stand(60, 5))).isEmpty();
  }

  @Test
  void theNewestBodyMassCounts() {
    assertThat(says(wearer(90, 3), components(), stand(100.1, 10)))
        .containsExactly(
            "spring foot: the body mass of 100.1\u00a0kg is above the 100.0\u00a0kg that its maker"
                + " allows. Do not let the wearer stand or walk on it until this is settled with"
                + " the maker.");
    assertThat(says(wearer(101, 3), components(), stand(99, 10))).isEmpty();
  }

  @Test
  void theMassThatThePlatesMeasuredCountsBesideTheOneThatIsWritten() {
    String measured =
        "spring foot: the body mass of 100.1\u00a0kg that the plates measured is above the"
            + " 100.0\u00a0kg that its maker allows. Do not let the wearer stand or walk on it"
            + " until this is settled with the maker.";
    assertThat(says(wearer(90, 3), components(), onPlates(100.1))).containsExactly(measured);
    assertThat(says(wearer(90, 3), components(), onPlates(100.1), stand(95, 10)))
        .containsExactly(measured);
    assertThat(says(wearer(90, 3), components(), onPlates(100.1), onPlates(100))).isEmpty();
    assertThat(says(wearer(101, 3), components(), onPlates(99))).hasSize(1);
  }

  private static Addition onPlates(double massKg) {
    return Invented.addition(
        EntryKind.STAND, answers("body-mass-kg", massKg, "body-mass-from", "plate"));
  }

  @Test
  void gradeAndHeelHeightOutsideAreRemarked() {
    assertThat(says(wearer(90, 4), components(), stand(90, 4.9), shoes(20)))
        .containsExactly(
            "spring foot: the mobility grade 4 is outside the range its maker gives.",
            "spring foot: the heel height of 4.9\u00a0mm is outside the range its maker"
                + " gives.",
            "spring foot: the heel height of 20.0\u00a0mm is outside the range its maker"
                + " gives.");
    assertThat(says(wearer(90, 1), components(), stand(90, 15.1))).hasSize(2);
  }

  @Test
  void aPartThatIsNotNamedAgainKeepsItsLimits() {
    Addition ankle =
        Invented.addition(
            EntryKind.COMPONENTS,
            answers(
                "components", answers("what", "ankle", "name", "a", "body-mass-highest-kg", 90)));
    assertThat(says(wearer(95, 3), components(), ankle, shoes(20)))
        .containsExactly(
            "spring foot: the heel height of 20.0\u00a0mm is outside the range its maker"
                + " gives.",
            "ankle a: the body mass of 95.0\u00a0kg is above the 90.0\u00a0kg that its maker"
                + " allows. Do not let the wearer stand or walk on it until this is settled with"
                + " the maker.");
  }

  @Test
  void aPartThatIsNamedAgainTakesThePlaceOfTheOneBefore() {
    Addition other =
        Invented.addition(
            EntryKind.COMPONENTS, answers("components", answers("what", "Foot", "name", "b")));
    assertThat(says(wearer(150, 4), components(), other, shoes(20))).isEmpty();
  }

  @Test
  void aShoeThatIsNotNamedAgainIsStillWorn() {
    assertThat(says(wearer(90, 3), components(), shoes(20), shoe("sandal", 10)))
        .containsExactly(
            "spring foot: the heel height of 20.0\u00a0mm is outside the range its maker"
                + " gives.");
    assertThat(says(wearer(90, 3), components(), shoes(20), shoe("Boot", 10))).isEmpty();
  }

  private static List<String> says(Addition... additions) {
    List<Entry> entries = new ArrayList<>();
    for (Addition a : additions) {
      entries.add(
          new Entry(entries.size() + 1, a.at(), a.by(), Optional.empty(), a.content(), List.of()));
    }
    return MakersLimits.check(entries).stream().map(Wording.in(Locale.ENGLISH)::say).toList();
  }

  private static Addition wearer(double massKg, int grade) {
    return Invented.addition(
        EntryKind.OPENING,
        answers(
            "wearer",
            "K7",
            "side",
            "right",
            "level",
            "transtibial",
            "body-mass-kg",
            massKg,
            "mobility-grade",
            grade));
  }

  private static Addition components() {
    return Invented.addition(EntryKind.COMPONENTS, answers("components", FOOT));
  }

  private static Addition stand(double massKg, double heelMm) {
    return Invented.addition(
        EntryKind.STAND, answers("heel-height-mm", heelMm, "body-mass-kg", massKg));
  }

  private static Addition shoes(double heelMm) {
    return shoe("boot", heelMm);
  }

  private static Addition shoe(String name, double heelMm) {
    return Invented.addition(
        EntryKind.FOOTWEAR, answers("shoes", answers("shoe", name, "heel-height-mm", heelMm)));
  }
}
