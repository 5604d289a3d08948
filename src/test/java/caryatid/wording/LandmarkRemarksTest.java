package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.GroupedRemark;
import caryatid.alignment.StateRemark;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A remark names a landmark as the tables and drawings do, not by the word of the sheet. */
class LandmarkRemarksTest {
  private static String said(String inSheet, boolean prostheticKnee, Locale locale) {
    Remark remark =
        Remark.of(
            StateRemark.SMALLEST_DIFFERENCE,
            Argument.term(Plane.FRONTAL),
            Argument.text(inSheet),
            Argument.term(Side.RIGHT),
            Argument.of(10.25, Unit.MM));
    return new LandmarkWords(Wording.in(locale), prostheticKnee).say(new GroupedRemark(remark, 0));
  }

  @Test
  void thePatellaHasTheTradesNameInEveryLanguage() {
    String inSheet = "outer patellar border";
    assertThat(said(inSheet, false, Locale.ENGLISH)).contains("at lateral patellar border (right)");
    assertThat(said(inSheet, false, Locale.GERMAN)).contains("lateraler Patellarand");
    assertThat(said(inSheet, false, Locale.FRENCH)).contains("bord latéral de la patella");
    assertThat(said(inSheet, false, Locale.forLanguageTag("es")))
        .contains("borde lateral de la rótula");
  }

  @Test
  void aKneeIsNamedByWhoseItIs() {
    assertThat(said("knee centre", true, Locale.ENGLISH)).contains("at prosthetic knee axis (");
    assertThat(said("knee centre", false, Locale.ENGLISH)).contains("at knee centre (");
  }

  @Test
  void aNameOfTheCliniciansStaysAsItIs() {
    assertThat(said("tibial tubercle", true, Locale.GERMAN)).contains("tibial tubercle");
  }
}
