package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.usecase.Records;
import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the page of static alignment tells beside landmarks, stands and result. */
class StandAidsTest extends FittingWindow {
  private static final String SIT = "Let the wearer sit before the next stand.";

  private TypedStand stand;

  @BeforeEach
  void prepare() throws Exception {
    rememberPlate();
    stand = new TypedStand(window, base);
  }

  private String page() throws Exception {
    return window.page(base + TypedStand.STEP);
  }

  private void keep() throws Exception {
    String head = OpenWindow.head(page());
    assertThat(stand.typeAs(Map.of(), "action", "keep", "record-head", head).body())
        .contains("Kept as entry 2");
  }

  /**
   * The sample's barefoot stands take 18, 20 and 17 s; what is not counted was not stood for this.
   */
  @Test
  void theMinutesOfTodayAreThoseOfKeptAndOfCountedStands() throws Exception {
    stand.typeAs(Map.of(), "part", "live");
    for (String name : new String[] {"barefoot-1.csv", "barefoot-2.csv", "barefoot-3.csv"}) {
      stand.drop(name);
    }
    assertThat(page()).contains("Stood today: 0 min.");
    for (int i = 1; i <= 3; i++) {
      stand.typeAs(Map.of(), "action", "count-" + i);
    }
    assertThat(page()).contains("Stood today: 1 min.");
    keep();
    assertThat(page()).contains("Stood today: 1 min.");
    stand.drop("barefoot-1.csv");
    stand.drop("barefoot-2.csv");
    stand.typeAs(Map.of(), "action", "count-1");
    stand.typeAs(Map.of(), "action", "count-2");
    assertThat(page()).contains("Stood today: 2 min.");
  }

  /** Both sides of five minutes: 15 and 16 stands of nearly 20 s. */
  @Test
  void afterFiveMinutesTheWearerIsToSit() throws Exception {
    stand.typeAs(Map.of(), "part", "live");
    for (int i = 1; i <= 16; i++) {
      stand.drop("barefoot-2.csv");
    }
    for (int i = 1; i <= 15; i++) {
      stand.typeAs(Map.of(), "part", "live", "action", "count-" + i);
    }
    assertThat(page()).contains("Stood today: 5 min.").doesNotContain(SIT);
    stand.typeAs(Map.of(), "part", "live", "action", "count-16");
    assertThat(page()).contains(SIT);
  }

  @Test
  void askingWhatArrivedIsNoTyping() throws Exception {
    assertThat(stand.typeAs(Map.of(), "part", "poll").statusCode()).isEqualTo(200);
    assertThat(page()).doesNotContain("drafted-mark");
    stand.typeAs(Map.of(), "part", "live");
    assertThat(page()).contains("drafted-mark");
    stand.typeAs(Map.of("worn", "boots"), "part", "poll");
    assertThat(page()).contains("value=\"barefoot\"").doesNotContain("boots");
  }

  @Test
  void theNextStepIsToCountWhatArrivedThenToKeepTheState() throws Exception {
    stand.typeAs(Map.of(), "part", "live");
    assertThat(page()).contains("<span id=\"step\"></span>");
    stand.drop("barefoot-1.csv");
    assertThat(page())
        .contains(
            "<button form=\"stand\" name=\"action\" value=\"count-1\" class=\"strong\">Hands free,"
                + " feet in outlines: count stand 1 \u2192</button>");
    stand.typeAs(Map.of(), "action", "count-1");
    assertThat(page())
        .contains("<button form=\"stand\" name=\"action\" value=\"keep\" class=\"strong\">");
  }

  @Test
  void theNextStepKeepsTheStandsThatAreCounted() throws Exception {
    stand.drop("barefoot-1.csv");
    stand.upload("notes.csv", new byte[] {'a', ',', 'b', '\n', '1', ',', '2', '\n'});
    stand.typeAs(Map.of(), "action", "count-1");
    assertThat(page())
        .contains("Keep this state of one stand \u2192")
        .doesNotContain("Keep this state of 2 stands");
  }

