package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.recording.model.Sampled;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What an inspection has read is what a reading reads. */
class SampledTest {
  private static final Optional<PlateDescription> DESCRIBED = Optional.of(new Described().get());

  /** At 100 Hz, the centre of pressure in m; one row is missing and bridged, two are unloaded. */
  private static NamedBytes export(int rows) {
    StringBuilder text = new StringBuilder("Time (s),Fz (N),CoPx (m),CoPy (m)\n");
    for (int i = 0; i < rows; i++) {
      int at = i < 50 ? i : i + 1;
      text.append(
          String.format(
              Locale.ROOT,
              "%.2f,%d,%.4f,%.4f%n",
              at / 100.0,
              i == 30 || i == 31 ? 5 : 800 + i % 7,
              0.01 * Math.sin(at / 9.0),
              0.02 + 0.01 * Math.sin(at / 7.0)));
    }
    return Exports.text(text.toString());
  }

  private static void assertSame(double[] one, double[] other) {
    assertThat(one).containsExactly(other);
  }

  private static void assertSame(PlateTrack one, PlateTrack other) {
    assertThat(one.plate()).isEqualTo(other.plate());
    assertSame(one.copRightMm().orElseThrow().shared(), other.copRightMm().orElseThrow().shared());
    assertSame(one.copAnteriorMm().shared(), other.copAnteriorMm().shared());
    assertSame(one.upN().orElseThrow().shared(), other.upN().orElseThrow().shared());
    for (int i = 0; i < one.usable().size(); i++) {
      assertThat(one.usable().at(i)).isEqualTo(other.usable().at(i));
    }
  }

  private static void assertSame(Sampled one, Recording other) {
    assertThat(one.file()).isEqualTo(other.provenance().name());
    assertThat(one.rateHz()).isEqualTo(other.rateHz());
    assertThat(one.size()).isEqualTo(other.timeS().size());
    for (int i = 0; i < one.size(); i++) {
      assertThat(one.timeS(i)).isEqualTo(other.timeS().at(i));
    }
    assertThat(one.plates()).hasSameSizeAs(other.plates());
    for (int i = 0; i < one.plates().size(); i++) {
      assertSame(one.plates().get(i), other.plates().get(i));
    }
  }

  @Test
  void inEveryNumber() throws Exception {
    NamedBytes bare = export(100);
    NamedBytes named = NamedBytes.of("folder/stand.csv", bare.open().readAllBytes());
    Inspection inspection = Importer.inspect(named, DESCRIBED);
    Recording recording = Importer.read(named, DESCRIBED);
    assertThat(recording.plates().get(0).usable().count()).isEqualTo(99);
    assertSame(inspection.sampled().orElseThrow(), recording);
  }

  @Test
  void nothingIsHandedOnWhileSomethingIsOpenOrWrong() {
    NamedBytes export = Exports.of("Time (s),Fz (N),CoPx (mm),CoPy (mm)", "0,800,1,2", "1,800,x,2");
    assertThat(Importer.inspect(export, DESCRIBED).sampled()).isEmpty();
    NamedBytes open = Exports.rows("Time (s),Fz (N),CoPx (mm),CoPy (mm)", "#,80#,1#,2#", 9);
    Inspection asking = Importer.inspect(open, Optional.empty());
    assertThat(asking.questions()).isNotEmpty();
    assertThat(asking.sampled()).isEmpty();
  }

  @Test
  void aSampleThatIsNotThereIsRefused() {
    Sampled sampled = Importer.inspect(export(9), DESCRIBED).sampled().orElseThrow();
    assertThat(sampled.timeS(8)).isCloseTo(0.08, within(1e-9));
    assertThatThrownBy(() -> sampled.timeS(9)).isInstanceOf(IndexOutOfBoundsException.class);
  }
}
