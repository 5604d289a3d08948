package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What the inspect command shows to help with its questions, and that it says nothing twice. */
class InspectEvidenceTest extends Inspecting {

  /** A plot that would be filled from end to end says less than its ends. */
  @Test
  void aForceThatHardlyChangesIsToldByItsRange() throws IOException {
    for (int least : List.of(89, 90)) {
      StringBuilder text = new StringBuilder("Time (s),Fz,CoPx,CoPy\n");
      for (int i = 0; i < 30; i++) {
        text.append(i / 10.0).append(i == 7 ? "," + least : ",100").append(",0.01,0.02\n");
      }
      Files.writeString(folder.resolve("flat.csv"), text);
      List<String> lines = lines(Run.caryatid("inspect", file("flat.csv")));
      String range = "vertical force over time, in 30 equal parts: between 90.0 and 100.0";
      assertThat(lines.contains(range)).isEqualTo(least == 90);
      assertThat(lines.stream().anyMatch(line -> line.contains("####"))).isEqualTo(least == 89);
    }
  }

  /** A force that is missing in a row is not taken for none. */
  @Test
  void missingForcesNeitherEndAStretchNorLowerItsMean() throws IOException {
    StringBuilder text = new StringBuilder("Time (s),Fz (N),CoPx (mm),CoPy (mm)\n");
    for (int i = 0; i < 30; i++) {
      text.append(i / 10.0).append(i % 7 == 3 ? ",,," : ",800,1,2").append('\n');
    }
    Files.writeString(folder.resolve("patchy.csv"), text);
    assertThat(lines(Run.caryatid("inspect", file("patchy.csv"))))
        .contains(
            "plate 1: loaded in rows 1 to 30 (0.00 s to 2.90 s)",
            "mean force while loaded: the weight of 81.6 kg");
  }

  /** Each thing once: the unit of the times, a question about two plates in what is written. */
  @Test
  void nothingIsSaidTwice() throws IOException {
    StringBuilder text = new StringBuilder("No,Time,Fz1,CoPx1,CoPy1,Fz2,CoPx2,CoPy2\n");
    for (int i = 0; i < 30; i++) {
      text.append(i).append(',').append(i / 100.0).append(",400,1,2,390,3,4\n");
    }
    Files.writeString(folder.resolve("two.csv"), text);
    Run run = Run.caryatid("inspect", file("two.csv"), "--write", file("two.yaml"));
    assertThat(lines(run))
        .contains(
            "not needed: No (concluded: the rows have their times without it)",
            "times in column Time, in s (concluded: no other unit gives a force plate's rate)")
        .filteredOn(line -> line.contains("no other unit gives"))
        .hasSize(1);
    assertThat(Files.readString(folder.resolve("two.yaml")).lines())
        .filteredOn(line -> line.contains("the unit of force is stated nowhere"))
        .hasSize(1);
  }

  /** Moments in N m over a force in N move as a centre of pressure in m does. */
  @Test
  void momentsTellWhichUnitsBelongTogether() throws IOException {
    StringBuilder text = new StringBuilder("Time (s),Fz (N),Mx,My,CoPx,CoPy\n");
    for (int i = 0; i < 100; i++) {
      double right = 0.01 * Math.sin(i);
      double anterior = 0.02 * Math.cos(0.7 * i);
      text.append(
          String.format(
              Locale.ROOT,
              "%.2f,800,%.4f,%.4f,%.5f,%.5f%n",
              i / 100.0,
              800 * anterior,
              -800 * right,
              right,
              anterior));
    }
    Files.writeString(folder.resolve("moments.csv"), text);
    String evidence = " (concluded: it moves like moment divided by force)";
    assertThat(lines(Run.caryatid("inspect", file("moments.csv"))))
        .filteredOn(line -> line.endsWith(evidence))
        .containsExactlyInAnyOrder(
            "plate 1: with force in N and moments in N m, the centre of pressure is in m"
                + evidence,
            "plate 1: with force in N and moments in N mm, the centre of pressure is in mm"
                + evidence);
    Files.writeString(
        folder.resolve("moments.csv"), text.toString().replace("Mx,My", "Mx (N m),My (N m)"));
    assertThat(lines(Run.caryatid("inspect", file("moments.csv"))))
        .filteredOn(line -> line.endsWith(evidence))
        .hasSize(1);
  }
}
