package caryatid.recording.c3d;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.c3d.MadeC3d.Made;
import caryatid.recording.importer.Importer;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Validation: forces and points that the generator's statics put into the channels come back, for
 * every type, processor and format.
 */
class KnownForcesTest {
  /** Channels hold these numbers exactly; what is left is the arithmetic of doubles. */
  private static final double EXACT = 1e-6;

  static Stream<Arguments> files() {
    return Stream.of(1, 2, 3, 4)
        .flatMap(
            type ->
                Stream.of(Made.values())
                    .flatMap(
                        processor ->
                            Stream.of(true, false)
                                .map(real -> Arguments.of(type, processor, real))));
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyTypeProcessorAndFormat(int type, Made processor, boolean real) throws BadInput {
    assertKnown(new MadeStand(type, processor, real));
  }

  @ParameterizedTest
  @MethodSource("files")
  void theForceOnThePlate(int type, Made processor, boolean real) throws BadInput {
    assertKnown(new MadeStand(type, processor, real).onThePlate());
  }

  @ParameterizedTest
  @MethodSource("files")
  void unsignedWithAnOffsetOfHalfTheRange(int type, Made processor, boolean real) throws BadInput {
    assertKnown(new MadeStand(type, processor, real).unsigned());
  }

  @ParameterizedTest
  @MethodSource("files")
  void aZeroMomentPointThatIsWrittenTheOtherWayRound(int type, Made processor, boolean real)
      throws BadInput {
    assertKnown(new MadeStand(type, processor, real).reversedOrigin());
  }

  private static void assertKnown(MadeStand stand) throws BadInput {
    Recording read =
        Importer.read(NamedBytes.of("stand.c3d", stand.file().bytes()), Optional.empty());
    assertThat(read.rateHz()).isEqualTo(200);
    assertThat(read.plates()).extracting(PlateTrack::plate).containsExactly("plate 1", "plate 2");
    for (int plate = 0; plate < 2; plate++) {
      assertKnown(read.plates().get(plate), stand.loads.get(plate));
    }
  }

  private static void assertKnown(PlateTrack track, List<MadeStand.Load> loads) {
    for (int i = 0; i < loads.size(); i++) {
      MadeStand.Load load = loads.get(i);
      assertThat(track.copAnteriorMm().at(i)).isCloseTo(load.x(), within(EXACT));
      assertThat(track.copRightMm().orElseThrow().at(i)).isCloseTo(-load.y(), within(EXACT));
      assertThat(track.upN().orElseThrow().at(i)).isCloseTo(load.fz(), within(EXACT));
      assertThat(track.horizontal().orElseThrow().anteriorN().at(i))
          .isCloseTo(load.fx(), within(EXACT));
      assertThat(track.horizontal().orElseThrow().rightN().at(i))
          .isCloseTo(-load.fy(), within(EXACT));
    }
  }
}
