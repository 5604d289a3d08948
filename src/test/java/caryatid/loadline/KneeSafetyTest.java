package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Remark;
import caryatid.remark.Weight;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class KneeSafetyTest {
  private static final List<Landmark> KNEE =
      List.of(Legs.mark(LandmarkKind.KNEE_CENTRE, Side.RIGHT, 0, 0, 490));

  private static Offset past(LoadLineOwner of, double mm) {
    return past(of, LoadLineMethod.VERTICAL, mm);
  }

  private static Offset past(LoadLineOwner of, LoadLineMethod kind, double mm) {
    Estimate estimate =
        Estimate.exact(mm)
            .with(new Contribution(new Source(Cause.SWAY, ""), 2, 1, Double.POSITIVE_INFINITY));
    return new Offset(
        new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, LandmarkKind.KNEE_CENTRE.name()),
        of,
        kind,
        estimate);
  }

  private static List<Remark> warnings(Offset... offsets) {
    return KneeSafety.of(List.of(offsets), KNEE, List.of(Side.RIGHT));
  }

  @Test
  void aLineBehindTheKneeIsSaidInPlainWords() {
    List<Remark> warnings = warnings(past(LoadLineOwner.RIGHT_FOOT, -0.3));
    assertThat(warnings.get(0).topic().weight()).isEqualTo(Weight.SAFETY);
    assertThat(Wording.in(Locale.ENGLISH).say(warnings.get(0)))
        .isEqualTo(
            "The knee may bend. Seat the wearer, or hands on the rails and a helper. Correct it,"
                + " then stand again. The load line runs 0.3\u00a0mm behind the right prosthetic"
                + " knee's axis.");
  }

  @Test
  void aLineThatMayBeBehindTheKneeIsSaidInPlainWords() {
    assertThat(Wording.in(Locale.ENGLISH).say(warnings(past(LoadLineOwner.RIGHT_FOOT, 0.3)).get(0)))
        .isEqualTo(
            "The knee may bend. Hands on the rails and a helper. Stand again; if still in doubt,"
                + " follow the knee's instructions. The load line runs 0.3\u00a0mm in front of the"
                + " right prosthetic knee's axis, give or take 3.9\u00a0mm.");
  }

  @Test
  void everyLanguageSaysWhatToDoFirst() {
    assertThat(
            Stream.of("de", "fr", "es")
                .map(language -> Wording.in(Locale.forLanguageTag(language)))
                .flatMap(
                    words ->
                        Stream.of(-0.3, 0.3)
                            .map(
                                mm ->
                                    words.say(
                                        warnings(past(LoadLineOwner.RIGHT_FOOT, mm)).get(0)))))
        .extracting(sentence -> sentence.replaceAll(" (Die Last|La ligne de|La línea de).*", ""))
        .containsExactly(
            "Das Knie kann einknicken. Den Anwender sich setzen lassen, oder Hände"
                + " an den Gehbarren und eine Hilfsperson dazu. Den Aufbau korrigieren, dann erneut"
                + " stehen lassen.",
            "Das Knie kann einknicken. Hände an den Gehbarren und eine Hilfsperson"
                + " dazu. Erneut stehen lassen; bleiben Zweifel, die Gebrauchsanweisung des Knies"
                + " befolgen.",
            "Le genou peut se dérober. Asseoir le porteur, ou mains sur les barres parallèles et"
                + " une personne pour l'aider. Corriger l'alignement, puis refaire l'essai"
                + " debout.",
            "Le genou peut se dérober. Mains sur les barres parallèles et une personne pour"
                + " aider. Refaire l'essai debout\u00a0; si le doute persiste, suivre la notice du"
                + " genou.",
            "La rodilla puede ceder. Sentar al usuario, o manos en las barras paralelas y otra"
                + " persona para ayudarle. Corregir la alineación y después repetir el ensayo de"
                + " pie.",
            "La rodilla puede ceder. Manos en las barras paralelas y otra persona para ayudar."
                + " Repetir el ensayo de pie; si persiste la duda, seguir las instrucciones de la"
                + " rodilla.");
  }

  @Test
  void onlyALineBehindTheKneeOrPerhapsBehindItMayBendIt() {
    assertThat(KneeSafety.mayBend(warnings(past(LoadLineOwner.RIGHT_FOOT, -9)))).isTrue();
    assertThat(KneeSafety.mayBend(warnings(past(LoadLineOwner.RIGHT_FOOT, 3)))).isTrue();
    assertThat(KneeSafety.mayBend(warnings(past(LoadLineOwner.RIGHT_FOOT, 9)))).isFalse();
    assertThat(KneeSafety.mayBend(warnings(past(LoadLineOwner.WHOLE_BODY, 9)))).isFalse();
  }

  /** u = 2 mm: the 95 % interval reaches 1.96 u = 3.92 mm. */
  @Test
  void aLineThatMayBeBehindTheKneeIsSaidToo() {
    assertThat(warnings(past(LoadLineOwner.RIGHT_FOOT, 3.91)))
        .extracting(Remark::topic)
        .containsExactly(LoadLineRemark.LINE_MAY_BE_BEHIND_KNEE);
    assertThat(warnings(past(LoadLineOwner.RIGHT_FOOT, 3.93))).isEmpty();
  }

  @Test
  void theWholeBodysLineCountsOnlyWhereTheFootsOwnIsUnknown() {
    assertThat(warnings(past(LoadLineOwner.WHOLE_BODY, -9), past(LoadLineOwner.RIGHT_FOOT, 20)))
        .isEmpty();
    assertThat(warnings(past(LoadLineOwner.WHOLE_BODY, -9)))
        .extracting(Remark::topic)
        .containsExactly(LoadLineRemark.LINE_BEHIND_KNEE, LoadLineRemark.OWN_LINE_OF_KNEE_UNKNOWN);
  }

  @Test
  void aKneeOfFleshIsNotWarnedOf() {
    Offset behind = past(LoadLineOwner.RIGHT_FOOT, -9);
    assertThat(KneeSafety.of(List.of(behind), KNEE, List.of())).isEmpty();
  }

  @Test
  void aProstheticKneeThatWasNotMarkedIsWarnedOf() {
    Offset other = past(LoadLineOwner.RIGHT_FOOT, 9);
    assertThat(KneeSafety.of(List.of(other), KNEE, List.of(Side.LEFT)))
        .extracting(Remark::topic)
        .containsExactly(LoadLineRemark.KNEE_NOT_MARKED);
  }

  @Test
  void aMeasuredForceBehindTheKneeIsWarnedOfAlthoughTheVerticalRunsInFront() {
    Offset vertical = past(LoadLineOwner.RIGHT_FOOT, 20);
    assertThat(
            warnings(vertical, past(LoadLineOwner.RIGHT_FOOT, LoadLineMethod.MEASURED_FORCE, -0.1)))
        .extracting(Remark::topic)
        .containsExactly(LoadLineRemark.MEASURED_LINE_BEHIND_KNEE);
    assertThat(
            warnings(vertical, past(LoadLineOwner.RIGHT_FOOT, LoadLineMethod.MEASURED_FORCE, 0.1)))
        .isEmpty();
  }
}
