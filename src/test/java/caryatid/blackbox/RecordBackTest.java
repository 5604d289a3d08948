package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The way back to the last good setting, and what is new since a visit. */
class RecordBackTest {
  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic(folder);
    add("start", "--at", "2026-03-04T09:00+01:00", "wearer=K7", "side=right", "level=transtibial");
  }

  private void add(String command, String... said) {
    List<String> all = new ArrayList<>(List.of("--by", "AB"));
    all.addAll(Arrays.asList(said));
    Run run = clinic.record(command, "K7-right", all.toArray(String[]::new));
    assertThat(run.err()).isEmpty();
  }

  private void bench(String at, String ankle) {
    add(
        "add",
        "bench-alignment",
        "--at",
        at,
        "items[1].item=ankle plantarflexion",
        "items[1].set=" + ankle,
        "items[1].unit=deg",
        "items[2].item=fasteners secured to torque",
        "items[2].fastener=foot adapter",
        "items[2].recommended=15",
        "items[2].set=15.5",
        "items[2].unit=Nm",
        "items[2].why=wrench");
  }

  private void stand(String at, String offset) {
    stand(at, "boot", offset);
  }

  private void barefoot(String at, String offset) {
    stand(at, "barefoot", offset);
  }

  private void stand(String at, String footwear, String offset) {
    add(
        "add",
        "stand",
        "--at",
        at,
        "footwear=" + footwear,
        "findings[1].plane=sagittal",
        "findings[1].side=right",
        "findings[1].landmark=knee centre",
        "findings[1].offset-mm=" + offset,
        "findings[1].expanded-mm=4",
        "findings[1].recommended-mm=20",
        "findings[1].below-mm=15",
        "findings[1].above-mm=15",
        "findings[1].source=invented");
  }

  private Run back() {
    return clinic.record("back", "K7-right");
  }

  @Test
  void whatToTurnIsSaid() {
    bench("2026-03-04T10:00+01:00", "3");
    stand("2026-03-04T10:10+01:00", "20");
    bench("2026-03-04T10:20+01:00", "5.5");
    add(
        "add",
        "bench-alignment",
        "--at",
        "2026-03-04T10:25+01:00",
        "items[1].item=foot forward of the reference line",
        "items[1].set=4",
        "items[1].unit=mm");
    stand("2026-03-04T10:30+01:00", "60");
    assertThat(back())
        .isEqualTo(
            new Run(
                0,
                """
                The last good stand is entry 3 (2026-03-04 10:10 +01:00, boot): every tolerance was \
                met.
                  ankle plantarflexion: from 5.5 deg to 3 deg (−2.5 deg)
                  foot forward of the reference line: 4 mm now; the record does not say what it was \
                then
                  fasteners secured to torque, foot adapter: secure to 15 N m
                Change nothing under load. Secure all fasteners, note the change with `record add`, \
                and let the wearer stand again between rails or with help at hand.
                """,
                ""));
  }

  /** What was accepted as it is may be the very thing to get away from. */
  @Test
  void aStandThatWasAcceptedIsNotGoodByThat() {
    bench("2026-03-04T10:00+01:00", "3");
    stand("2026-03-04T10:10+01:00", "60");
    add("add", "accepted", "what=knee", "why=walks well", "stand=3");
    assertThat(back().out())
        .isEqualTo("K7-right: no stand in this footwear met every tolerance: boot.\n");
  }

  @Test
  void onlyAStandInTheSameFootwearIsGoodForIt() {
    bench("2026-03-04T10:00+01:00", "3");
    stand("2026-03-04T10:10+01:00", "20");
    own("2026-03-04T10:15+01:00", "0");
    barefoot("2026-03-04T10:20+01:00", "60");
    String other =
        "Good in other footwear, whose settings do not fit this one: entry 3 (2026-03-04 10:10"
            + " +01:00, boot).\n";
    assertThat(back().out())
        .isEqualTo("K7-right: no stand in this footwear met every tolerance: barefoot.\n" + other);
    assertThat(clinic.record("back", "K7-right", "--footwear", "Boot").out())
        .startsWith("The last good stand is entry 3 (2026-03-04 10:10 +01:00, boot)");
    barefoot("2026-03-04T10:30+01:00", "20");
    own("2026-03-04T10:40+01:00", "6");
    assertThat(back().out())
        .isEqualTo(
            """
            The alignment was changed (entry 7) after the last stand (entry 6). Let the wearer \
            stand again before relying on these numbers.
            The last good stand is entry 6 (2026-03-04 10:30 +01:00, barefoot): every tolerance \
            was met.
            According to the record, nothing is set differently now.
              The ankle is set for a heel of 6 mm; then it was 0 mm. Do not turn this back: set it \
            for the shoe that is worn.
              fasteners secured to torque, foot adapter: secure to 15 N m
            Change nothing under load. Secure all fasteners, note the change with `record add`, \
            and let the wearer stand again between rails or with help at hand.
            """
                + other);
    assertThat(clinic.record("show", "K7-right").out())
        .contains("Take care: The alignment was changed (entry 7) after the last stand (entry 6).");
  }

  private void own(String at, String heel) {
    add(
        "add",
        "own-setting",
        "--at",
        at,
        "what=ankle",
        "attempts=1",
        "succeeded=1",
        "heel-height-set-mm=" + heel);
  }

  @Test
  void whatIsNewSinceTheLastVisitIsSaid() {
    bench("2026-03-04T10:00+01:00", "3");
    assertThat(clinic.record("since", "K7-right").out())
        .isEqualTo("K7-right: this is the first visit.\n");
    bench("2026-03-18T10:00+01:00", "4");
    add("add", "walking", "--at", "2026-03-18T11:00+01:00", "skin=blister");
    String since =
        """
        Since 2026-03-04 (entry 2): 2 entries
          3  2026-03-18 10:00 +01:00  AB  bench alignment
          4  2026-03-18 11:00 +01:00  AB  dynamic alignment
        From entry 2 to entry 4
        bench alignment, ankle plantarflexion, set: 3 deg -> 4 deg
        dynamic alignment, skin: nothing -> blister
        What is open
          Skin, as last noted (entry 4): blister
        """;
    assertThat(clinic.record("since", "K7-right").out()).isEqualTo(since);
    assertThat(clinic.record("since", "K7-right", "--day", "2026-03-04").out()).isEqualTo(since);
    assertThat(clinic.record("since", "K7-right", "--day", "2026-03-18").out())
        .isEqualTo("K7-right: nothing was added after 2026-03-18.\n");
    assertThat(clinic.record("since", "K7-right", "--day", "2026-03-03").out())
        .isEqualTo("K7-right: nothing was added up to 2026-03-03.\n");
    assertThat(clinic.record("since", "K7-right", "--day", "2026-03-10").out())
        .isEqualTo(
            "There was no visit on 2026-03-10; the last one before it was on 2026-03-04.\n"
                + since);
  }

  @Test
  void wordsAreSaidAndStandsAreComparedInTheSameFootwear() {
    barefoot("2026-03-04T10:10+01:00", "18");
    stand("2026-03-04T10:20+01:00", "22");
    add("add", "note", "--at", "2026-03-18T09:00+01:00", "text=fell on the stairs");
    own("2026-03-18T09:10+01:00", "0");
    barefoot("2026-03-18T09:20+01:00", "60");
    stand("2026-03-18T09:30+01:00", "sandal", "20");
    assertThat(clinic.record("since", "K7-right").out())
        .isEqualTo(
            """
            Since 2026-03-04 (entry 3): 4 entries
              4  2026-03-18 09:00 +01:00  AB  note
                  text: fell on the stairs
              5  2026-03-18 09:10 +01:00  AB  wearer's own setting
                  what: ankle
                  attempts: 1
                  succeeded: 1
                  heel height set: 0 mm
              6  2026-03-18 09:20 +01:00  AB  static alignment
              7  2026-03-18 09:30 +01:00  AB  static alignment
            Nothing differs between entries 3 and 7.
            static alignment, barefoot: from entry 2 to entry 6
              static alignment, sagittal, right, knee centre, offset: 18.0 mm -> 60.0 mm
              static alignment, sagittal, right, knee centre, result: tolerance met -> tolerance not \
            met
            static alignment, sandal: entry 7 is the first
            What is open
              sagittal, right, knee centre (entry 6, barefoot, typed, no recording): tolerance not met
            """);
  }
}
