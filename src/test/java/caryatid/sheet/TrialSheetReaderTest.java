package caryatid.sheet;

import static caryatid.sheet.Sheets.replaced;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.OffTargetHints;
import caryatid.loadline.Target;
import caryatid.loadline.Target.MeantFor;
import caryatid.remark.BadInput;
import caryatid.sheet.LandmarkEntry.MeasuredDistance;
import caryatid.sheet.OtherFoot.Ground;
import caryatid.standing.Stance.BothFeetOnOnePlate;
import caryatid.standing.Stance.PlatePerFoot;
import caryatid.standing.Stance.ProstheticFootOnPlate;
import java.time.OffsetDateTime;
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
                Optional.of(new MeasuredDistance(340, Optional.empty(), false, 3)),
                Optional.empty(),
                492,
                Optional.empty()));
    assertThat(sheet.targets())
        .containsExactly(
            new Target(
                new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "knee centre"),
                15,
                10,
                10,
                "Instructions, section 5",
                MeantFor.FOOT,
                Optional.empty(),
                Optional.empty()));
  }

  @Test
  void aTargetSaysWhatItsDocumentRecommendsToLookAt() throws BadInput {
    TrialSheet sheet =
        Sheets.sheet(
            Sheets.SHEET
                + "    too-far-anterior: the socket's flexion\n    too-far-posterior: heel\n");
    assertThat(sheet.targets().get(0).lookAt())
        .contains(
            new OffTargetHints(
                Optional.of("the socket's flexion"),
                Optional.of("heel"),
                Optional.empty(),
                Optional.empty()));
  }

  @Test
  void theLateralPatellarBorderHasTwoNamesInASheet() throws BadInput {
    for (String name : new String[] {"lateral patellar border", "outer patellar border"}) {
      TrialSheet sheet = Sheets.sheet(Sheets.SHEET.replace("knee centre", name));
      assertThat(sheet.landmarks().get(0).kind()).isEqualTo(LandmarkKind.OUTER_PATELLAR_BORDER);
    }
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
}
