package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Fitting.Kind;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The clinic sets limits for every sheet that sets none, and for settings in records. */
class ClinicLimitsTest {
  @TempDir private Path folder;
  private Fitting fitting;

  @BeforeEach
  void wide() {
    fitting = Fitting.of(folder, Kind.K7).sheet("stance-width-mm: .*", "stance-width-mm: 310");
  }

  private Run remember(String limits) {
    fitting.write("limits.yaml", "clinic-limits: 1\nlimits:\n" + limits);
    return Run.caryatid(
        "clinic", "limits", fitting.file("limits.yaml"), "--records", fitting.file("records"));
  }

  private Run check() {
    return fitting.check("--records", fitting.file("records"));
  }

  @Test
  void aClinicsLimitHoldsForASheetWithoutOneAndIsKeptWithTheReport() {
    assertThat(check().err())
        .contains("`stance-width-mm` is 310.0 mm, outside 60.0 mm to 300.0 mm");
    assertThat(remember("  stance-width-mm: {ask-above: 320}\n"))
        .isEqualTo(new Run(0, "Remembered the limits of 1 quantities.\n", ""));
    Run limited = check();
    assertThat(limited.err()).isEmpty();
    assertThat(limited.out())
        .startsWith("Where the sheet sets no limits, the clinic's limits are used.\n");
    Run recheck = Run.caryatid("check", fitting.file("out/stand-report.pdf"));
    assertThat(recheck.code()).as(recheck.err()).isZero();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "limits: {heel-height-mm: {ask-above: 70}, stance-width-mm: {ask-above: 305}}",
        "limits:\n  heel-height-mm: {ask-above: 70}\n  stance-width-mm: {ask-above: 305}"
      })
  void theSheetsOwnLimitComesFirst(String own) {
    remember("  stance-width-mm: {ask-above: 320}\n  load-share-percent: {ask-below: 30}\n");
    fitting.line(own);
    assertThat(check().err()).contains("310.0 mm, outside 60.0 mm to 305.0 mm");
    fitting.sheet("stance-width-mm: 310", "stance-width-mm: 305");
    assertThat(check().err()).isEmpty();
  }

  @Test
  void aClinicsLimitOfASettingHoldsInItsRecords() {
    fitting.start();
    assertThat(torque("2").err()).contains("items[1].set is 2.0 N m, outside 3.0 N m to 30.0 N m");
    remember("  fastener-torque-nm: {ask-below: 2}\n  plantarflexion-deg: {refuse-above: 30}\n");
    assertThat(torque("2").err()).isEmpty();
    assertThat(torque("1.9").err())
        .contains("items[1].set is 1.9 N m, outside 2.0 N m to 30.0 N m");
  }

  @Test
  void limitsThatAreOutOfOrderAreRefused() {
    assertThat(remember("  stance-width-mm: {ask-above: 20}\n").err())
        .contains("limits.yaml line 3, column ");
    assertThat(check().err()).contains("outside 60.0 mm to 300.0 mm");
  }

  @Test
  void theLimitsAreShown() {
    remember("  stance-width-mm: {ask-above: 320}\n");
    assertThat(Run.caryatid("clinic", "show", "--records", fitting.file("records")).out())
        .isEqualTo("clinic-limits: 1\nlimits:\n  stance-width-mm: {ask-above: 320}\n");
  }

  private Run torque(String set) {
    return fitting.add(
        "bench-alignment",
        "items[1].item=fasteners secured to torque",
        "items[1].fastener=tube clamp",
        "items[1].set=" + set,
        "items[1].unit=Nm");
  }
}
