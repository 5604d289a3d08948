package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wearer with two prostheses, and levels that are less usual. */
class BothLegsTest {
  @TempDir private Path folder;

  private Run record(String command, String... rest) {
    return new Clinic(folder.resolve("records")).record(command, "B2", rest);
  }

  private Run add(String... rest) {
    List<String> all = new ArrayList<>(Arrays.asList(rest));
    all.addAll(List.of("--by", "AB"));
    return record("add", all.toArray(String[]::new));
  }

  private void start() {
    Run run =
        record(
            "start",
            "--by",
            "AB",
            "wearer=B2",
            "side=both",
            "level=transtibial",
            "level-left=transfemoral",
            "body-mass-kg=95");
    assertThat(run.err()).isEmpty();
  }

  private String shown() {
    return record("show").out().replace('\u00a0', ' ');
  }

  private static String[] foot(String side, String name, String massKg) {
    return new String[] {
      "components",
      "components[1].what=foot",
      "components[1].side=" + side,
      "components[1].name=" + name,
      "components[1].body-mass-highest-kg=" + massKg
    };
  }

  @Test
  void aComponentOfOneSideNeverTakesThePlaceOfTheOthers() {
    start();
    add(foot("left", "spring foot", "90"));
    add(foot("right", "light foot", "80"));
    assertThat(shown())
        .contains(
            "Take care: spring foot, left: the body mass of 95.0 kg is above the 90.0 kg",
            "Take care: light foot, right: the body mass of 95.0 kg is above the 80.0 kg");
    add(foot("right", "strong foot", "120"));
    assertThat(shown()).contains("spring foot, left: the body mass").doesNotContain("light foot,");
  }

  @Test
  void aSettingOfOneSideNeverTakesThePlaceOfTheOthers() {
    start();
    String[] items = {"ankle plantarflexion", "ankle plantarflexion"};
    for (int i = 0; i < items.length; i++) {
      String side = i == 0 ? "left" : "right";
      add(
          "bench-alignment",
          "items[1].item=" + items[i],
          "items[1].side=" + side,
          "items[1].recommended=0",
          "items[1].set=" + (i + 2),
          "items[1].unit=deg");
    }
    assertThat(shown())
        .contains(
            "  ankle plantarflexion, left: not set as recommended, and no reason is noted (entry"
                + " 2).\n"
                + "  ankle plantarflexion, right: not set as recommended, and no reason is noted"
                + " (entry 3).\n");
  }

  @Test
  void theSideIsAskedForWhereThereAreTwo() {
    start();
    assertThat(add("components", "components[1].what=foot", "components[1].name=x").err())
        .isEqualTo(
            "B2: components[1].side is missing: this record covers both legs. Add it, for example"
                + " components[1].side=left.\n");
    assertThat(
            add("bench-alignment", "items[1].item=height", "items[1].set=900", "items[1].unit=mm")
                .err())
        .startsWith("B2: items[1].side is missing");
  }

  @Test
  void theOtherSideIsRefusedWhereThereIsOne() {
    record("start", "--by", "AB", "wearer=B2", "side=right", "level=transtibial");
    assertThat(add(foot("left", "x", "90")).err())
        .isEqualTo(
            "B2: components[1].side: found left, but this record is for: right. Check the side, or"
                + " choose the other record.\n");
    assertThat(add(foot("right", "x", "90")).code()).isZero();
    assertThat(add("components", "components[1].what=foot", "components[1].name=y").code())
        .isZero();
    assertThat(shown()).doesNotContain("above");
  }

  @Test
  void levelsOfSingleLegsAreForRecordsOfBoth() {
    Run run =
        record(
            "start",
            "--by",
            "AB",
            "wearer=B2",
            "side=right",
            "level=transtibial",
            "level-left=transfemoral");
    assertThat(run.err())
        .isEqualTo(
            "B2: level-left and level-right are for a record of both sides. Leave them out, or"
                + " correct the side.\n");
  }

  @Test
  void aStandIsOfTheLevelOfItsOwnLeg() throws IOException {
    start();
    Run run = check("right", "ankle disarticulation");
    assertThat(run.err())
        .isEqualTo(
            "B2: the sheet is for another prosthesis: B2, right, ankle disarticulation; this record"
                + " is for: B2, left transfemoral, right transtibial. Choose the record it belongs"
                + " to, or correct the sheet. Nothing was written.\n");
    assertThat(check("right", "transtibial").err()).isEmpty();
  }

  private Run check(String side, String level) throws IOException {
    Path sheet = folder.resolve("sheet.yaml");
    String text =
        Files.readString(Path.of("sample-recordings/story/stand-1.yaml"))
            .replaceFirst("(?m)^wearer: .*", "wearer: B2")
            .replaceFirst("(?m)^side: .*", "side: " + side)
            .replaceFirst("(?m)^level: .*", "level: " + level)
            .replaceFirst("(?m)^body-mass-kg: .*", "");
    Files.writeString(sheet, text);
    return Run.caryatid(
        "check",
        "sample-recordings/story/stand-1.csv",
        "--trial",
        sheet.toString(),
        "--plate",
        "sample-recordings/k7/plate.yaml",
        "--out",
        folder.resolve("out").toString(),
        "--replace",
        "--record",
        "B2",
        "--records",
        folder.resolve("records").toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "partial foot| Partial foot: the offsets from the wearer's own knee and ankle",
        "knee disarticulation| Knee disarticulation: all checks of a prosthetic knee apply",
        "hip disarticulation| Hip disarticulation: all checks of a prosthetic knee apply",
        "rotationplasty| Rotationplasty: the wearer's turned ankle moves the knee joint"
      })
  void whichChecksApplyIsSaidOfLessUsualLevels(String level, String said) {
    record("start", "--by", "AB", "wearer=B2", "side=right", "level=" + level);
    assertThat(shown()).contains(said);
  }

  @Test
  void nothingIsSaidOfTheUsualLevels() {
    record("start", "--by", "AB", "wearer=B2", "side=right", "level=transtibial");
    assertThat(shown().lines().skip(1))
        .startsWith("", "What is open", "  No open items.", "", "Timeline")
        .hasSize(9);
  }
}
