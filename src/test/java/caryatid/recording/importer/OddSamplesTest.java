package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;

/** Samples that stick out, end a range or repeat each other. Validation by construction. */
class OddSamplesTest {
  private static final String COP = "CoPx (mm),CoPy (mm)";

  private static final String COP_AND_FORCE = "Fz (N)," + COP;

  private static NamedBytes export(String names, int rows, IntFunction<String> row) {
    StringBuilder text = new StringBuilder(names).append('\n');
    for (int i = 0; i < rows; i++) {
      text.append(row.apply(i)).append('\n');
    }
    return Exports.text(text.toString());
  }

  @Test
  void singleSamplesThatStickOutAreRemarked() throws BadInput {
    Recording recording =
        Exports.readAt100Hz(
            export(COP_AND_FORCE, 100, i -> "800," + (i == 50 ? "60,20" : Exports.sway(i))));
    assertThat(Exports.remarks(recording))
        .contains("plate 1: single samples that stick out from both their neighbours: 1.");
  }

  /** One sample that sticks out in both directions and in force is one. */
  @Test
  void aSampleThatSticksOutInSeveralChannelsCountsOnce() throws BadInput {
    Recording recording =
        Exports.readAt100Hz(
            export(COP_AND_FORCE, 100, i -> i == 50 ? "1200,60,90" : "800," + Exports.sway(i)));
    assertThat(Exports.remarks(recording))
        .contains("plate 1: single samples that stick out from both their neighbours: 1.");
  }

  @Test
  void aForceAtItsEndOfRangeIsRemarked() throws BadInput {
    Recording recording =
        Exports.readAt100Hz(
            export(
                COP_AND_FORCE,
                200,
                i ->
                    String.format(Locale.ROOT, "%.2f,", Math.min(810, 800 + 13 * Math.sin(i)))
                        + Exports.sway(i)));
    assertThat(Exports.remarks(recording))
        .anyMatch(r -> r.endsWith("the plate may have reached the end of its range."));
  }

  @Test
  void repeatedSamplesAreRemarked() throws BadInput {
    Recording recording =
        Exports.readAt100Hz(
            export(COP_AND_FORCE, 100, i -> 800 + i / 2 % 3 + "," + Exports.sway(i / 2)));
    assertThat(Exports.remarks(recording))
        .contains(
            "plate 1: 50.0 % of the samples repeat the one before; the export was written faster"
                + " than the plate was sampled.");
  }

  /** Before a unit or an axis is known. */
  @Test
  void spikesAreRemarkedWhileQuestionsAreOpen() {
    NamedBytes export =
        export("Fz,CoPx,CoPy", 100, i -> i == 50 ? "1200,60,20" : "800," + Exports.sway(i));
    assertThat(Importer.inspect(export, Optional.empty()).remarks())
        .extracting(r -> Exports.WORDING.say(r))
        .containsExactly("plate 1: single samples that stick out from both their neighbours: 1.");
    NamedBytes alone = export("CoPx,CoPy", 100, i -> i == 50 ? "60,20" : Exports.sway(i));
    assertThat(Importer.inspect(alone, Optional.empty()).remarks())
        .extracting(r -> Exports.WORDING.say(r))
        .containsExactly("plate 1: single samples that stick out from both their neighbours: 1.");
    NamedBytes smooth = export("CoPx,CoPy", 100, i -> Exports.sway(i));
    assertThat(Importer.inspect(smooth, Optional.empty()).remarks()).isEmpty();
  }
}
