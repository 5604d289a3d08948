package caryatid.usecase.stand;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.wording.Wording;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class WarmUpTest {
  /** What is refused on the way would load only half of what a stand takes. */
  @Test
  void theInventedStandIsAnalysedToItsEnd() throws Exception {
    assertThat(WarmUp.run(Wording.in(Locale.ENGLISH)).result().state().findings()).hasSize(1);
  }
}