  /** The second's is left as it was found: all of its 19.99 s. */
  @Test
  void eachStandHasAStretchOfItsOwn() throws Exception {
    stand.drop("barefoot-1.csv");
    stand.drop("barefoot-2.csv");
    Map<String, String> first = Map.of("from-s[1]", "2", "to-s[1]", "12");
    stand.typeAs(first, "action", "count-1");
    stand.typeAs(first, "action", "count-2");
    assertThat(page().replace('\u00a0', ' '))
        .contains(
            edge("2.0000", "1-from-s"),
            edge("12.0000", "1-to-s"),
            edge("0.0000", "2-from-s"),
            edge("19.9900", "2-to-s"),
            "Stand 1 (barefoot-1.csv): the part used was set by hand, from 2.00 s to 12.00 s.")
        .doesNotContain("Stand 2 (barefoot-2.csv): the part");
    stand.typeAs(Map.of("to-s[2]", "15"), "part", "live");
    assertThat(page().replace('\u00a0', ' '))
        .contains(
            edge("0.0000", "1-from-s"),
            edge("15.0000", "2-to-s"),
            "Stand 2 (barefoot-2.csv): the part used was set by hand, from 0.00 s to 15.00 s.")
        .doesNotContain("Stand 1 (barefoot-1.csv): the part");
  }

  private static String edge(String seconds, String edge) {
    return "aria-valuenow=\"%s\" aria-valuetext=\"%s s\" data-edge=\"%s\""
        .formatted(seconds, seconds.substring(0, seconds.length() - 2), edge);
  }

  @Test
  void theStretchOfARecordingThatIsRemovedIsNotHandedOn() throws Exception {
    stand.drop("barefoot-1.csv");
    stand.drop("barefoot-2.csv");
    stand.typeAs(Map.of("from-s[2]", "4"), "part", "live");
    assertThat(page()).contains("aria-valuenow=\"4.0000\"");
    stand.typeAs(Map.of("from-s[2]", "4"), "action", "remove-2");
    stand.drop("barefoot-3.csv");
    assertThat(page()).contains("barefoot-3.csv").doesNotContain("aria-valuenow=\"4.0000\"");
  }

  @Test
  void belowTheStripsIsABarToCompareThemWith() throws Exception {
    stand.typeAs(Map.of(), "part", "live");
    stand.drop("barefoot-1.csv");
    assertThat(page()).doesNotContain("50 mm in these drawings");
    stand.typeAs(Map.of(), "action", "count-1");
    assertThat(page())
        .contains("50 mm in these drawings", "Not at true size; the bar is 50 mm.", "/card");
  }

  @Test
  void withoutScriptARecordingIsTakenByItsPath() throws Exception {
    Path file = Path.of("sample-recordings/k7/barefoot-1.csv").toAbsolutePath();
    stand.typeAs(Map.of(), "action", "take", "file-path", file.toString());
    assertThat(page()).contains("1 \u00b7 barefoot-1.csv").doesNotContain("value=\"" + file);
    assertThat(stand.typeAs(Map.of(), "action", "take", "file-path", file + "x").body())
        .contains("expected a file, found nothing of that name.");
  }

  /** Two descriptions under one file name: both are offered, told apart by their exports. */
  @Test
  void twoPlatesOfOneNameAreToldApart() throws Exception {
    LocalFiles files = new LocalFiles();
    assertThat(page()).contains("<option value=\"plate.yaml\"");
    Path m4 = Path.of("sample-recordings/m4");
    Path renamed = Files.createDirectories(folder.resolve("m4")).resolve("plate.yaml");
    Files.copy(m4.resolve("plates.yaml"), renamed);
    RememberedPlates.remember(
        Records.in(folder.resolve("records"), Clock.system(ZoneId.systemDefault())),
        files.read(m4.resolve("shoe.txt")),
        files.read(renamed),
        false);
    assertThat(page())
        .doesNotContain("<option value=\"plate.yaml\"")
        .contains("<option value=\"\" selected>")
        .containsPattern("<option value=\"plate.yaml \\([^\"]+\\)\">");
    stand.typeAs(Map.of(), "part", "live");
    stand.drop("barefoot-1.csv");
    assertThat(page()).contains("Several plates are known under one name.");
    stand.typeAs(Map.of("known-plate", "plate.yaml"), "part", "live");
    assertThat(page()).contains("The plate plate.yaml is no longer known here.");
  }

  @Test
  void whatIsToBeReadyIsAskedInFullOnceADayThenOnlyWhatCanHaveChanged() throws Exception {
    assertThat(page())
        .contains("Ready to stand: 0 of 4", "ready-rails", "ready-helper", "ready-fasteners")
        .doesNotContain("ready-knee");
    stand.typeAs(Map.of("ready-rails", "yes"), "part", "live");
    assertThat(page()).contains("Ready to stand: 1 of 4");
    stand.drop("barefoot-1.csv");
    stand.typeAs(Map.of(), "action", "count-1");
    keep();
    assertThat(page())
        .contains("Ready to stand: 0 of 2", "ready-fasteners", "ready-feet")
        .doesNotContain("ready-rails");
  }
}
