package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.model.Channel;
import caryatid.recording.model.ColumnView;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateLayout;
import caryatid.remark.Problem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Columns whose names say across, along and upright in place of an axis. */
class AcrossAndAlongTest {
  private static final NamedBytes TWO_PLATES =
      Exports.rows(
          "Zeit (s);Kraft quer links (N);Kraft l\u00e4ngs links (N);Kraft senkrecht links"
              + " (N);Moment quer links (N mm);Moment l\u00e4ngs links (N mm);Moment senkrecht"
              + " links (N mm);Kraft quer rechts (N);Kraft l\u00e4ngs rechts (N);Kraft senkrecht"
              + " rechts (N);Moment quer rechts (N mm);Moment l\u00e4ngs rechts (N mm);Moment"
              + " senkrecht rechts (N mm)",
          "0.0#;-6.1;-0.8;348.5;9285.9;-32290.4;14.7;7.7;-0.3;416.4;12285.1;35421.5;-190.8",
          9);

  @Test
  void sixChannelsOfEachOfTwoPlatesAreKnownByTheirNames() {
    Inspection seen = Importer.inspect(TWO_PLATES, Optional.empty());
    assertThat(seen.draft().plates())
        .extracting(PlateLayout::name)
        .containsExactly("links", "rechts");
    assertThat(seen.draft().plates())
        .allSatisfy(
            plate ->
                assertThat(plate.columns().keySet())
                    .containsExactlyInAnyOrder(
                        Channel.FORCE_X,
                        Channel.FORCE_Y,
                        Channel.FORCE_Z,
                        Channel.MOMENT_X,
                        Channel.MOMENT_Y,
                        Channel.MOMENT_Z));
    assertThat(seen.draft().plates().get(1).columns().get(Channel.MOMENT_Y))
        .startsWith("Moment l\u00e4ngs rechts");
    assertThat(seen.questions().stream().map(Problem::topic).map(t -> t.code()).toList())
        .containsExactlyInAnyOrder("Reading.TRUE_ORIGIN", "Reading.EXPORT_ORIGIN", "Reading.AXES");
  }

  /** A sine of amplitude 300 lies between the sines of -72 and 72 degrees for eight tenths. */
  @Test
  void whatAColumnMostlyHoldsFitsTheValuesThatAreShown() {
    NamedBytes export =
        Exports.text(
            "Time (s),Spin\n"
                + IntStream.range(0, 2000)
                    .mapToObj(
                        i ->
                            String.format(
                                Locale.ROOT, "%.2f,%.3f%n", i / 100.0, 300 * Math.sin(0.37 * i)))
                    .collect(Collectors.joining()));
    List<ColumnView> columns = Importer.columns(export, ExportLayout.UNSTATED);
    double most = 300 * Math.sin(Math.toRadians(72));
    assertThat(columns.get(1).byNumbers()).isEqualTo(ColumnView.ByNumbers.UNKNOWN);
    assertThat(columns.get(1).low()).isCloseTo(-most, within(3.0));
    assertThat(columns.get(1).high()).isCloseTo(most, within(3.0));
  }
}
