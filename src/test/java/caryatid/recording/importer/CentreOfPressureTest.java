package caryatid.recording.importer;

import static caryatid.recording.importer.Described.plate;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription.ForceIs;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Sensors;
import caryatid.remark.BadInput;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Validation: centres of pressure from forces, moments, raw channels and load cells. */
class CentreOfPressureTest {
  /** Rounding of a few operations on numbers up to 1e5. */
  private static final double ROUNDING = 1e-9;

  /** C3D's axes for z down, seen from above: x to the right, y to the rear. */
  private static final Axes Z_DOWN =
      new Axes(Direction.PLUS_X, Direction.MINUS_Y, Direction.MINUS_Z);

  private static final NamedBytes TYPE_2 =
      Exports.rows("Fx,Fy,Fz,Mx,My,Mz", "10,-20,800,-25600,-40800,800", 3);

  private static PlateTrack only(NamedBytes export, Described description) throws BadInput {
    return Exports.read(export, description.rate(100).get()).plates().get(0);
  }

  /**
   * Forces and moments about an origin at ORIGIN = (0.5, -1, -40) mm by the C3D file format
   * (c3d.org, The FORCE_PLATFORM group, type 2), z down; CoP (50, -30) mm computed from the same
   * inputs by an independent program.
   */
  @Test
  void trueOriginBelowTheSurfaceByC3d() throws BadInput {
    PlateTrack track =
        only(TYPE_2, new Described().axes(Z_DOWN).plate(plate().trueOrigin(-0.5, 1, 40)));
    assertThat(track.copRightMm().orElseThrow().at(0)).isCloseTo(50, within(ROUNDING));
    assertThat(track.copAnteriorMm().at(0)).isCloseTo(30, within(ROUNDING));
    assertThat(track.upN().orElseThrow().at(0)).isCloseTo(800, within(ROUNDING));
    assertThat(track.horizontal().orElseThrow().rightN().at(0)).isCloseTo(-10, within(ROUNDING));
    assertThat(track.horizontal().orElseThrow().anteriorN().at(0)).isCloseTo(-20, within(ROUNDING));
  }

  /** The same case with the origin taken in the surface: (51, -32) mm, same source. */
  @Test
  void trueOriginInTheSurface() throws BadInput {
    PlateTrack track =
        only(TYPE_2, new Described().axes(Z_DOWN).plate(plate().trueOrigin(0, 0, 0)));
    assertThat(track.copRightMm().orElseThrow().at(0)).isCloseTo(51, within(ROUNDING));
    assertThat(track.copAnteriorMm().at(0)).isCloseTo(32, within(ROUNDING));
  }

  /** Action and reaction: all forces and moments turned round leave the centre where it is. */
  @Test
  void turningForcesAndMomentsRoundKeepsTheCentreAndTheForceOnThePerson() throws BadInput {
    NamedBytes turned = Exports.rows("Fx,Fy,Fz,Mx,My,Mz", "-10,20,-800,25600,40800,-800", 3);
    Described described = new Described().axes(Z_DOWN).plate(plate().trueOrigin(-0.5, 1, 40));
    PlateTrack action = only(TYPE_2, described);
    PlateTrack reaction = only(turned, described.forceIs(ForceIs.ON_THE_PERSON));
    assertThat(reaction.copRightMm().orElseThrow().at(0))
        .isEqualTo(action.copRightMm().orElseThrow().at(0));
    assertThat(reaction.upN().orElseThrow().at(0)).isEqualTo(action.upN().orElseThrow().at(0));
    assertThat(reaction.horizontal().orElseThrow().rightN().at(0))
        .isEqualTo(action.horizontal().orElseThrow().rightN().at(0));
  }

  /** The same plate exported with y up (x, y, z taken as x, -z, y) says the same of the person. */
  @Test
  void turningTheExportsAxesKeepsThePerson() throws BadInput {
    NamedBytes yUp = Exports.rows("Fx,Fy,Fz,Mx,My,Mz", "10,-800,-20,-25600,-800,-40800", 3);
    Axes axes = new Axes(Direction.PLUS_X, Direction.MINUS_Z, Direction.PLUS_Y);
    PlateTrack turned =
        only(yUp, new Described().axes(axes).plate(plate().trueOrigin(-0.5, -40, 1)));
    PlateTrack track =
        only(TYPE_2, new Described().axes(Z_DOWN).plate(plate().trueOrigin(-0.5, 1, 40)));
    assertThat(turned.copRightMm().orElseThrow().at(0))
        .isCloseTo(track.copRightMm().orElseThrow().at(0), within(ROUNDING));
    assertThat(turned.copAnteriorMm().at(0))
        .isCloseTo(track.copAnteriorMm().at(0), within(ROUNDING));
    assertThat(turned.horizontal().orElseThrow().anteriorN().at(0))
        .isCloseTo(-20, within(ROUNDING));
  }

