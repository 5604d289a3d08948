package caryatid.sheet;

import static caryatid.sheet.Sheets.replaced;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.Target;
import caryatid.loadline.Target.MeantFor;
import caryatid.remark.BadInput;
import caryatid.sheet.LandmarkEntry.Measured;
import caryatid.sheet.OtherFoot.Ground;
import caryatid.standing.Stance.BothFeetOnOnePlate;
import caryatid.standing.Stance.PlatePerFoot;
import caryatid.standing.Stance.ProstheticFootOnPlate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a good trial sheet gives. */
class TrialSheetReaderTest {

  @Test
  void aSheetIsReadAsItStands() throws BadInput {
    TrialSheet sheet = Sheets.sheet(Sheets.SHEET);
    assertThat(sheet.wearer()).isEqualTo("K7");
    assertThat(sheet.at()).isEqualTo(OffsetDateTime.parse("2026-03-04T10:15:00+01:00"));
    assertThat(sheet.side()).isEqualTo(ProstheticSide.RIGHT);
    assertThat(sheet.level()).isEqualTo(AmputationLevel.TRANSTIBIAL);
    assertThat(sheet.stance()).isEqualTo(new ProstheticFootOnPlate(Optional.empty()));
    assertThat(sheet.otherFoot()).contains(new OtherFoot(Ground.BLOCK, 0));
    assertThat(sheet.hands()).isEqualTo(Hands.FREE);
    assertThat(sheet.knee()).isEmpty();
    assertThat(sheet.footwear()).isEqualTo(new Footwear("barefoot", 0));
    assertThat(sheet.landmarks())
        .containsExactly(
            new LandmarkEntry(
                "knee centre",
                LandmarkKind.KNEE_CENTRE,
                Side.RIGHT,
                Optional.of(new Measured(340, Optional.empty(), false, 3)),
                Optional.empty(),
                492,
                Optional.empty()));
    assertThat(sheet.targets())
        .containsExactly(
            new Target(
                Plane.SAGITTAL,
                Side.RIGHT,
                "knee centre",
                15,
                10,
                10,
                "Instructions, section 5",
                MeantFor.FOOT,
                Optional.empty()));
  }

  @Test
  void whatMayBeLeftOutIsEmpty() throws BadInput {
    TrialSheet sheet = Sheets.sheet(Sheets.SHEET);
    assertThat(sheet.bodyMassKg()).isEmpty();
    assertThat(sheet.stanceWidthMm()).isEmpty();
    assertThat(sheet.toeOutRad()).isEmpty();
    assertThat(sheet.minutesWalked()).isEmpty();
    assertThat(sheet.components()).isEmpty();
    assertThat(sheet.notes().comfort()).isEmpty();
  }

  /** Validation of the angle: 180 degrees are pi, by definition. */
  @Test
  void whatIsThereIsRead() throws BadInput {
    TrialSheet sheet =
        Sheets.sheet(
            Sheets.SHEET
                + """
                body-mass-kg: 82.5
                stance-width-mm: 160
                toe-out-deg: 6
                minutes-walked: 5
                components:
                  - {what: foot, name: stiff foot, serial: 0012}
                  - {what: liner, name: soft liner}
                notes:
                  last-change: |
                    Foot moved
                    forward.
                  conclusion: a
                  comfort: b
                  skin: c
                  reason: d
                  next-step: e
                  practitioner: AB
                  role: prosthetist
                """);
    assertThat(sheet.bodyMassKg()).hasValue(82.5);
    assertThat(sheet.stanceWidthMm()).hasValue(160);
    assertThat(sheet.toeOutRad().getAsDouble()).isCloseTo(0.10471975511966, within(1e-14));
    assertThat(sheet.minutesWalked()).hasValue(5);
    assertThat(sheet.components())
        .containsExactly(
            new Component("foot", "stiff foot", Optional.of("0012")),
            new Component("liner", "soft liner", Optional.empty()));
    assertThat(sheet.notes())
        .isEqualTo(
            new Notes(
                Optional.of("Foot moved\nforward."),
                Optional.of("a"),
                Optional.of("b"),
                Optional.of("c"),
                Optional.of("d"),
                Optional.of("e"),
                Optional.of("AB"),
                Optional.of("prosthetist")));
  }

  @Test
  void theStanceNamesItsPlates() throws BadInput {
    String one = replaced("on plate}", "on plate, plate: plate 2}");
    assertThat(Sheets.sheet(one).stance())
        .isEqualTo(new ProstheticFootOnPlate(Optional.of("plate 2")));
    String otherFoot = "other-foot: {on: block, height-difference-mm: 0}\n";
    String two =
        replaced(
            "{kind: prosthetic foot on plate}", "{kind: one plate per foot, left: a, right: b}");
    assertThat(Sheets.sheet(two.replace(otherFoot, "")).stance())
        .isEqualTo(new PlatePerFoot("a", "b"));
    String both =
        replaced("{kind: prosthetic foot on plate}", "{kind: both feet on one plate, plate: a}");
    assertThat(Sheets.sheet(both.replace(otherFoot, "")).stance())
        .isEqualTo(new BothFeetOnOnePlate(Optional.of("a")));
  }

  @Test
  void aProstheticKneeHasItsSetting() throws BadInput {
    String sheet = replaced("transtibial", "transfemoral");
    assertThat(Sheets.sheet(sheet + "knee: {locked: no, mode: standing}\n").knee())
        .contains(new KneeSetting(false, Optional.of("standing")));
    assertThat(Sheets.sheet(sheet + "knee: {locked: yes}\n").knee())
        .contains(new KneeSetting(true, Optional.empty()));
  }

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
                Optional.of(new Measured(90, Optional.of("heel line"), false, 2)),
                Optional.of(new Measured(-12.5, Optional.of("midline"), false, 2)),
                82,
                Optional.of("outer ankle")),
            new LandmarkEntry(
                "tube top",
                LandmarkKind.OTHER,
                Side.RIGHT,
                Optional.of(new Measured(22, Optional.of("ankle axis"), true, 4)),
                Optional.of(new Measured(-3, Optional.of("ankle axis"), true, 4)),
                300,
                Optional.empty()));
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
