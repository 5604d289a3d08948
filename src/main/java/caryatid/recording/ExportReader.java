package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Unit;
import java.io.IOException;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;

/** Reads one export: bytes, tables, what the columns mean, tracks. */
final class ExportReader {
  private final NamedBytes export;
  private final Optional<PlateDescription> description;
  private final ExportForm form;
  private final Notebook notes;

  ExportReader(NamedBytes export, Optional<PlateDescription> description) {
    this.export = export;
    this.description = description;
    this.form = description.map(PlateDescription::form).orElse(ExportForm.UNSTATED);
    this.notes = new Notebook(export.name());
  }

  private record Read(List<Table> tables, Provenance provenance) {}

  Recording read() throws BadInput {
    Optional<Read> read = tables();
    stopIfBad();
    Optional<Table> table =
        read.flatMap(r -> new TableChoice(form.recording(), notes).choose(r.tables()));
    stopIfBad();
    return recording(table.orElseThrow(), read.orElseThrow().provenance());
  }

  private void stopIfBad() throws BadInput {
    if (!notes.clean()) {
      throw new BadInput(notes.problems());
    }
  }

  private Optional<Read> tables() {
    try {
      Optional<Charset> charset = form.encoding().map(Charset::forName);
      try (Intake intake = Intake.open(export, charset)) {
        return read(intake);
      }
    } catch (IllegalArgumentException e) {
      notes.problem(Reading.UNKNOWN_ENCODING, Argument.text(form.encoding().orElse("")));
    } catch (Lines.TooLong e) {
      notes.problem(Reading.LINE_TOO_LONG, Argument.count(Lines.LONGEST));
    } catch (IOException e) {
      notes.problem(Reading.UNREADABLE, Argument.text(String.valueOf(e.getMessage())));
    }
    return Optional.empty();
  }

  private Optional<Read> read(Intake intake) throws IOException {
    if (intake.binary()) {
      notes.problem(Reading.BINARY);
      return Optional.empty();
    }
    Lines lines = new Lines(intake.text(), intake.charset(), intake.lineEnd());
    Planner planner = new Planner(export.name(), description);
    List<Table> tables = new TableReader(lines, form, planner::plan, notes).read();
    if (lines.number() == 0) {
      notes.problem(Reading.EMPTY);
    } else if (tables.isEmpty() && notes.clean()) {
      notes.problem(Reading.NO_TABLE, Argument.count(lines.number()));
    }
    return Optional.of(new Read(tables, intake.provenance(export.name())));
  }

  private Recording recording(Table table, Provenance provenance) throws BadInput {
    List<PlatePlan> alive = new ArrayList<>();
    for (PlatePlan plan : table.plan().plates()) {
      if (plan.wanted().allMatch(i -> table.column(i).allZero())) {
        notes.remark(RecordingRemark.EMPTY_PLATE, Argument.text(plan.name()));
      } else {
        alive.add(plan);
      }
    }
    if (alive.isEmpty()) {
      notes.problem(Reading.UNLOADED, Argument.of(Load.LEAST_N, Unit.N));
    }
    Map<PlatePlan, PlateUnits> units = new LinkedHashMap<>();
    alive.forEach(plan -> units.put(plan, PlateUnits.of(plan, table.head(), notes)));
    Optional<Axes> axes = description.flatMap(PlateDescription::axes);
    new Questions(axes, VerticalAxis.seen(table, alive), units, notes).ask();
    Optional<Timeline> timeline = timeline(table);
    stopIfBad();
    return tracks(table, units, axes.orElseThrow(), timeline.orElseThrow(), provenance);
  }

  private Optional<Timeline> timeline(Table table) {
    TimeBase base = description.map(PlateDescription::time).orElse(TimeBase.UNSTATED);
    return new TimeBaseFinder(table, base, new Preamble(table.head()), notes).find(sameRow(table));
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

  private Recording tracks(
      Table table,
      Map<PlatePlan, PlateUnits> units,
      Axes axes,
      Timeline timeline,
      Provenance provenance)
      throws BadInput {
    List<PlateTrack> tracks = new ArrayList<>();
    for (PlatePlan plan : table.plan().plates()) {
      tracks.add(
          units.containsKey(plan)
              ? track(table, plan, units.get(plan), axes, timeline)
              : empty(plan, timeline.size()));
    }
    if (tracks.stream().allMatch(t -> t.usable().count() == 0)) {
      notes.problem(Reading.UNLOADED, Argument.of(Load.LEAST_N, Unit.N));
    }
    stopIfBad();
    return new Recording(provenance, timeline.timeS(), timeline.rateHz(), tracks, notes.remarks());
  }

  private PlateTrack track(
      Table table, PlatePlan plan, PlateUnits units, Axes axes, Timeline timeline) {
    PlateTrack track;
    if (plan.layout().sensors().orElse(null) instanceof Sensors.LoadCells cells) {
      track = LoadCellConversion.track(table, plan, cells, units.force().orElseThrow(), timeline);
    } else {
      PlateConversion conversion = new PlateConversion(table, plan, units, axes, timeline, notes);
      checkSense(conversion, plan);
      track = conversion.track();
    }
    plan.layout().size().ifPresent(edges -> new EdgeCheck(edges, notes).check(track));
    return track;
  }

  private void checkSense(PlateConversion conversion, PlatePlan plan) {
    Optional<PlateDescription.ForceIs> stated = description.flatMap(PlateDescription::forceIs);
    conversion
        .sense()
        .ifPresent(
            seen -> {
              if (stated.isEmpty()) {
                notes.remark(
                    RecordingRemark.FORCE_SENSE, Argument.text(plan.name()), Argument.term(seen));
              } else if (stated.get() != seen) {
                notes.problem(
                    Place.of(export.name()),
                    Reading.FORCE_SENSE,
                    Argument.text(plan.name()),
                    Argument.term(stated.get()),
                    Argument.term(seen));
              }
            });
  }

  private static PlateTrack empty(PlatePlan plan, int size) {
    Samples zeros = Samples.adopt(new double[size]);
    return new PlateTrack(
        plan.name(),
        zeros,
        zeros,
        Optional.of(zeros),
        Optional.empty(),
        new Usable(new java.util.BitSet(), size));
  }
}
