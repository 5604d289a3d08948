package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

/** What the inspect command writes. */
class InspectWriteTest extends Inspecting {

  @Test
  void theWrittenDescriptionKeepsTheQuestionsOpen() throws IOException {
    Run run = Run.caryatid("inspect", file("stand.csv"), "--write", file("draft.yaml"));
    assertThat(run.code()).isZero();
    assertThat(lines(run)).endsWith("Written: draft.yaml");
    assertThat(plain(Files.readString(folder.resolve("draft.yaml"))))
        .isEqualTo(
            """
            # Replace each unknown; the question above it says how. While one is left, the description is refused. Delete what your plate does not export.
            # The 4 columns of the file, each with its first values and what it probably is:
            # 1  Time (s)  [0.0 0.1 0.2]  time, by its name
            # 2  Fz  [0 0 0]  force-z, by its name; about 800 and nearly constant: probably vertical force, N
            # 3  CoPx  [0 0 0]  cop-x, by its name
            # 4  CoPy  [0 0 0]  cop-y, by its name
            plate-description: 1
            name: plate
            time: {column: Time (s), unit: s}
            # nothing states which of the export's axes point to the person's right, forward and up. Add to the plate description: axes: {right: unknown, anterior: unknown, up: unknown}, with +x, -x, +y, -y, +z or -z for each unknown. To find out, step on the empty plate and lean forward, then to the right: the numbers of the centre of pressure show which axis that is, and whether it rises or falls.
            axes: {right: unknown, anterior: unknown, up: unknown}
            plates:
              - name: plate 1
                columns: {force-z: Fz, cop-x: CoPx, cop-y: CoPy}
                # the unit of force is stated nowhere (plate 1): in N it is the weight of 81.6 kg, in kg of 800.0 kg. Add to the plate description under the plate: units: {force: unknown}, with N or kg for unknown.
                # the unit of the centre of pressure is stated nowhere (plate 1). Its middle lies this far from the export's zero:
                # 0.02 mm if it is in mm,
                # 0.20 mm if in cm,
                # 20.00 mm if in m,
                # 0.51 mm if in inch.
                # Add to the plate description under the plate: units: {cop: unknown}, with mm, cm, m or inch for unknown.
                units: {force: unknown, cop: unknown}
            """);
  }

  /** What is written is refused as long as a question is open, and taken once all are answered. */
  @Test
  void theWrittenDescriptionIsTakenOnceItIsCompleted() throws IOException {
    Run.caryatid("inspect", file("stand.csv"), "--write", file("draft.yaml"));
    Run open = Run.caryatid("inspect", file("stand.csv"), "--plate", file("draft.yaml"));
    assertThat(open.code()).isEqualTo(1);
    assertThat(plain(open.err())).startsWith("draft.yaml line 11, column ");
    String draft =
        Files.readString(folder.resolve("draft.yaml"))
            .replace(
                "right: unknown, anterior: unknown, up: unknown", "right: +x, anterior: +y, up: +z")
            .replace("force: unknown, cop: unknown", "force: N, cop: m");
    Files.writeString(folder.resolve("draft.yaml"), draft);
    Run completed = Run.caryatid("inspect", file("stand.csv"), "--plate", file("draft.yaml"));
    // The description is taken; two seconds of standing are still too few.
    assertThat(lines(completed)).contains(TOO_SHORT).noneMatch(l -> l.contains("nowhere"));
    assertThat(completed.err()).isEmpty();
  }

  @Test
  void aFileThatIsThereIsReplacedOnlyWhenAsked() throws IOException {
    String before = Files.readString(folder.resolve("plate.yaml"));
    refused(
        Run.caryatid("inspect", file("stand.csv"), "--write", file("plate.yaml")),
        "plate.yaml: already exists, and nothing is overwritten without being asked. Choose another"
            + " name or folder, or add --replace.");
    assertThat(folder.resolve("plate.yaml")).hasContent(before);
    Run replacing =
        Run.caryatid("inspect", file("stand.csv"), "--write", file("plate.yaml"), "--replace");
    assertThat(replacing.code()).isZero();
    assertThat(Files.readString(folder.resolve("plate.yaml"))).contains("unknown");
  }
}
