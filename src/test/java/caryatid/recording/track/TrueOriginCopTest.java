package caryatid.recording.track;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.model.PlateLayout;
import org.junit.jupiter.api.Test;

class TrueOriginCopTest {

  @Test
  void momentsAboutLeftHandedAxesHaveNoMeaning() {
    Axes leftHanded = new Axes(Direction.PLUS_X, Direction.PLUS_Y, Direction.MINUS_Z);
    assertThatThrownBy(() -> new TrueOriginCop(leftHanded, new PlateLayout.TrueOrigin(0, 0, 0)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
