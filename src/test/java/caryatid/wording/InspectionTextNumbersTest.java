package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.Channel;
import caryatid.recording.model.ColumnView;
import caryatid.recording.model.ColumnView.ByName;
import caryatid.recording.model.ColumnView.ByNumbers;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.Inspection.Loaded;
import caryatid.recording.model.Inspection.PlateView;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.TimeBase;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of an export's plates and columns, no two numbers alike, worked out by hand. */
class InspectionTextNumbersTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  private static List<String> said(OptionalDouble rateHz, PlateView... plates) {
    Inspection inspection =
        new Inspection(
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(plates),
            rateHz,
            nothing(),
            Optional.empty());
    return InspectionText.lines(inspection, true, ENGLISH).stream()
        .map(line -> line.replace('\u00a0', ' '))
        .toList();
  }

  private static PlateDescription nothing() {
    return new PlateDescription(
        "plate",
        ExportLayout.UNSTATED,
        TimeBase.UNSTATED,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        Optional.empty(),
        false);
  }

  private static PlateView plate(
      String name, Optional<ForceUnit> unit, double kg, List<Loaded> loaded, Double... vertical) {
    return new PlateView(name, List.of(vertical), unit, loaded, OptionalDouble.of(kg));
  }

  /** 80 kg weigh 784.5 N. A fifth of it is 16; a column is as high as the fifths it holds. */
  @Test
  void aPlateIsToldByItsRowsTimesMassAndForces() {
    List<Loaded> once = List.of(new Loaded(41, 141));
    assertThat(
            said(
                OptionalDouble.of(20),
                plate("a", Optional.of(ForceUnit.KG), 70.5, once, 0.0, 16.0, 40.0, 80.0)))
        .startsWith(
            "",
            "a: loaded in rows 41 to 141 (2.00 s to 7.00 s)",
            "mean force while loaded: the weight of 70.5 kg",
            "vertical force over time, up to 785 N:",
            "     #",
            "     #",
            "    ##",
            "    ##",
            "   ###",
            "  ----",
            "",
            "The file can be used with this description.");
  }

  @Test
  void aForceThatHardlyChangesIsToldByItsLeastAndMost() {
    List<Loaded> once = List.of(new Loaded(1, 9));
    assertThat(
            said(
                OptionalDouble.empty(),
                plate("b", Optional.of(ForceUnit.N), 20.1, once, 540.0, 486.0, 501.0)))
        .contains(
            "b: loaded in rows 1 to 9",
            "vertical force over time, in 3 equal parts: between 486 N and 540 N");
    assertThat(said(OptionalDouble.empty(), plate("b", Optional.empty(), 20.1, once, 540.4, 485.0)))
        .contains("vertical force over time, up to 540.4:");
  }

  @Test
  void platesThatCarrySomebodyTogetherAreAdded() {
    List<Loaded> once = List.of(new Loaded(1, 9));
    PlateView a = plate("a", Optional.of(ForceUnit.N), 50.3, once, 1.0);
    PlateView b = plate("b", Optional.of(ForceUnit.N), 20.1, once, 1.0);
    PlateView unknown =
        new PlateView("c", List.of(1.0), Optional.empty(), once, OptionalDouble.empty());
    String together = "all plates together: the weight of 70.4 kg";
    assertThat(said(OptionalDouble.empty(), a, b)).contains(together);
    assertThat(said(OptionalDouble.empty(), a)).noneMatch(line -> line.startsWith("all plates"));
    assertThat(said(OptionalDouble.empty(), a, b, unknown))
        .noneMatch(line -> line.startsWith("all plates"));
  }

  @Test
  void sixStretchesAreListedAndMoreAreOnlyHintedAt() {
    assertThat(loaded(6))
        .isEqualTo(
            "p: loaded in rows 11 to 13, in rows 21 to 23, in rows 31 to 33, in rows 41 to 43, in"
                + " rows 51 to 53, in rows 61 to 63");
    assertThat(loaded(7)).isEqualTo(loaded(6) + ", ...");
    assertThat(loaded(0)).isEqualTo("p: never loaded");
  }

  private static String loaded(int times) {
    List<Loaded> stretches =
        IntStream.rangeClosed(1, times).mapToObj(i -> new Loaded(10 * i + 1, 10 * i + 3)).toList();
    return said(OptionalDouble.empty(), plate("p", Optional.empty(), 1, stretches, 0.0)).get(1);
  }

  @Test
  void aPlateWithoutForceHasNoPicture() {
    assertThat(said(OptionalDouble.empty(), plate("p", Optional.empty(), 2, List.of(), 0.0, -1.0)))
        .noneMatch(line -> line.startsWith("vertical force"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Fz | CHANNEL | FORCE_Z | WEIGHT_N | 4  Fz  [1.5 2.5]  force-z, by its name; about 707 and"
            + " nearly constant: probably vertical force, N",
        "Fz | CHANNEL | FORCE_Z | WEIGHT_KG | 4  Fz  [1.5 2.5]  force-z, by its name; about 707 and"
            + " nearly constant: unknown, perhaps vertical force, kg",
        "Fz | CHANNEL | FORCE_Z | UNKNOWN | 4  Fz  [1.5 2.5]  force-z, by its name",
        "COPx | CHANNEL | COP_X | WEIGHT_N | 4  COPx  [1.5 2.5]  cop-x, by its name",
        "t | TIME | | WEIGHT_N | 4  t  [1.5 2.5]  time, by its name",
        "'' | NOTHING | | UNKNOWN | 4  -  [1.5 2.5]  mostly between 698 and 715: unknown"
      })
  void aColumnIsToldByItsNameOrItsNumbers(
      String name, ByName byName, Channel channel, ByNumbers byNumbers, String line) {
    ColumnView column =
        new ColumnView(
            4,
            name,
            List.of("1.5", "2.5"),
            byName,
            Optional.ofNullable(channel),
            byNumbers,
            698.4,
            715.0);
    assertThat(ColumnText.lines(List.of(column), ENGLISH))
        .hasSize(3)
        .endsWith(line)
        .contains("The 1 columns of the file, each with its first values and what it probably is:");
  }

  @Test
  void aHundredColumnsAreListedAndNoMore() {
    ColumnView column =
        new ColumnView(
            1, "x", List.of("a"), ByName.NOTHING, Optional.empty(), ByNumbers.TEXT, 0, 0);
    assertThat(ColumnText.lines(Collections.nCopies(100, column), ENGLISH)).hasSize(102);
    assertThat(ColumnText.lines(Collections.nCopies(101, column), ENGLISH)).hasSize(102);
    assertThat(ColumnText.lines(List.of(), ENGLISH)).isEmpty();
  }

  @Test
  void columnsWithoutRowsOfTextAreNotListed() {
    ColumnView column =
        new ColumnView(
            1, "Fx 1", List.of(), ByName.CHANNEL, Optional.empty(), ByNumbers.TEXT, 0, 0);
    assertThat(ColumnText.lines(List.of(column), ENGLISH))
        .containsExactly(
            "Replace each unknown; the question above it says how. While one is left, the"
                + " description is refused. Delete what your plate does not export.");
  }
}
