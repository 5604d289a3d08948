package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.recording.Understood.Basis;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;

/** Reads one export: its bytes, its tables, what the columns mean, the plates' tracks. */
final class ExportReader {
  private final NamedBytes export;
  private final Optional<PlateDescription> description;
  private final ExportForm form;
  private final Notebook notes;
  private final Map<PlatePlan, PlateUnits> units = new LinkedHashMap<>();
  private final List<Inspection.PlateView> views = new ArrayList<>();
  private Optional<Provenance> provenance = Optional.empty();
  private boolean lookAtPlates;

  ExportReader(NamedBytes export, Optional<PlateDescription> description) {
    this.export = export;
    this.description = description;
    this.form = description.map(PlateDescription::form).orElse(ExportForm.UNSTATED);
    this.notes = new Notebook(export.name());
  }

  Recording read() throws BadInput {
    Optional<Recording> recording = table().flatMap(this::recording);
    if (!notes.clean()) {
      throw new BadInput(notes.problems());
    }
    return recording.orElseThrow();
  }

  Inspection inspect() {
    Optional<Table> table = table();
    lookAtPlates = true;
    table.ifPresent(this::recording);
    List<Problem> questions = notes.problems().stream().filter(ExportReader::asks).toList();
    List<Problem> problems = notes.problems().stream().filter(p -> !asks(p)).toList();
    PlateDescription draft = new Draft(description).of(table, units);
    return new Inspection(
        provenance, notes.understood(), questions, problems, notes.remarks(), views, draft);
  }

  private static boolean asks(Problem problem) {
    return problem.topic() instanceof Reading reading && reading.asks();
  }

  private Optional<Table> table() {
    Planner planner = new Planner(export.name(), description);
    Optional<ExportText.Tables> text = new ExportText(export, form, planner, notes).read();
    provenance = text.map(ExportText.Tables::provenance);
    Optional<Table> table =
        text.flatMap(t -> new TableChoice(form.recording(), notes).choose(t.tables()));
    table.ifPresent(t -> new HeadFacts(t, form, notes).note());
    if (table.isPresent() && text.orElseThrow().tables().size() > 1) {
      int others = text.get().tables().size() - 1;
      notes.understood(Aspect.OTHER_TABLES, Basis.CONCLUDED, Argument.count(others));
    }
    return table;
  }

  private Optional<Recording> recording(Table table) {
    boolean damaged = !notes.clean();
    plates(table);
    Optional<Axes> axes = description.flatMap(PlateDescription::axes);
    int vertical =
        axes.map(a -> a.up().axis()).orElseGet(() -> VerticalAxis.seen(table, units.keySet()));
    noteAxes(axes, vertical);
    new Questions(axes, vertical, units, notes).ask();
    Optional<Timeline> timeline = damaged ? Optional.empty() : timeline(table);
    if (lookAtPlates) {
      units.forEach(
          (plan, known) ->
              PlateViews.of(table, plan, vertical, known.force()).ifPresent(views::add));
    }
    if (!notes.clean()) {
      return Optional.empty();
    }
    return tracks(table, axes.orElseThrow(), timeline.orElseThrow());
  }

  /** Tells the plates that carry somebody from those that carry nothing at all. */
  private void plates(Table table) {
    UnitFinder finder = new UnitFinder(table.head(), notes);
    for (PlatePlan plan : table.plan().plates()) {
      if (plan.wanted().allMatch(i -> table.column(i).allZero())) {
        notes.remark(RecordingRemark.EMPTY_PLATE, Argument.text(plan.name()));
      } else {
        units.put(plan, finder.units(plan));
      }
    }
    if (units.isEmpty() && notes.clean()) {
      notes.problem(Reading.UNLOADED, Argument.of(Load.LEAST_N, Unit.N));
    }
  }

  private void noteAxes(Optional<Axes> axes, int vertical) {
    axes.ifPresent(
        known -> notes.understood(Aspect.AXES, Basis.DESCRIBED, Argument.text(AxesText.of(known))));
    boolean forces = units.keySet().stream().anyMatch(p -> p.count(Channel.Quantity.FORCE) > 1);
    if (axes.isEmpty() && forces) {
      String axis = String.valueOf("xyz".charAt(vertical));
      notes.understood(Aspect.VERTICAL, Basis.CONCLUDED, Argument.text(axis));
    }
  }

  private Optional<Timeline> timeline(Table table) {
    TimeBase base = description.map(PlateDescription::time).orElse(TimeBase.UNSTATED);
    Preamble preamble = new Preamble(table.head());
    new PreambleFacts(preamble, notes).note(table.rows());
    return new TimeBaseFinder(table, base, preamble, notes).find(sameRow(table));
  }

  private static BiPredicate<Integer, Integer> sameRow(Table table) {
    List<Column> columns =
        table.plan().plates().stream()
            .flatMap(PlatePlan::wanted)
            .distinct()
            .map(table::column)
            .toList();
    return (a, b) -> columns.stream().allMatch(c -> c.at(a) == c.at(b));
  }

  private Optional<Recording> tracks(Table table, Axes axes, Timeline timeline) {
    Tracks tracks = new Tracks(table, axes, timeline, description, notes);
    List<PlateTrack> all = new ArrayList<>();
    for (PlatePlan plan : table.plan().plates()) {
      all.add(
          units.containsKey(plan)
              ? tracks.track(plan, units.get(plan))
              : Tracks.empty(plan, timeline.size()));
    }
    if (all.stream().allMatch(t -> t.usable().count() == 0)) {
      notes.problem(Reading.UNLOADED, Argument.of(Load.LEAST_N, Unit.N));
    }
    return notes.clean()
        ? Optional.of(
            new Recording(
                provenance.orElseThrow(),
                timeline.timeS(),
                timeline.rateHz(),
                all,
                notes.remarks()))
        : Optional.empty();
  }
}
