package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the check command says of a sheet or a description it cannot use: whole messages. */
class BadSheetTest {
  @TempDir private Path path;

  private Folder folder;

  @BeforeEach
  void prepare() throws IOException {
    folder = new Folder(path);
  }

  private void refused(String... complaints) {
    Run run = folder.check();
    assertThat(folder.complaint(run)).isEqualTo(String.join(System.lineSeparator(), complaints));
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(path.resolve("out")).doesNotExist();
  }

  @Test
  void anUnknownUnitInTheDescription() throws IOException {
    folder.description("cop: mm", "cop: furlong");
    refused(
        "plate.yaml line 11, column 28: `cop`: expected one of: mm, cm, m, inch; found"
            + " 'furlong'. Write one of these words.");
  }

  @Test
  void anUnknownKeyInTheSheet() throws IOException {
    folder.sheet("landmarks:", "landmark:");
    refused("sheet.yaml line 18, column 1: unknown key `landmark`; did you mean `landmarks`?");
  }

  @Test
  void aTargetForALandmarkThatIsNotThere() throws IOException {
    folder.sheet(
        "  - plane: sagittal\n    landmark: knee centre", "  - plane: sagittal\n    landmark: hip");
    refused(
        "sheet.yaml line 40, column 5: the target is for the landmark 'hip', right,"
            + " which is not in the sheet. Add it under `landmarks`, or correct the name.");
  }

  @Test
  void aTargetWithoutItsSource() throws IOException {
    folder.sheet("    source: Invented instructions for the demo foot, section 4\n", "");
    refused(
        "sheet.yaml line 40, column 5: the target has no source. Add `source: ` with"
            + " the document and section the recommendation comes from.");
  }

  @Test
  void aFootThatBearsMoreThanTheWholeBody() throws IOException {
    folder.sheet("body-mass-kg: 83", "body-mass-kg: 30");
    refused(
        "stand.csv: the right foot alone bears 127.0 % of the body's weight, which is impossible."
            + " Check that the other foot was not on the same plate, the body mass in the sheet,"
            + " and the unit of force.");
  }

  @Test
  void aNumberThatIsNone() throws IOException {
    folder.sheet("up-mm: 101", "up-mm: .nan");
    refused(
        "sheet.yaml line 24, column 12: `up-mm`: expected a number such as 12 or -3.5, found"
            + " '.nan'. Write digits with a decimal point, without quotes and without a unit.");
  }

  @Test
  void aHandThatHolds() throws IOException {
    folder.sheet("hands: free", "hands: holding");
    refused(
        "sheet.yaml: no result: a hand holds on, and the plate does not show what it bears. If the"
            + " wearer needs the support, keep it: align by the instructions and by walking, and"
            + " note it with `record add CODE walking`. If a light touch is enough, record again"
            + " with hands: touching, between the rails and with help at hand.");
  }

  @Test
  void aSheetThatMeasuresFromLinesWithoutADescriptionOfThem() {
    Run run =
        Run.caryatid(
            "check", folder.file("stand.csv"), "--trial", folder.file("sheet.yaml"), "--json");
    assertThat(folder.complaint(run))
        .isEqualTo(
            "sheet.yaml: landmarks are measured from lines on the plate (rear edge, midline), but"
                + " there is no plate description to say where these lie. Add --plate"
                + " DESCRIPTION.");
    assertThat(run.code()).isEqualTo(1);
  }
}
