package caryatid.recording.track;

import caryatid.geometry.Axes;
import caryatid.geometry.Axis;
import caryatid.geometry.Direction;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Sensors;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The questions about what neither the file nor the description states, each asked once for all
 * plates.
 */
public final class OpenQuestions {
  private final ParsedTable table;
  private final StageMessages nothing;
  private final Optional<Axes> axes;
  private final Axis vertical;
  private final Map<PlateColumns, PlateUnits> plates;

  /**
   * @param vertical the export's axis that seems vertical
   * @param plates the plates that carry somebody, with the units known of them
   */
  public OpenQuestions(
      ParsedTable table,
      Optional<Axes> axes,
      Axis vertical,
      Map<PlateColumns, PlateUnits> plates,
      String file) {
    this.table = table;
    this.axes = axes;
    this.vertical = vertical;
    this.plates = plates;
    this.nothing = StageMessages.none(file);
  }

  public StageMessages ask() {
    UnitEvidence evidence = new UnitEvidence(table, vertical);
    StageMessages origins =
        plates.size() > 1
            ? ask(ImportProblem.EXPORT_ORIGIN, p -> p.layout().exportOrigin().isEmpty())
            : nothing;
    return ask(ImportProblem.ONE_DIRECTION, p -> !p.tellsCop())
        .and(
            ask(
                ImportProblem.COP_UNIT,
                p -> exported(p) && unstated(p, Quantity.COP),
                evidence::ofCop))
        .and(
            ask(
                ImportProblem.FORCE_UNIT,
                p -> needsForceUnit(p) && unstated(p, Quantity.FORCE),
                evidence::ofForce))
        .and(ask(ImportProblem.MOMENT_UNIT, p -> fromMoments(p) && unstated(p, Quantity.MOMENT)))
        .and(
            ask(
                ImportProblem.TRUE_ORIGIN,
                p -> fromMoments(p) && p.layout().trueOrigin().isEmpty()))
        .and(origins)
        .and(axes.map(this::checkedAxes).orElseGet(this::askAxes));
  }

  private boolean unstated(PlateColumns plate, Quantity quantity) {
    return plates.get(plate).unstated(quantity);
  }

  static boolean exported(PlateColumns plate) {
    return plate.count(Quantity.COP) >= plate.directions();
  }

  private static boolean fromMoments(PlateColumns plate) {
    return !exported(plate) && plate.sensors().isEmpty();
  }

  private static boolean needsForceUnit(PlateColumns plate) {
    return plate.count(Quantity.FORCE) > 0
        || plate.layout().sensors().orElse(null) instanceof Sensors.LoadCells;
  }

  /** One question for all plates it concerns, by the columns they have. */
  private StageMessages ask(ImportProblem question, Predicate<PlateColumns> concerns) {
    return ask(question, concerns, concerned -> List.of());
  }

  /** The same with what helps to answer it. */
  private StageMessages ask(
      ImportProblem question,
      Predicate<PlateColumns> concerns,
      Function<List<PlateColumns>, List<Argument>> evidence) {
    List<PlateColumns> concerned = plates.keySet().stream().filter(concerns).toList();
    if (concerned.isEmpty()) {
      return nothing;
    }
    String names = concerned.stream().map(PlateColumns::name).collect(Collectors.joining(", "));
    List<Argument> arguments = new ArrayList<>(List.of(Argument.text(names)));
    arguments.addAll(evidence.apply(concerned));
    return nothing.withProblem(question, arguments.toArray(new Argument[0]));
  }

  private StageMessages askAxes() {
    return nothing.withProblem(ImportProblem.AXES);
  }

  private StageMessages checkedAxes(Axes known) {
    boolean handed =
        plates.keySet().stream()
            .anyMatch(p -> fromMoments(p) || !p.sensors().isEmpty() || p.count(Quantity.FORCE) > 1);
    StageMessages messages = known.rightHanded() ? nothing : leftHanded(known, handed);
    for (PlateColumns plate : plates.keySet()) {
      messages = messages.and(checked(plate, known));
    }
    return messages;
  }

  /**
   * A centre of pressure alone has a meaning in any axes, and some exports of one are left-handed;
   * mostly a sign is wrong.
   */
  private StageMessages leftHanded(Axes known, boolean handed) {
    Argument axesText = Argument.text(AxesText.of(known));
    return handed
        ? nothing.withProblem(ImportProblem.LEFT_HANDED, axesText)
        : nothing.withRemark(RecordingRemark.LEFT_HANDED, axesText);
  }

  private StageMessages checked(PlateColumns plate, Axes known) {
    if (!plate.sensors().isEmpty() || !plate.tellsCop()) {
      return nothing;
    }
    StageMessages centre =
        exported(plate)
            ? requireHorizontal(plate, Quantity.COP, known, ImportProblem.COP_COLUMNS)
            : requireHorizontal(plate, Quantity.MOMENT, known, ImportProblem.MOMENT_COLUMNS);
    StageMessages force =
        plate.count(Quantity.FORCE) > 0
            ? require(plate, Quantity.FORCE, known.up(), ImportProblem.VERTICAL_FORCE)
            : nothing;
    return centre
        .and(force)
        .and(plate.layout().trueOrigin().map(o -> checked(plate, o, known)).orElse(nothing));
  }

  private StageMessages checked(PlateColumns plate, PlateLayout.TrueOrigin origin, Axes known) {
    double along = origin.mm(known.up().axis()) * known.up().sign();
    StageMessages above =
        along > 0
            ? nothing.withProblem(ImportProblem.ORIGIN_ABOVE, Argument.text(plate.name()))
            : deep(plate, -along);
    return along != 0 && fromMoments(plate)
        ? above.and(requireHorizontal(plate, Quantity.FORCE, known, ImportProblem.HORIZONTAL_FORCE))
        : above;
  }

  private StageMessages deep(PlateColumns plate, double depthMm) {
    return depthMm > TrackLimits.DEEPEST_ZERO_MM
        ? nothing.withProblem(
            ImportProblem.ORIGIN_DEEP,
            Argument.text(plate.name()),
            Argument.of(TrackLimits.DEEPEST_ZERO_MM, Unit.MM),
            Argument.of(depthMm, Unit.MM))
        : nothing;
  }

  private StageMessages requireHorizontal(
      PlateColumns plate, Quantity quantity, Axes known, ImportProblem problem) {
    // A centre of pressure moves along one axis by the moment about the other.
    Direction foreAndAft = quantity == Quantity.MOMENT ? known.right() : known.anterior();
    return plate.measures().sideways()
        ? require(plate, quantity, known.right(), problem)
            .and(require(plate, quantity, known.anterior(), problem))
        : require(plate, quantity, foreAndAft, problem);
  }

  private StageMessages require(
      PlateColumns plate, Quantity quantity, Direction along, ImportProblem problem) {
    Channel channel = Channel.of(quantity, along.axis());
    return plate.has(channel)
        ? nothing
        : nothing.withProblem(
            problem, Argument.text(plate.name()), Argument.text(AxesText.key(channel)));
  }
}
