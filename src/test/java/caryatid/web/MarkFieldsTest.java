package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said at the fields of a landmark. */
class MarkFieldsTest extends FittingWindow {
  private static final String NONE =
      "<p data-at=\"landmark[1].name\">The components of this foot state no ankle axis: the point"
          + " is called foot reference point.";
  private static final String NOT_THEN =
      "The landmark was read at 99.00 s, but the recording has no samples with load for a second"
          + " before and after. Correct the time, counted from the first sample of the first"
          + " recording, or leave it out.";

  private TypedStand stand;

  @BeforeEach
  void prepare() throws Exception {
    rememberPlate();
    stand = new TypedStand(window, base);
  }

  private String live(Map<String, String> other) throws Exception {
    return stand.typeAs(other, "part", "live").body().replace('\u00a0', ' ');
  }

  @ParameterizedTest
  @CsvSource({"no, true", "yes, false", "'', false"})
  void anAnkleAxisOfAFootThatHasNoneIsSaidAtItsField(String has, boolean said) throws Exception {
    send(
        "/parts",
        "components[1].what",
        "foot",
        "components[1].name",
        "demo foot",
        "components[1].ankle-axis",
        has);
    assertThat(live(Map.of()).contains(NONE)).isEqualTo(said);
  }

  @Test
  void besideAFootReferencePointAnAnkleAxisIsOne() throws Exception {
    send("/parts", "components[1].what", "foot", "components[1].ankle-axis", "no");
    Map<String, String> both =
        Map.of(
            "landmark[4].name", "foot reference point",
            "landmark[4].forward-sense", "front",
            "landmark[4].forward-from", "rear edge",
            "landmark[4].forward", "150",
            "landmark[4].up", "0");
    assertThat(live(both)).doesNotContain("state no ankle axis");
  }

  /** The recording lasts 18 s. */
  @Test
  void aMomentOutsideTheRecordingIsRefusedAtItsField() throws Exception {
    Map<String, String> late = Map.of("landmark[2].read-at", "12 99");
    live(late);
    stand.drop("barefoot-1.csv");
    assertThat(
            stand.typeAs(late, "action", "count-1", "part", "live").body().replace('\u00a0', ' '))
        .contains("<p data-at=\"landmark[2].read-at\">" + NOT_THEN)
        .doesNotContain("tolerance met");
    assertThat(window.page(base + TypedStand.STEP).replace('\u00a0', ' '))
        .contains("<div class=\"fault\" id=\"landmark-2-read-at-fault\"><p>" + NOT_THEN);
    assertThat(live(Map.of("landmark[2].read-at", "12 14,5"))).doesNotContain("was read at");
  }
}
