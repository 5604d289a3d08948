package caryatid.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.NearTheEdge;
import caryatid.demo.Numbered;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UndecidedTest {
  /** By hand, see {@link NearTheEdge}: 10 - 7.3 = 2.7 and 10 - 4.5 = 5.5 mm; the other edge too. */
  @ParameterizedTest
  @CsvSource({
    "0, STANDS", "2.6, STANDS", "2.8, MARKS", "-2.6, STANDS", "-2.8, MARKS",
    "5.4, MARKS", "5.6, NEITHER", "10, NEITHER", "14.4, NEITHER", "14.6, MARKS",
    "17.2, MARKS", "17.4, STANDS"
  })
  void whatDecidesDependsOnHowNearTheEdgeTheLineRuns(double fromMiddleMm, Undecided by) {
    AlignmentState state = NearTheEdge.state(fromMiddleMm);
    assertThat(Undecided.of(state, state.findings().get(0))).contains(by);
  }

  @Test
  void whatIsDecidedNeedsNothing() {
    AlignmentState state = Numbered.state();
    assertThat(Undecided.of(state, state.findings().get(1))).isEmpty();
    assertThat(Undecided.of(state, state.findings().get(2))).isEmpty();
  }
}
