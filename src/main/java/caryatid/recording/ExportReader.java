package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.recording.Inspection.PlateView;
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
import java.util.OptionalDouble;
import java.util.function.BiPredicate;
import java.util.function.Supplier;

/** Reads one export: its bytes, its tables, what the columns mean, the plates' tracks. */
final class ExportReader {
  private final NamedBytes export;
  private final Optional<PlateDescription> description;
  private final Optional<Axes> axes;
  private final ExportForm form;
  private final Notebook notes;

  /** The plates, with what is known of their units; empty for those that carry nothing. */
  private final Map<PlatePlan, Optional<PlateUnits>> plates = new LinkedHashMap<>();

  /** Those that carry somebody. */
  private final Map<PlatePlan, PlateUnits> units = new LinkedHashMap<>();

  ExportReader(NamedBytes export, Optional<PlateDescription> description) {
    this.export = export;
    this.description = description;
    this.axes = description.flatMap(PlateDescription::axes);
    this.form = description.map(PlateDescription::form).orElse(ExportForm.UNSTATED);
    this.notes = new Notebook(export.name());
  }

  /**
   * The recording.
   *
   * @param provenance the bytes, known once they have been read
   */
  Recording read(Supplier<Provenance> provenance) throws BadInput {
    Optional<Table> table = table();
    if (table.isPresent()) {
      Optional<Timeline> timeline = understand(table.get());
      if (notes.clean()) {
        List<PlateTrack> tracks = tracks(table.get(), timeline.orElseThrow());
        if (notes.clean()) {
          return new Recording(
              provenance.get(),
              timeline.get().timeS(),
              timeline.get().rateHz(),
              tracks,
              notes.remarks());
        }
      }
    }
    throw new BadInput(notes.problems());
  }

  Inspection inspect() {
    Optional<Table> table = table();
    Optional<Timeline> timeline = table.flatMap(this::understand);
    // While the decimal mark is in question, a force may be read 1000 times too small.
    boolean readable = !notes.has(Reading.THOUSANDS);
    List<PlateView> views = table.filter(t -> readable).map(this::views).orElse(List.of());
    if (timeline.isPresent() && notes.clean()) {
      tracks(table.orElseThrow(), timeline.get());
    } else if (notes.problems().stream().allMatch(ExportReader::asks)) {
      table.ifPresent(this::remarkOddities);
    }
    List<Problem> questions = notes.problems().stream().filter(ExportReader::asks).toList();
    List<Problem> problems = notes.problems().stream().filter(p -> !asks(p)).toList();
    OptionalDouble rate =
        timeline.map(t -> OptionalDouble.of(t.rateHz())).orElse(OptionalDouble.empty());
    PlateDescription draft = new Draft(description).of(table, units);
    return new Inspection(
        notes.understood(), questions, problems, notes.remarks(), views, rate, draft);
  }

  private static boolean asks(Problem problem) {
    return problem.topic() instanceof Reading reading && reading.asks();
  }

  private Optional<Table> table() {
    Planner planner = new Planner(export.name(), description);
    List<Table> tables = new ExportText(export, form, planner, notes).read();
    Optional<Table> table = new TableChoice(form.recording(), notes).choose(tables);
    table
        .or(() -> tables.stream().findFirst())
        .ifPresent(shown -> new HeadFacts(shown, form, notes).note());
    if (table.isPresent() && tables.size() > 1) {
      notes.understood(Aspect.OTHER_TABLES, Basis.CONCLUDED, Argument.count(tables.size() - 1));
    }
    return table;
  }

  /** Settles units, axes and times, or asks for them; no times are sought in a damaged table. */
  private Optional<Timeline> understand(Table table) {
    boolean damaged = !notes.clean();
    plates.putAll(loadedPlates(table).find());
    plates.forEach((plan, known) -> known.ifPresent(u -> units.put(plan, u)));
    int vertical = loadedPlates(table).vertical(units);
    noteAxes(vertical);
    units.forEach(new UnitsByMoments(table, vertical, notes)::note);
    if (!notes.has(Reading.COMMA_TWICE)) {
      new Questions(table, axes, vertical, units, notes).ask();
    }
    return damaged ? Optional.empty() : timeline(table);
  }

  private LoadedPlates loadedPlates(Table table) {
    return new LoadedPlates(table, description, notes);
  }

  private void noteAxes(int vertical) {
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

  /** What can be told of the plates while questions are open. */
  private void remarkOddities(Table table) {
    RawOddities oddities = new RawOddities(table, loadedPlates(table).vertical(units), notes);
    units.forEach(oddities::remark);
  }

  private List<PlateView> views(Table table) {
    int vertical = loadedPlates(table).vertical(units);
    List<PlateView> views = new ArrayList<>();
    units.forEach(
        (plan, known) -> PlateViews.of(table, plan, vertical, known.force()).ifPresent(views::add));
    return views;
  }

  /** The plates' tracks; the columns of the table are used up. */
  private List<PlateTrack> tracks(Table table, Timeline timeline) {
    Tracks tracks = new Tracks(table, axes.orElseThrow(), timeline, description, notes);
    List<PlateTrack> all = new ArrayList<>();
    plates.forEach(
        (plan, known) ->
            all.add(
                known
                    .map(plateUnits -> tracks.track(plan, plateUnits))
                    .orElseGet(() -> Tracks.empty(plan, timeline.size()))));
    if (all.stream().allMatch(t -> t.usable().count() == 0) && !notes.has(Reading.FAR_OFF)) {
      boolean forces = all.stream().anyMatch(t -> t.upN().isPresent());
      notes.problem(
          forces ? Reading.UNLOADED : Reading.EMPTY_THROUGHOUT, Argument.of(Load.LEAST_N, Unit.N));
    }
    return all;
  }
}
