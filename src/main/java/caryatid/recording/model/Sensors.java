package caryatid.recording.model;

import caryatid.remark.Coded;
import java.util.List;
import java.util.Map;

/** Raw sensors of a plate that exports neither a centre of pressure nor moments. */
public sealed interface Sensors {

  /**
   * Vertical load cells; the centre of pressure is their load-weighted mean position.
   *
   * @param cells at least two
   */
  record LoadCells(List<LoadCell> cells) implements Sensors {
    /**
     * @throws IllegalArgumentException if there are fewer than two
     */
    public LoadCells {
      if (cells.size() < 2) {
        throw new IllegalArgumentException(cells.size() + " load cells");
      }
      cells = List.copyOf(cells);
    }
  }

  /**
   * A vertical load cell.
   *
   * @param column the column of its readings
   * @param rightMm where it stands, to the right of the plate's own origin, mm
   * @param anteriorMm where it stands, anterior to the plate's own origin, mm
   */
  record LoadCell(String column, double rightMm, double anteriorMm) {
    /**
     * @throws IllegalArgumentException if a coordinate is not finite
     */
    public LoadCell {
      if (!Double.isFinite(rightMm + anteriorMm)) {
        throw new IllegalArgumentException(column + " at " + rightMm + ", " + anteriorMm);
      }
    }
  }

  /** One of the eight channels of a plate with four three-axis sensors in its corners. */
  enum RawChannel implements Coded {
    FX12("RawChannel.FX12"),
    FX34("RawChannel.FX34"),
    FY14("RawChannel.FY14"),
    FY23("RawChannel.FY23"),
    FZ1("RawChannel.FZ1"),
    FZ2("RawChannel.FZ2"),
    FZ3("RawChannel.FZ3"),
    FZ4("RawChannel.FZ4");

    private final String code;

    RawChannel(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }

    public boolean isVertical() {
      return compareTo(FZ1) >= 0;
    }
  }

  /**
   * Eight raw channels of four corner sensors: sensor 1 at (+a, +b) in the export's x and y, 2 at
   * (-a, +b), 3 at (-a, -b), 4 at (+a, -b).
   *
   * @param columns the column of each of the eight channels
   * @param aMm half the sensors' distance along x, mm, above 0
   * @param bMm half the sensors' distance along y, mm, above 0
   * @param az0Mm the top surface's z, mm, in the sensors' frame (C3D convention: negative with z
   *     down)
   * @param horizontalNPerUnit calibration of the four horizontal channels, N per exported unit
   * @param verticalNPerUnit calibration of the four vertical channels, N per exported unit
   */
  record EightChannels(
      Map<RawChannel, String> columns,
      double aMm,
      double bMm,
      double az0Mm,
      double horizontalNPerUnit,
      double verticalNPerUnit)
      implements Sensors {
    /**
     * @throws IllegalArgumentException if a channel is missing or a number is out of its range
     */
    public EightChannels {
      if (columns.size() != RawChannel.values().length) {
        throw new IllegalArgumentException("channels " + columns.keySet());
      }
      if (!(aMm > 0 && bMm > 0)
          || horizontalNPerUnit == 0
          || verticalNPerUnit == 0
          || !Double.isFinite(aMm + bMm + az0Mm + horizontalNPerUnit + verticalNPerUnit)) {
        throw new IllegalArgumentException("geometry or calibration of eight channels");
      }
      columns = Map.copyOf(columns);
    }
  }
}
