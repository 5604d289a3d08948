package caryatid.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.demo.Numbered;
import org.junit.jupiter.api.Test;

/** A result's method is a number from 1 on. */
class ResultTest {
  @Test
  void theFirstMethodHasTheNumberOne() {
    assertThat(new Result(1, "Caryatid", Numbered.state()).method()).isEqualTo(1);
    assertThatThrownBy(() -> new Result(0, "Caryatid", Numbered.state()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
