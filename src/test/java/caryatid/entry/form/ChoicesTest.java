package caryatid.entry.form;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.entry.EntryKind;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The codes that files hold; each was written once and stays what it is. */
class ChoicesTest {
  @Test
  void everyConstantHasTheCodeItHadFromTheFirstDay() {
    assertCodes(Choices.PROSTHETIC_SIDE, "left", "right", "both");
    assertCodes(
        Choices.LEVEL,
        "partial foot",
        "ankle disarticulation",
        "transtibial",
        "knee disarticulation",
        "transfemoral",
        "hip disarticulation",
        "rotationplasty");
    assertCodes(Choices.SIDE, "left", "right");
    assertCodes(Choices.PLANE, "sagittal", "frontal");
    assertCodes(Choices.RESULT, "within", "inside too close", "outside too close", "outside");
    assertCodes(Choices.MASS_FROM, "plate", "sheet");
    assertCodes(Choices.UNIT, "mm", "deg", "N m");
    assertCodes(Choices.GAIT_PLANE, "sagittal", "frontal", "transverse");
    assertCodes(
        Choices.PHASE, "early stance", "mid-stance", "late stance", "swing", "whole stride");
    assertCodes(Choices.SEVERITY, "none", "slight", "moderate", "marked");
    assertCodes(
        Choices.ROLE,
        "recording",
        "description",
        "sheet",
        "earlier sheet",
        "earlier states",
        "result",
        "report",
        "photograph",
        "other");
  }

  private static <E extends Enum<E>> void assertCodes(Choices<E> choices, String... codes) {
    assertThat(choices.codes()).containsExactly(codes);
    for (String code : codes) {
      assertThat(choices.code(choices.constant(code).orElseThrow())).isEqualTo(code);
    }
    assertThat(choices.constant("neither")).isEmpty();
  }

  @Test
  void everyKindHasTheNameItHadFromTheFirstDay() {
    assertThat(Arrays.stream(EntryKind.values()).map(EntryKind::key))
        .containsExactlyElementsOf(
            List.of(
                "opening",
                "before-any-screw",
                "bench-alignment",
                "components",
                "length",
                "stand",
                "walking",
                "footwear",
                "accepted",
                "own-setting",
                "closing",
                "note",
                "sent",
                "erasure"));
  }
}
