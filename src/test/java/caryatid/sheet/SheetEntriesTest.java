package caryatid.sheet;

import static caryatid.sheet.Sheets.replaced;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.Target;
import caryatid.loadline.Target.MeantFor;
import caryatid.remark.BadInput;
import caryatid.sheet.LandmarkEntry.MeasuredDistance;
import caryatid.standing.NamedStretch;
import caryatid.standing.Stretch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Landmarks and targets of a good trial sheet. */
class SheetEntriesTest {
  @Test
  void aLandmarkMayBeMeasuredFromLinesAndFromAnother() throws BadInput {
    String landmarks =
        """
        landmarks:
          - name: ankle axis
            forward-mm: 90
            forward-from: heel line
            rightward-mm: -12.5
            rightward-from: midline
            up-mm: 82
            marking-mm: 2
            is: outer ankle
          - name: tube top
            kind: other
            forward-of-landmark-mm: 22
            rightward-of-landmark-mm: -3
            landmark: ankle axis
            up-mm: 300
            marking-mm: 4
        """;
    TrialSheet sheet = Sheets.sheet(replaced("landmarks:\n", landmarks));
    assertThat(sheet.landmarks().subList(0, 2))
        .containsExactly(
            new LandmarkEntry(
                "ankle axis",
                LandmarkKind.ANKLE_AXIS,
                Side.RIGHT,
                Optional.of(new MeasuredDistance(90, Optional.of("heel line"), false, 2)),
                Optional.of(new MeasuredDistance(-12.5, Optional.of("midline"), false, 2)),
                82,
                Optional.of("outer ankle")),
            new LandmarkEntry(
                "tube top",
                LandmarkKind.OTHER,
                Side.RIGHT,
                Optional.of(new MeasuredDistance(22, Optional.of("ankle axis"), true, 4)),
                Optional.of(new MeasuredDistance(-3, Optional.of("ankle axis"), true, 4)),
                300,
                Optional.empty()));
  }

  @Test
  void aLandmarkSaysWhenItWasReadOnceOrSeveralTimes() throws BadInput {
    String up = "    up-mm: 492\n";
    assertThat(readAtS(Sheets.SHEET)).isEmpty();
    assertThat(readAtS(replaced(up, up + "    read-at-s: 0\n"))).containsExactly(0.0);
    assertThat(readAtS(replaced(up, up + "    read-at-s: 3600\n"))).containsExactly(3600.0);
    assertThat(readAtS(replaced(up, up + "    read-at-s: [4, 12.5]\n"))).containsExactly(4.0, 12.5);
  }

  private static List<Double> readAtS(String sheet) throws BadInput {
    return Sheets.sheet(sheet).landmarks().get(0).readAtS();
  }

  @Test
  void aStretchMayBeOpenAtOneEnd() throws BadInput {
    String set = "stretches:\n  - {recording: a.csv, from-s: 3.5}\n";
    assertThat(Sheets.sheet(Sheets.SHEET + set).stretches())
        .containsExactly(new NamedStretch("a.csv", new Stretch(3.5, Double.POSITIVE_INFINITY)));
    assertThat(Sheets.sheet(Sheets.SHEET).stretches()).isEmpty();
  }

  @Test
  void aTargetSaysWhatItIsMeantAndValidFor() throws BadInput {
    Target target =
        Sheets.sheet(Sheets.SHEET + "    meant-for: whole body\n    valid-for: barefoot\n")
            .targets()
            .get(0);
    assertThat(target.line()).isEqualTo(MeantFor.WHOLE_BODY);
    assertThat(target.condition()).contains("barefoot");
  }

  @Test
  void withTwoProsthesesEachEntryHasItsSide() throws BadInput {
    String both =
        replaced("side: right", "side: both")
            .replace("kind: prosthetic foot on plate", "kind: both feet on one plate")
            .replace("other-foot: {on: block, height-difference-mm: 0}\n", "")
            .replace("  - name: knee centre\n", "  - name: knee centre\n    side: left\n")
            .replace("  - plane: sagittal\n", "  - plane: sagittal\n    side: left\n");
    TrialSheet sheet = Sheets.sheet(both);
    assertThat(sheet.landmarks().get(0).side()).isEqualTo(Side.LEFT);
    assertThat(sheet.targets().get(0).side()).isEqualTo(Side.LEFT);
  }

  @Test
  void theProstheticSideMayBeSaidOnceMore() throws BadInput {
    String left = replaced("side: right", "side: left");
    TrialSheet sheet =
        Sheets.sheet(
            left.replace("- name: knee centre\n", "- name: knee centre\n    side: left\n"));
    assertThat(sheet.landmarks()).extracting(LandmarkEntry::side).isEqualTo(List.of(Side.LEFT));
  }
}