  /**
   * Eight channels: a = 120, b = 200, az0 = -48 mm; CoP (-30.6, -48.8) mm computed from the same
   * inputs by an independent program.
   */
  @Test
  void eightRawChannels() throws BadInput {
    NamedBytes export = Exports.rows("a,b,c,d,e,f,g,h", "4,6,-12,-8,100,200,300,200", 3);
    Map<Sensors.RawChannel, String> columns = new EnumMap<>(Sensors.RawChannel.class);
    char name = 'a';
    for (Sensors.RawChannel channel : Sensors.RawChannel.values()) {
      columns.put(channel, String.valueOf(name++));
    }
    Sensors sensors = new Sensors.EightChannels(columns, 120, 200, -48, 1, 1);
    PlateTrack track = only(export, new Described().axes(Z_DOWN).plate(plate().sensors(sensors)));
    assertThat(track.copRightMm().orElseThrow().at(0)).isCloseTo(-30.6, within(ROUNDING));
    assertThat(track.copAnteriorMm().at(0)).isCloseTo(48.8, within(ROUNDING));
  }

  /**
   * Four pedestals, X = 0.4 m, Z = 0.6 m, 100, 150, 200 and 350 N: (0.25, 0.4125) m. D. A. Winter,
   * Biomechanics and Motor Control of Human Movement, ch. 5 (from memory).
   */
  @Test
  void fourLoadCells() throws BadInput {
    NamedBytes export = Exports.rows("c00,cX0,c0Z,cXZ", "100,150,200,350", 3);
    Sensors cells =
        new Sensors.LoadCells(
            List.of(
                new Sensors.LoadCell("c00", 0, 0),
                new Sensors.LoadCell("cX0", 400, 0),
                new Sensors.LoadCell("c0Z", 0, 600),
                new Sensors.LoadCell("cXZ", 400, 600)));
    PlateTrack track = only(export, new Described().plate(plate().sensors(cells)));
    assertThat(track.copRightMm().orElseThrow().at(0)).isCloseTo(250, within(ROUNDING));
    assertThat(track.copAnteriorMm().at(0)).isCloseTo(412.5, within(ROUNDING));
    assertThat(track.upN().orElseThrow().at(0)).isCloseTo(800, within(ROUNDING));
  }

  /** Mirrored left and right, a centre of pressure changes its side and nothing else. */
  @Test
  void mirroringLeftAndRight() throws BadInput {
    NamedBytes export = Exports.rows("Fz,CoPx,CoPy", "800,12.5,-7.25", 3);
    Axes mirrored = new Axes(Direction.MINUS_X, Direction.PLUS_Y, Direction.PLUS_Z);
    PlateTrack track = only(export, new Described().plate(plate()));
    PlateTrack other = only(export, new Described().axes(mirrored).plate(plate()));
    assertThat(other.copRightMm().orElseThrow().at(0))
        .isEqualTo(-track.copRightMm().orElseThrow().at(0));
    assertThat(other.copAnteriorMm().at(0)).isEqualTo(track.copAnteriorMm().at(0));
  }

  @Test
  void theExportsOriginIsAddedInThePersonsFrame() throws BadInput {
    NamedBytes export = Exports.rows("Fz,CoPx,CoPy", "800,12.5,-7.25", 3);
    PlateTrack track = only(export, new Described().plate(plate().at(100, -200)));
    assertThat(track.copRightMm().orElseThrow().at(0)).isEqualTo(112.5);
    assertThat(track.copAnteriorMm().at(0)).isEqualTo(-207.25);
  }

  @Test
  void unloadedSamplesCannotBeUsed() throws BadInput {
    NamedBytes export =
        Exports.of("Fz,CoPx,CoPy", "800,1,2", "19.9,900,-900", "20,3,4", "800,NaN,4", "0,,");
    PlateTrack track = only(export, new Described().plate(plate()));
    assertThat(List.of(0, 1, 2, 3, 4).stream().map(track.usable()::at))
        .containsExactly(true, false, true, false, false);
    assertThat(track.copRightMm().orElseThrow().at(1)).isZero();
  }
}
