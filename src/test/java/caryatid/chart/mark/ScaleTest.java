package caryatid.chart.mark;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.chart.mark.Scale.PersonPoint;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a scale is called, and where it puts places on paper. */
class ScaleTest {
  private static final Box ROOM = new Box(0, 0, 40, 50);

  @ParameterizedTest
  @CsvSource({"0.05, 20 : 1", "0.5, 2 : 1", "1, 1 : 1", "7, 1 : 7", "200, 1 : 200"})
  void aScaleIsWrittenAsItIsSaid(double oneTo, String words) {
    assertThat(new Scale(oneTo, new PaperPoint(0, 0)).words()).isEqualTo(words);
  }

  /** 20 mm are 40 mm of paper at 2 : 1: as wide as the room, and 10 mm less than its height. */
  @Test
  void placesStandInTheMiddleAtTheLargestScaleThatFits() {
    Scale scale = Scale.centred(List.of(new PersonPoint(0, 10), new PersonPoint(20, 30)), ROOM);
    assertThat(scale.words()).isEqualTo("2 : 1");
    assertThat(scale.spot(0, 10)).isEqualTo(new PaperPoint(0, 45));
    assertThat(scale.spot(20, 30)).isEqualTo(new PaperPoint(40, 5));
  }

  @Test
  void onTheFloorPlacesStandAtTheBottom() {
    Scale scale = Scale.fitting(List.of(new PersonPoint(-4, 0), new PersonPoint(6, 40)), ROOM);
    assertThat(scale.words()).isEqualTo("1 : 1");
    assertThat(scale.spot(1, 0)).isEqualTo(new PaperPoint(20, 50));
    assertThat(scale.spot(6, 40)).isEqualTo(new PaperPoint(25, 10));
    assertThat(Scale.fitting(List.of(new PersonPoint(0, 40)), ROOM, 1.5).words())
        .isEqualTo("1 : 2");
  }
}
