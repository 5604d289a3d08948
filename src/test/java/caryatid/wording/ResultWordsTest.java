package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.OffTargetHints;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.loadline.Verdict;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Estimate;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResultWordsTest {
  private static Finding finding(Plane plane, double mm, Verdict verdict) {
    Offset offset =
        new Offset(
            new LandmarkInPlane(plane, Side.LEFT, "knee centre"),
            LoadLineOwner.LEFT_FOOT,
            LoadLineMethod.VERTICAL,
            Estimate.exact(mm));
    Target target =
        new Target(
            new LandmarkInPlane(plane, Side.LEFT, "knee centre"),
            15,
            10,
            15,
            "a document",
            Target.MeantFor.FOOT,
            Optional.empty(),
            Optional.of(
                new OffTargetHints(
                    Optional.of("the socket's flexion"),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of("the foot's place"))));
    return new Finding(offset, target, 0.5, true, verdict);
  }

  private static String result(String language, double mm, Verdict verdict) {
    return new ResultWords(Wording.in(Locale.forLanguageTag(language)))
        .result(finding(Plane.SAGITTAL, mm, verdict))
        .replace('\u00a0', ' ');
  }

  private static String distances(String language, Plane plane, double mm, Verdict verdict) {
    return new ResultWords(Wording.in(Locale.forLanguageTag(language)))
        .distances(finding(plane, mm, verdict))
        .replace('\u00a0', ' ');
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          en | ● tolerance met | × tolerance not met | ○ undecided: 3 mm within the tolerance | ○ undecided: 3 mm beyond the tolerance
          de | ● Toleranz eingehalten | × Toleranz nicht eingehalten | ○ unentschieden: 3 mm in der Toleranz | ○ unentschieden: 3 mm jenseits der Toleranz
          fr | ● tolérance respectée | × tolérance non respectée | ○ indécis : 3 mm dans la tolérance | ○ indécis : 3 mm au-delà de la tolérance
          es | ● tolerancia cumplida | × tolerancia no cumplida | ○ sin decidir: 3 mm dentro de la tolerancia | ○ sin decidir: 3 mm más allá de la tolerancia
          """)
  void eachResultHasItsMarkAndItsWords(
      String language, String met, String notMet, String spare, String over) {
    assertThat(result(language, 15, Verdict.WITHIN)).isEqualTo(met);
    assertThat(result(language, -20, Verdict.OUTSIDE)).isEqualTo(notMet);
    assertThat(result(language, 8, Verdict.INSIDE_TOO_CLOSE)).isEqualTo(spare);
    assertThat(result(language, 33, Verdict.OUTSIDE_TOO_CLOSE)).isEqualTo(over);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          en | load line 8 mm too far posterior, 18 mm from the recommendation | load line 8 mm too far lateral, 23 mm from the recommendation
          de | Lastlinie 8 mm zu weit hinten (posterior), 18 mm von der Empfehlung entfernt | Lastlinie 8 mm zu weit lateral, 23 mm von der Empfehlung entfernt
          fr | ligne de charge 8 mm trop en arrière, à 18 mm de la recommandation | ligne de charge 8 mm trop latérale, à 23 mm de la recommandation
          es | línea de carga 8 mm demasiado atrás, a 18 mm de la recomendación | línea de carga 8 mm demasiado lateral, a 23 mm de la recomendación
          """)
  void theLoadLineIsTheSubjectOfDirectionAndDistance(
      String language, String posterior, String lateral) {
    assertThat(distances(language, Plane.SAGITTAL, -3, Verdict.OUTSIDE)).isEqualTo(posterior);
    assertThat(distances(language, Plane.FRONTAL, 38, Verdict.OUTSIDE)).isEqualTo(lateral);
  }

  @Test
  void aLineThatMeetsTheToleranceSaysWhatItHasToSpare() {
    assertThat(distances("en", Plane.SAGITTAL, 12, Verdict.WITHIN))
        .isEqualTo("load line 3 mm posterior to the recommendation, 7 mm to spare");
    assertThat(distances("en", Plane.FRONTAL, 15.4, Verdict.WITHIN))
        .isEqualTo("load line at the recommendation, 10 mm to spare");
    assertThat(distances("en", Plane.FRONTAL, 6, Verdict.INSIDE_TOO_CLOSE))
        .isEqualTo("load line 9 mm medial to the recommendation");
  }

  @Test
  void lessThanHalfAMillimetreIsNeverWrittenAsNone() {
    assertThat(result("en", 5.4, Verdict.INSIDE_TOO_CLOSE))
        .isEqualTo("○ undecided: under 1 mm within the tolerance");
    assertThat(result("en", 5.6, Verdict.INSIDE_TOO_CLOSE))
        .isEqualTo("○ undecided: 1 mm within the tolerance");
  }

  @Test
  void whatTheDocumentSaysToLookAtIsToldOfItsOwnSideOnly() {
    assertThat(ResultWords.advice(finding(Plane.SAGITTAL, 31, Verdict.OUTSIDE)))
        .contains("the socket's flexion");
    assertThat(ResultWords.advice(finding(Plane.SAGITTAL, 30, Verdict.INSIDE_TOO_CLOSE))).isEmpty();
    assertThat(ResultWords.advice(finding(Plane.SAGITTAL, 4, Verdict.OUTSIDE))).isEmpty();
    assertThat(ResultWords.advice(finding(Plane.FRONTAL, 31, Verdict.OUTSIDE)))
        .contains("the foot's place");
  }

  /** Inside the tolerance nothing is to be looked at, whatever the document says of each side. */
  @ParameterizedTest
  @CsvSource({"4.9, posterior", "5, ", "15, ", "30, ", "30.1, anterior"})
  void whatTheDocumentSaysToLookAtIsToldBeyondTheToleranceOnly(double mm, String expected) {
    Finding was = finding(Plane.SAGITTAL, mm, Verdict.OUTSIDE);
    Target target = was.target();
    OffTargetHints each =
        new OffTargetHints(
            Optional.of("anterior"),
            Optional.of("posterior"),
            Optional.of("medial"),
            Optional.of("lateral"));
    Target hinted =
        new Target(
            target.at(),
            target.recommendedMm(),
            target.belowMm(),
            target.aboveMm(),
            target.source(),
            target.line(),
            target.condition(),
            Optional.of(each));
    assertThat(ResultWords.advice(new Finding(was.offset(), hinted, 0.5, true, was.verdict())))
        .isEqualTo(Optional.ofNullable(expected));
  }

  @ParameterizedTest
  @CsvSource({
    "en, knee centre, prosthetic knee axis, lateral patellar border, greater trochanter",
    "de, Kniedrehpunkt, Prothesenknieachse, lateraler Patellarand, Trochanter major",
    "fr, centre articulaire du genou, axe du genou prothétique, bord latéral de la patella,"
        + " grand trochanter",
    "es, centro articular de la rodilla, eje de la rodilla protésica, borde lateral de la rótula,"
        + " trocánter mayor"
  })
  void landmarksHaveTheTradesNames(
      String language, String own, String prosthetic, String patella, String hip) {
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    assertThat(new LandmarkWords(wording, false).name("knee centre")).isEqualTo(own);
    LandmarkWords names = new LandmarkWords(wording, true);
    assertThat(names.name("knee centre")).isEqualTo(prosthetic);
    assertThat(names.name("outer patellar border")).isEqualTo(patella);
    assertThat(names.name("lateral patellar border")).isEqualTo(patella);
    assertThat(names.name("hip")).isEqualTo(hip);
    assertThat(names.name("pylon clamp")).isEqualTo("pylon clamp");
  }
}
