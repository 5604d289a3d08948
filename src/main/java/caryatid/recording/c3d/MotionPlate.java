package caryatid.recording.c3d;

import caryatid.geometry.Direction;
import caryatid.recording.model.Channel;
import caryatid.recording.model.MeasuredDirections;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateLayout.TrueOrigin;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plate of the file under the name it has in the description.
 *
 * @param name in the description, else {@code plate 1} and so on
 * @param spec what the file states of it
 * @param columns what it recorded
 */
record MotionPlate(String name, PlateSpec spec, List<PlateChannels.Columns> columns) {
  MotionPlate {
    columns = List.copyOf(columns);
  }

  /** The name of a column, with its unit where that is known. */
  String column(PlateChannels.Columns held, int index) {
    String quantity =
        switch (held.quantity()) {
          case FORCE -> "F";
          case MOMENT -> "M";
          case COP -> "COP";
        };
    String unit = held.unit().isEmpty() ? "" : " (" + held.unit() + ")";
    return quantity + "xyz".charAt(index) + " " + spec.number() + unit;
  }

  private boolean pressure() {
    return spec.type() == 1;
  }

  /**
   * The zero-moment point from the centre of the top, along the laboratory's axes; {@code ORIGIN}
   * reversed, and of a plate of type 3 its height alone. It lies below the top.
   *
   * @param up where up is; empty for away from the plate's z axis, as c3d.org has it
   */
  Optional<Origin> origin(Optional<Direction> up) {
    if (pressure()) {
      return Optional.empty();
    }
    boolean level = spec.type() == 3;
    LabVector written = spec.originMm();
    LabVector stated =
        spec.frame().toLab(level ? 0 : -written.x(), level ? 0 : -written.y(), -written.z());
    double above = up.map(stated::along).orElseGet(() -> -stated.dot(spec.frame().z()));
    return Optional.of(above > 0 ? new Origin(stated.times(-1), true) : new Origin(stated, false));
  }

  /**
   * A zero-moment point.
   *
   * @param lab from the centre of the top
   * @param reversed whether the file has it above the top, so that its sign was turned
   */
  record Origin(LabVector lab, boolean reversed) {}

  /** Whether the plate's z axis points up, where c3d.org has it point down. */
  boolean upsideDown(Direction up) {
    return spec.frame().z().along(up) > 0;
  }

  /** What the file states of the plate, and the description of units where the file does not. */
  PlateLayout layout(
      Optional<PersonFrame> person, Optional<PlateLayout> stated, Optional<Direction> up) {
    Map<Channel, String> columns = new EnumMap<>(Channel.class);
    for (PlateChannels.Columns held : this.columns) {
      for (int i = 0; i < 3; i++) {
        columns.put(held.channel(i), column(held, i));
      }
    }
    return new PlateLayout(
        name,
        columns,
        stated.flatMap(PlateLayout::copUnit),
        stated.flatMap(PlateLayout::forceUnit),
        stated.flatMap(PlateLayout::momentUnit),
        person.map(frame -> frame.extent(spec.frame())),
        origin(up).map(o -> new TrueOrigin(o.lab().x(), o.lab().y(), o.lab().z())),
        person.map(frame -> frame.place(spec.frame().centre())),
        Optional.empty(),
        stated.map(PlateLayout::measures).orElse(MeasuredDirections.BOTH));
  }
}
