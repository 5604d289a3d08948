package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the clinic measured of its own hands counts where a sheet states nothing. */
class MeasuredHandsTest {
  private static final Path K7 = Path.of("sample-recordings/k7");

  @TempDir private Path folder;

  private Path hand;
  private Path turn;
  private Path sheet;

  @BeforeEach
  void write() throws IOException {
    hand = folder.resolve("hand.yaml");
    Files.writeString(
        hand,
        """
        hand-repeatability: 1
        at: 2026-11-28T09:00+01:00
        by: AB
        landmarks:
          - {name: ankle axis forward, mm: [92, 94, 91, 95, 93]}
          - {name: knee centre forward, mm: [300, 306, 303]}
        """);
    turn = folder.resolve("turn.yaml");
    Files.writeString(
        turn,
        """
        feet-turn: 1
        at: 2026-11-28T09:00+01:00
        by: AB
        between-heels-mm: 100
        placements:
          - {left-mm: 20, right-mm: 25}
          - {left-mm: 20, right-mm: 15}
          - {left-mm: 20, right-mm: 25}
          - {left-mm: 20, right-mm: 15}
          - {left-mm: 20, right-mm: 20}
        """);
    sheet = folder.resolve("sheet.yaml");
    String stated = Files.readString(K7.resolve("barefoot.yaml"));
    Files.writeString(sheet, stated.replaceAll("(?m)^ *marking-mm: [0-9.]+\\n", ""));
  }

  private Run clinic(String command, Path... files) {
    String[] arguments = new String[files.length + 4];
    arguments[0] = "clinic";
    arguments[1] = command;
    for (int i = 0; i < files.length; i++) {
      arguments[i + 2] = files[i].toString();
    }
    arguments[files.length + 2] = "--records";
    arguments[files.length + 3] = folder.resolve("records").toString();
    return Run.caryatid(arguments);
  }

  private Run check() {
    return Run.caryatid(
        "check",
        K7.resolve("barefoot-1.csv").toString(),
        "--trial",
        sheet.toString(),
        "--plate",
        K7.resolve("plate.yaml").toString(),
        "--json",
        "--records",
        folder.resolve("records").toString());
  }

  /** The numbers are those of the unit tests: root(28 / 6) = 2.1602 mm; 2.5602 degrees. */
  @Test
  void aHandAndATurnAreRememberedAndShown() {
    String ofHand =
        "Hand of AB: a mark has a standard uncertainty of 2.2\u00a0mm with 6 degrees of freedom"
            + " (2026-11-28).\n";
    String ofTurn =
        "Turn of the feet, placed by AB: standard uncertainty 2.6° with 5 degrees of freedom"
            + " (2026-11-28).\n";
    assertThat(clinic("hand", hand).out()).isEqualTo(ofHand);
    assertThat(clinic("turn", turn).out()).isEqualTo(ofTurn);
    assertThat(clinic("show").out()).isEqualTo(ofHand + ofTurn);
  }

  @Test
  void aSheetWithoutMarkingNeedsAHandThatWasMeasured() {
    assertThat(check().code()).isEqualTo(1);
    clinic("hand", hand);
    Run run = check();
    assertThat(run.err())
        .isEqualTo(
            "Where the sheet gives no uncertainty of marking or turn, the values that the clinic"
                + " measured are used.\n");
    assertThat(run.out())
        .contains("\"marking-mm\" : 2.1602")
        .contains("\"marking-degrees-of-freedom\" : 6")
        .contains("\"yaw-degrees-of-freedom\" : 8");
  }

  @Test
  void aTurnThatWasMeasuredTakesThePlaceOfTheAssumedOne() {
    clinic("hand", hand);
    clinic("turn", turn);
    assertThat(check().out())
        .contains("\"yaw-rad\" : 0.0446")
        .contains("\"yaw-degrees-of-freedom\" : 5");
  }

  @Test
  void whatASheetStatesItselfStays() throws IOException {
    clinic("hand", hand);
    Files.copy(
        K7.resolve("barefoot.yaml"), sheet, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    assertThat(check().out())
        .contains("\"marking-degrees-of-freedom\" : 8")
        .doesNotContain("\"marking-degrees-of-freedom\" : 6");
  }
}
