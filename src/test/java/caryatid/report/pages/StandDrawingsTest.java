package caryatid.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.Stand;
import caryatid.chart.mark.Drawing;
import caryatid.demo.ChangedStand;
import caryatid.demo.Demo;
import caryatid.geometry.Side;
import caryatid.recording.model.Recording;
import caryatid.standing.Stance;
import caryatid.wording.Wording;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which drawings of the recordings there are, and which stand each is of. */
class StandDrawingsTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final Demo DEMO = Demo.transtibial(Side.RIGHT);

  private static StandDrawings of(List<Stand> stands, Demo demo) {
    List<Recording> recordings = Collections.nCopies(stands.size(), demo.recording());
    return new StandDrawings(stands, recordings, ENGLISH);
  }

  /** What each drawing says, row by row. */
  private static List<List<String>> said(List<Block.Figures> rows) {
    return rows.stream()
        .map(row -> row.plan().at(186, 60).stream().map(StandDrawingsTest::said).toList())
        .toList();
  }

  private static String said(Drawing drawing) {
    String words = drawing.alternative().replace('\u00a0', ' ');
    return words.contains(":") ? words.substring(0, words.indexOf(':')) : words;
  }

  @Test
  void thePathOfAllStandsStandsBesideTheFirstOneOverTime() {
    assertThat(said(of(DEMO.state(0).stands(), DEMO).first()))
        .containsExactly(
            List.of(
                "Centre of pressure from above, anterior is up. right foot's line", "Over time"));
  }

  @Test
  void eachOtherStandIsDrawnOverTimeTwoInARow() {
    StandDrawings four = of(DEMO.state(0, 1, 2, 3).stands(), DEMO);
    assertThat(said(four.first()))
        .containsExactly(
            List.of(
                "Centre of pressure from above, anterior is up. Stand 1, right foot's line",
                "Over time, stand 1"));
    assertThat(said(four.others()))
        .containsExactly(
            List.of("Over time, stand 2", "Over time, stand 3"), List.of("Over time, stand 4"));
    assertThat(of(DEMO.state(0).stands(), DEMO).others()).isEmpty();
  }

  /** The room between two is 6 mm. */
  @Test
  void twoShareTheWidthAndAllTheHeight() {
    List<Drawing> row = of(DEMO.state(0).stands(), DEMO).first().get(0).plan().at(186, 60);
    assertThat(row).extracting(Drawing::widthMm).containsExactly(90.0, 90.0);
    assertThat(row).extracting(Drawing::heightMm).containsExactly(60.0, 60.0);
  }

  @Test
  void bothLegsAreDrawnUnlessOnePlateMeasuredBoth() {
    Demo both = Demo.transtibial(Side.RIGHT).bothSides().twoPlates();
    Stand stand = both.state(0).stands().get(0);
    assertThat(said(of(List.of(stand), both).first())).hasSize(2).allMatch(row -> row.size() == 2);
    Stand onOne =
        ChangedStand.stance(stand, new Stance.BothFeetOnOnePlate(Optional.of("own plate")));
    assertThat(said(of(List.of(onOne), both).first())).hasSize(1).allMatch(row -> row.size() == 2);
  }
}
