package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.recording.Channel.Quantity;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Asks for what neither the file nor the description states, each thing once for all plates. */
final class Questions {
  private final Table table;
  private final Notebook notes;
  private final Optional<Axes> axes;
  private final int vertical;
  private final Map<PlatePlan, PlateUnits> plates;

  /**
   * @param vertical the export's axis that seems vertical: 0 for x, 1 for y, 2 for z
   * @param plates the plates that carry somebody, with the units known of them
   */
  Questions(
      Table table,
      Optional<Axes> axes,
      int vertical,
      Map<PlatePlan, PlateUnits> plates,
      Notebook notes) {
    this.table = table;
    this.axes = axes;
    this.vertical = vertical;
    this.plates = plates;
    this.notes = notes;
  }

  void ask() {
    UnitEvidence evidence = new UnitEvidence(table, vertical);
    ask(Reading.COP_UNIT, p -> exported(p) && unstated(p, Quantity.COP), evidence::ofCop);
    ask(
        Reading.FORCE_UNIT,
        p -> needsForceUnit(p) && unstated(p, Quantity.FORCE),
        evidence::ofForce);
    ask(Reading.MOMENT_UNIT, p -> fromMoments(p) && unstated(p, Quantity.MOMENT));
    ask(Reading.TRUE_ORIGIN, p -> fromMoments(p) && p.layout().trueOrigin().isEmpty());
    if (plates.size() > 1) {
      ask(Reading.EXPORT_ORIGIN, p -> p.layout().exportOrigin().isEmpty());
    }
    axes.ifPresentOrElse(this::checkAxes, this::askAxes);
  }

  private boolean unstated(PlatePlan plan, Quantity quantity) {
    return plates.get(plan).unstated(quantity);
  }

  static boolean exported(PlatePlan plan) {
    return plan.count(Quantity.COP) >= 2;
  }

  private static boolean fromMoments(PlatePlan plan) {
    return !exported(plan) && plan.sensors().isEmpty();
  }

  private static boolean needsForceUnit(PlatePlan plan) {
    return plan.count(Quantity.FORCE) > 0
        || plan.layout().sensors().orElse(null) instanceof Sensors.LoadCells;
  }

  /** One question for all plates it concerns, by the columns they have. */
  private void ask(Reading question, Predicate<PlatePlan> concerns) {
    ask(question, concerns, concerned -> List.of());
  }

  /** The same with what helps to answer it. */
  private void ask(
      Reading question,
      Predicate<PlatePlan> concerns,
      Function<List<PlatePlan>, List<Argument>> evidence) {
    List<PlatePlan> concerned = plates.keySet().stream().filter(concerns).toList();
    if (!concerned.isEmpty()) {
      String names = concerned.stream().map(PlatePlan::name).collect(Collectors.joining(", "));
      List<Argument> arguments = new ArrayList<>(List.of(Argument.text(names)));
      arguments.addAll(evidence.apply(concerned));
      notes.problem(question, arguments.toArray(new Argument[0]));
    }
  }

  private void askAxes() {
    boolean yUp = vertical == 1;
    notes.problem(
        Reading.AXES,
        Argument.text(
            yUp
                ? "axes: {right: +z, anterior: +x, up: +y}"
                : "axes: {right: +x, anterior: +y, up: +z}"));
  }

  private void checkAxes(Axes known) {
    boolean handed =
        plates.keySet().stream()
            .anyMatch(p -> fromMoments(p) || !p.sensors().isEmpty() || p.count(Quantity.FORCE) > 1);
    if (handed && !known.rightHanded()) {
      notes.problem(Reading.LEFT_HANDED, Argument.text(AxesText.of(known)));
    }
    plates.keySet().forEach(p -> check(p, known));
  }

  private void check(PlatePlan plan, Axes known) {
    if (!plan.sensors().isEmpty()) {
      return;
    }
    Frame frame = new Frame(known);
    if (exported(plan)) {
      require(plan, frame.right(Quantity.COP), Reading.COP_COLUMNS);
      require(plan, frame.anterior(Quantity.COP), Reading.COP_COLUMNS);
    } else {
      require(plan, frame.right(Quantity.MOMENT), Reading.MOMENT_COLUMNS);
      require(plan, frame.anterior(Quantity.MOMENT), Reading.MOMENT_COLUMNS);
    }
    if (plan.count(Quantity.FORCE) > 0) {
      require(plan, frame.up(Quantity.FORCE), Reading.VERTICAL_FORCE);
    }
    plan.layout().trueOrigin().ifPresent(o -> checkOrigin(plan, o, frame));
  }

  private void checkOrigin(PlatePlan plan, PlateLayout.TrueOrigin origin, Frame frame) {
    double[] position = {origin.xMm(), origin.yMm(), origin.zMm()};
    double along = position[frame.axes().up().axis()] * frame.axes().up().sign();
    if (along > 0) {
      notes.problem(Reading.ORIGIN_ABOVE, Argument.text(plan.name()));
    }
    if (along != 0 && fromMoments(plan)) {
      require(plan, frame.right(Quantity.FORCE), Reading.HORIZONTAL_FORCE);
      require(plan, frame.anterior(Quantity.FORCE), Reading.HORIZONTAL_FORCE);
    }
  }

  private void require(PlatePlan plan, Channel channel, Reading problem) {
    if (!plan.has(channel)) {
      Place place = new Place(notes.file(), OptionalInt.empty(), Optional.empty());
      notes.problem(
          place, problem, Argument.text(plan.name()), Argument.text(AxesText.key(channel)));
    }
  }
}
