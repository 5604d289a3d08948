package caryatid.faults;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.remark.BadInput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every fault of every column: refused, remarked, or no finding moves by half a millimetre and no
 * result changes.
 */
class DeadChannelMatrixTest {
  @Test
  void noFaultMovesAFindingInSilence() throws Exception {
    assertThat(inSilence(List.of(SampleStand.ALL.get(3), SampleStand.ALL.get(5)))).isEmpty();
  }

  @Test
  @Tag("proof")
  void noFaultOfAnySampleMovesAFindingInSilence() throws Exception {
    assertThat(inSilence(SampleStand.ALL)).isEmpty();
  }

  private static List<String> inSilence(List<SampleStand> stands) throws IOException, BadInput {
    List<String> silent = new ArrayList<>();
    for (SampleStand stand : stands) {
      for (FaultyColumn faulty : stand.faults().toList()) {
        FaultyColumn.Outcome outcome = faulty.outcome();
        if (outcome == FaultyColumn.Outcome.IN_SILENCE) {
          silent.add(faulty.toString());
        }
      }
    }
    return silent;
  }
}
