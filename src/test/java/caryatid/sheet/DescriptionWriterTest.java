package caryatid.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.importer.Importer;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A written description reads as what it was written from; what is open is marked and refused. */
class DescriptionWriterTest {
  private static final String FULL =
      """
      plate-description: 1
      name: 'Plate: north'
      export: {encoding: UTF-8, delimiter: tab, decimal-mark: comma, header-line: 5, first-data-line: 7, columns: [Time, Fz (N)], recording: 2}
      time: {column: Time, unit: ms}
      axes: {right: -y, anterior: +x, up: +z}
      force-is: on the plate
      plates:
        - name: plate 1
          columns: {force-z: Fz, cop-x: CoPx, cop-y: CoPy}
          units: {force: kg, moment: N mm, cop: inch}
          edges-mm: {left: -200, right: 201.5, rear: -300, front: 302}
          true-origin-mm: {x: 0.5, y: -1, z: -40}
          export-origin-mm: {right: 3, anterior: -4}
          cells:
            - {column: A, right-mm: -100, anterior-mm: 150}
            - {column: B, right-mm: 100, anterior-mm: 0}
        - name: plate 2
          eight-channels:
            columns: {fx12: a, fx34: b, fy14: c, fy23: d, fz1: e, fz2: f, fz3: g, fz4: h}
            a-mm: 120
            b-mm: 200
            az0-mm: -48
            horizontal-n-per-unit: 2
            vertical-n-per-unit: 3
      measuring-lines:
        - {name: rear edge, forward-from-mm: -300, registration-mm: 1}
        - {name: midline, rightward-from-mm: 0, registration-mm: 0.5}
      accuracy: {cop-mm: 2, level-deg: 0.1, force-percent: 0.5, lean-deg: 0.3}
      remove-unloaded-offset: yes
      """;

  private static PlateDescription read(String yaml) throws BadInput {
    return DescriptionReader.read(bytes("plate.yaml", yaml));
  }

  private static NamedBytes bytes(String name, String text) {
    return NamedBytes.of(name, text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aDescriptionIsWrittenAsItIsRead() throws BadInput {
    PlateDescription full = read(FULL);
    String written = DescriptionWriter.write(full, List.of(), List.of(), problem -> "");
    assertThat(written).isEqualTo(FULL);
    assertThat(read(written)).isEqualTo(full);
  }

  @Test
  void whatIsOpenStandsBelowItsQuestion() {
    Inspection inspection =
        Importer.inspect(
            bytes("stand.csv", "Time (s),Fz,CoPx,CoPy\n0.00,800,1,2\n0.01,800,1,2\n"),
            Optional.empty());
    Wording wording = Wording.in(Locale.ROOT);
    String written =
        DescriptionWriter.write(
            inspection.draft(), inspection.questions(), List.of(), wording::sayWithin);
    assertThat(written)
        .isEqualTo(
            """
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
                # 2.0 mm if it is in mm,
                # 20.0 mm if in cm,
                # 2000.0 mm if in m,
                # 50.8 mm if in inch.
                # Add to the plate description under the plate: units: {cop: unknown}, with mm, cm, m or inch for unknown.
                units: {force: unknown, cop: unknown}
            """);
  }

  @Test
  void answeringTheQuestionsMakesTheRecordingReadable() throws BadInput {
    NamedBytes export = bytes("stand.csv", "Time (s),Fz,CoPx,CoPy\n0.00,800,1,2\n0.01,800,1,2\n");
    Inspection inspection = Importer.inspect(export, Optional.empty());
    String answered =
        DescriptionWriter.write(
                inspection.draft(), inspection.questions(), List.of(), problem -> "?")
            .replace("right: unknown", "right: +x")
            .replace("anterior: unknown", "anterior: +y")
            .replace("up: unknown", "up: +z")
            .replace("force: unknown", "force: N")
            .replace("cop: unknown", "cop: cm");
    assertThat(
            Importer.read(export, Optional.of(read(answered)))
                .plates()
                .get(0)
                .copRightMm()
                .orElseThrow()
                .at(0))
        .isEqualTo(10);
  }

  @Test
  void unansweredQuestionsAreRefused() {
    Inspection inspection =
        Importer.inspect(bytes("stand.csv", "Fz,CoPx,CoPy\n800,1,2\n800,1,2\n"), Optional.empty());
    String written =
        DescriptionWriter.write(
            inspection.draft(), inspection.questions(), List.of(), problem -> "open");
    assertThat(written).contains("time: {rate-hz: unknown}");
    org.assertj.core.api.Assertions.assertThatThrownBy(() -> read(written))
        .isInstanceOf(BadInput.class)
        .satisfies(e -> assertThat(((BadInput) e).problems()).hasSize(6));
  }
}
