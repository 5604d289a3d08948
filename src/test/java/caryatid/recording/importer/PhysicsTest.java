package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.faults.SampleStands;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Recording;
import caryatid.recording.model.RecordingRemark;
import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;

/** What is well-formed text and cannot be. Validation by construction. */
class PhysicsTest {
  private static final String NAMES = "Fz (N),CoPx (mm),CoPy (mm)";

  private static NamedBytes export(int rows, IntFunction<String> row) {
    StringBuilder text = new StringBuilder(NAMES).append('\n');
    for (int i = 0; i < rows; i++) {
      text.append(row.apply(i)).append('\n');
    }
    return Exports.text(text.toString());
  }

  private static String row(double upN, double right, double anterior) {
    return String.format(Locale.ROOT, "%.2f,%.3f,%.3f", upN, right, anterior);
  }

  private static String sway(int i, double moreN, double moreMm) {
    return row(
        800 + Math.sin(i) + moreN,
        10 + 3 * Math.sin(0.1 * i),
        20 + 4 * Math.cos(0.07 * i) + moreMm);
  }

  private static List<String> bursts(int length, double moreN, double moreMm) throws BadInput {
    return Exports.remarks(
            Exports.readAt100Hz(
                export(
                    600,
                    i -> i >= 300 && i < 300 + length ? sway(i, moreN, moreMm) : sway(i, 0, 0))))
        .stream()
        .filter(remark -> remark.contains("stick out together"))
        .toList();
  }

  @Test
  void runsOfTwoToThirtySamplesThatStickOutAreRemarked() throws BadInput {
    String said =
        "plate 1: samples that stick out together, in runs of 2 to 30: %d. They count in the mean;"
            + " record again, or set the part to use by hand.";
    assertThat(bursts(2, 0, 100)).containsExactly(String.format(Locale.ROOT, said, 2));
    assertThat(bursts(30, 0, -100)).containsExactly(String.format(Locale.ROOT, said, 30));
    assertThat(bursts(31, 0, 100)).isEmpty();
    assertThat(bursts(1, 0, 100)).isEmpty();
    assertThat(bursts(10, 300, 0)).hasSize(1);
    assertThat(bursts(10, 0, 15)).isEmpty();
  }

  /** 3.7 t are 36,285 N. */
  @Test
  void samplesThatNobodyWeighsAreLeftOut() throws BadInput {
    Recording recording =
        Exports.readAt100Hz(export(600, i -> sway(i, i >= 300 && i < 320 ? 35_485 : 0, 0)));
    assertThat(recording.plates().get(0).usable().count()).isEqualTo(580);
    assertThat(Exports.remarks(recording))
        .contains("plate 1: samples with the weight of more than 300.0 kg, left out: 20.");
  }

  @Test
  void aChannelThatFreezesIsRemarked() throws BadInput {
    assertThat(frozen(52))
        .containsExactly(
            "plate 1: column 'CoPy (mm)' holds one number for up to 0.51 s and changes otherwise:"
                + " the channel seems to have frozen.");
    assertThat(frozen(50)).isEmpty();
  }

  private static List<String> frozen(int samples) throws BadInput {
    NamedBytes export = export(600, i -> frozenFor(samples, i));
    return Exports.readAt100Hz(export).remarks().stream()
        .filter(r -> r.topic() == RecordingRemark.FROZEN)
        .map(r -> Wording.in(Locale.ENGLISH).say(r).replace('\u00a0', ' '))
        .toList();
  }

  private static String frozenFor(int samples, int i) {
    return row(
        800 + Math.sin(i),
        10 + 3 * Math.sin(0.1 * i),
        20 + 4 * Math.cos(0.07 * (i >= 300 && i < 300 + samples ? 300 : i)));
  }

  /** A lost row elsewhere does not hide it. */
  @Test
  void aChannelThatFreezesIsRemarkedInARecordingWithGapsToo() throws BadInput {
    StringBuilder text = new StringBuilder("Time (s),Fz (N),CoPx (mm),CoPy (mm)\n");
    for (int i = 0; i < 600; i++) {
      String row = String.format(Locale.ROOT, "%.2f,%s%n", i / 100.0, frozenFor(60, i));
      text.append(i == 100 ? "" : row);
    }
    assertThat(Exports.remarks(Exports.read(Exports.text(text.toString()), new Described().get())))
        .contains(
            "plate 1: column 'CoPy (mm)' holds one number for up to 0.59 s and changes otherwise:"
                + " the channel seems to have frozen.");
  }

  /** A scale of steps of 10 N shows the same number for half a second without being dead. */
  @Test
  void aCoarseChannelIsNotFrozen() throws BadInput {
    NamedBytes export =
        export(
            1200,
            i ->
                row(
                    10.0 * Math.round(80 + 2 * Math.sin(0.02 * i)),
                    10 + 3 * Math.sin(0.1 * i),
                    20 + 4 * Math.cos(0.07 * i)));
    assertThat(Exports.readAt100Hz(export).remarks())
        .noneMatch(r -> r.topic() == RecordingRemark.FROZEN);
  }

  /** Whole waves have a mean of zero. */
  @Test
  void aCentreOfPressureWithoutItsMeanIsRefused() {
    assertThat(Exports.refusals(wave(0, 0), new Described().rate(100).get()))
        .containsExactly(
            "stand.csv: plate 1: the centre of pressure is zero on average in every direction"
                + " measured, although it sways: its mean seems to have been subtracted, so it no"
                + " longer shows where the wearer stood. Export the centre of pressure as the plate"
                + " measured it.");
    assertThat(Exports.refusals(wave(0, 0.1), new Described().rate(100).get())).isEmpty();
    assertThat(Exports.refusals(wave(0.1, 0), new Described().rate(100).get())).isEmpty();
  }

  private static NamedBytes wave(double right, double anterior) {
    return export(
        1000,
        i ->
            row(
                800 + Math.sin(i),
                right + 17 * Math.sin(2 * Math.PI * i / 500),
                anterior + 17 * Math.cos(2 * Math.PI * i / 250)));
  }

  @Test
  void aTrueOriginDeeperThanAnyPlateIsRefused() throws Exception {
    assertThat(SampleStands.refusals("z: -40", "z: -4000"))
        .containsExactly(
            "the plate description puts the moments' zero point of plate 1 4000.0 mm below the"
                + " plate's top surface, and no plate is deeper than 250.0 mm. Usually it lies 20"
                + " to 60 mm below. Correct true-origin-mm.");
    assertThat(SampleStands.refusals("z: -40", "z: -251")).hasSize(1);
    assertThat(SampleStands.refusals("z: -40", "z: -249")).isEmpty();
  }
}
