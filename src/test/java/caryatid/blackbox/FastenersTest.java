package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each fastener is a row with its torque; what is not secured leads. */
class FastenersTest {
  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic(folder);
    clinic.start();
  }

  private Run bench(String... rows) {
    List<String> all = new ArrayList<>(List.of("bench-alignment", "--by", "AB"));
    all.addAll(Arrays.asList(rows));
    return clinic.record("add", "K7-right", all.toArray(String[]::new));
  }

  private static String[] row(int row, String fastener, String recommended, String set) {
    String lead = "items[" + row + "].";
    return new String[] {
      lead + "item=fasteners secured to torque",
      lead + "fastener=" + fastener,
      lead + "recommended=" + recommended,
      lead + "set=" + set,
      lead + "unit=Nm"
    };
  }

  private String shown() {
    return clinic.record("show", "K7-right").out().replace('\u00a0', ' ');
  }

  /** Words by which only one known item begins are asked about; those of several are not. */
  @ParameterizedTest
  @CsvSource({
    "fasteners, fasteners secured to torque",
    "heel, heel height",
    "foot rotation, foot rotation outward"
  })
  void anItemThatIsNamedInShortIsAskedAbout(String typed, String known) {
    Run run = bench("items[1].item=" + typed, "items[1].set=5", "items[1].unit=deg");
    assertThat(run.err())
        .isEqualTo(
            "bench-alignment: items[1].item: \"%s\" is not known; did you mean \"%s\"? Correct"
                    .formatted(typed, known)
                + " it; if it is something else, add: items[1].item.text=%s\n".formatted(typed));
    assertThat(bench("items[1].item=socket", "items[1].set=5", "items[1].unit=deg").err())
        .isEmpty();
  }

  /** Both sides of each threshold. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "15|",
        "14.9| foot adapter: secured to 14.9 N m, below the 15.0 N m recommended (entry 2). Secure"
            + " it before the wearer stands or walks.",
        "0| foot adapter: not secured, its torque is noted as 0 (entry 2). Secure it to the torque"
            + " that its maker recommends before the wearer stands or walks.",
      })
  void aTorqueThatIsNotTheRecommendedOneLeads(String set, String said) {
    assertThat(bench(row(1, "foot adapter", "15", set)).code()).isZero();
    String second = shown().lines().skip(1).findFirst().orElseThrow();
    if (said == null) {
      assertThat(shown()).doesNotContain("Take care").contains("What is open\n  No open items.\n");
    } else {
      assertThat(second).isEqualTo("Take care: " + said);
    }
  }

  @Test
  void aTorqueOfTenTimesTheRecommendedOneLeadsWhateverItsReason() {
    List<String> row = new ArrayList<>(List.of(row(1, "foot adapter", "5", "50")));
    row.add("items[1].why=as the other one");
    assertThat(bench(row.toArray(String[]::new)).err()).isEmpty();
    assertThat(shown().lines().skip(1).findFirst().orElseThrow())
        .isEqualTo(
            "Take care: foot adapter: 50.0 N m is noted, ten times the 5.0 N m recommended or more"
                + " (entry 2). Check the number and the thread before the wearer stands or walks.");
  }

  @Test
  void aTorqueBelowTenTimesNeedsAReasonAndNothingElse() {
    bench(row(1, "foot adapter", "3", "29.9"));
    assertThat(shown())
        .doesNotContain("Take care")
        .contains(
            "What is open\n  foot adapter: not set as recommended, and no reason is noted"
                + " (entry 2).\n");
  }

  @Test
  void twoFastenersAreTwoRows() {
    List<String> both = new ArrayList<>(List.of(row(1, "tube clamp", "10", "10")));
    both.addAll(List.of(row(2, "foot adapter", "15", "9")));
    bench(both.toArray(String[]::new));
    assertThat(shown())
        .contains(
            "      fasteners secured to torque; fastener tube clamp; recommended 10 N m; set 10 N"
                + " m\n"
                + "      fasteners secured to torque; fastener foot adapter; recommended 15 N m;"
                + " set 9 N m\n",
            "Take care: foot adapter: secured to 9.0 N m");
    bench(row(1, "tube clamp", "10", "11"));
    assertThat(shown()).contains("Take care: foot adapter: secured to 9.0 N m");
    bench(row(1, " Foot  adapter", "15", "15"));
    assertThat(shown()).doesNotContain("Take care");
    assertThat(clinic.record("compare", "K7-right", "2", "4").out())
        .contains("tube clamp, set: 10 N m -> 11 N m", "Foot  adapter, set: 9 N m -> 15 N m");
  }

  @Test
  void theFastenerAndItsUnitAreAskedFor() {
    assertThat(
            bench(
                "items[1].item=fasteners secured to torque",
                "items[1].set=15",
                "items[1].unit=N m"))
        .isEqualTo(
            new Run(
                1,
                "",
                "K7-right: items[1].fastener is missing: name each fastener in its own row. Add it,"
                    + " for example items[1].fastener=\"foot adapter screw\".\n"));
    String[] degrees = row(1, "foot adapter", "15", "15");
    degrees[4] = "items[1].unit=deg";
    assertThat(bench(degrees).err())
        .isEqualTo("K7-right: items[1].unit: expected N m for a torque, found deg. Write N m.\n");
    assertThat(bench("items[1].item=foot rotation outward", "items[1].set=15").code()).isZero();
    assertThat(bench("items[1].item=pyramid", "items[1].set=15").err())
        .isEqualTo("command line: items[1].unit is missing. Add it: one of mm, deg, N m.\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"N m", "Nm", "N·m", "N.m"})
  void theUnitIsReadWithAndWithoutItsBlank(String unit) {
    String[] row = row(1, "foot adapter", "15", "15");
    row[4] = "items[1].unit=" + unit;
    assertThat(bench(row).code()).isZero();
    assertThat(shown()).contains("set 15 N m\n");
  }

  @Test
  void aTorqueWithoutARecommendationIsOpen() {
    bench(
        "items[1].item=fasteners secured to torque",
        "items[1].fastener=tube clamp",
        "items[1].set=10",
        "items[1].unit=Nm");
    assertThat(shown())
        .contains(
            "  tube clamp: no recommended torque is noted (entry 2). Take it from the maker's"
                + " instructions.\n");
  }

  private static String[] turned(String degrees, String... torques) {
    List<String> rows =
        new ArrayList<>(
            List.of(
                "items[1].item=foot rotation outward",
                "items[1].set=" + degrees,
                "items[1].unit=deg"));
    rows.addAll(Arrays.asList(torques));
    return rows.toArray(String[]::new);
  }

  /** One fastener that is secured says nothing of the others; a torque alone turns nothing. */
  @Test
  void afterAChangeEveryKnownFastenerThatWasNotNotedSinceIsNamed() {
    List<String> both = new ArrayList<>(List.of(row(1, "knee bolt", "10", "10")));
    both.addAll(List.of(row(2, "foot adapter", "15", "15")));
    bench(both.toArray(String[]::new));
    bench(turned("5", row(2, "foot adapter", "15", "15")));
    assertThat(shown())
        .contains(
            "Take care: Entry 3 changed the alignment. Since then no torque was noted for: knee"
                + " bolt. Check them before the wearer stands or walks.\n");
    bench(row(1, "knee bolt", "10", "10"));
    assertThat(shown()).doesNotContain("Take care");
    bench(turned("5"));
    assertThat(shown()).doesNotContain("Take care");
    bench(turned("6"));
    assertThat(shown())
        .contains(
            "Entry 6 changed the alignment. Since then no torque was noted for: knee bolt, foot"
                + " adapter.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"tube clamp", "tube clamp at knee", "Tube clamp at the knees"})
  void aNameNearlyThatOfAKnownFastenerIsAskedAbout(String typed) {
    bench(row(1, "tube clamp at the knee", "10", "10"));
    assertThat(bench(row(1, "foot adapter", "10", "10")).err()).isEmpty();
    assertThat(bench(row(1, "TUBE clamp at the  knee", "10", "10")).err()).isEmpty();
    assertThat(bench(row(1, typed, "5", "5")).err())
        .isEqualTo(
            ("bench-alignment: items[1].fastener: \"%s\" is not in the record; did you mean \"TUBE"
                    + " clamp at the  knee\"? Use the name in the record; if it is another fastener,"
                    + " say so and add: items[1].note=another fastener\n")
                .formatted(typed));
    List<String> other = new ArrayList<>(List.of(row(1, typed, "5", "5")));
    other.add("items[1].note=at the foot");
    assertThat(bench(other.toArray(String[]::new)).err()).isEmpty();
  }

  /** Both sides of the limits. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "foot forward of the reference line|40|mm|",
        "foot forward of the reference line|40.5|mm|items[1].set is 40.5 mm, outside -40.0 mm to"
            + " 40.0 mm: are number and unit right? Correct it; if it is right, say why and add:"
            + " items[1].why=why it is so",
        "foot forward of the reference line|151|mm|items[1].set: expected -150.0 mm to 150.0 mm,"
            + " found 151.0 mm. Check number and unit.",
        "foot forward of the reference line|6|deg|items[1].unit is given as deg, but this item is"
            + " set in mm: are item and unit right? Correct them; if they are right, say why and"
            + " add: items[1].why=why it is so",
        "socket flexion|25|deg|",
        "socket flexion|25.5|deg|items[1].set is 25.5°, outside -25.0° to 25.0°: are number and"
            + " unit right? Correct it; if it is right, say why and add: items[1].why=why it is so",
      })
  void aSettingBeyondLimitsOrInAnotherUnitIsAskedAbout(
      String item, String set, String unit, String said) {
    Run run = bench("items[1].item=" + item, "items[1].set=" + set, "items[1].unit=" + unit);
    assertThat(run.err().replace('\u00a0', ' ').replace('\u2212', '-'))
        .isEqualTo(said == null ? "" : "bench-alignment: " + said + "\n");
  }
}
