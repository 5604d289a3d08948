package caryatid.recording.importer;

import caryatid.geometry.Axes;
import caryatid.geometry.Axis;
import caryatid.recording.c3d.C3dExport;
import caryatid.recording.model.Channel;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.Markers;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.TimeBase;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.table.ExportText;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.Preamble;
import caryatid.recording.table.StageMessages;
import caryatid.recording.time.PreambleFacts;
import caryatid.recording.time.TimeBaseFinder;
import caryatid.recording.time.Timed;
import caryatid.recording.time.Timeline;
import caryatid.recording.track.AxesText;
import caryatid.recording.track.ColumnMapper;
import caryatid.recording.track.HeaderFacts;
import caryatid.recording.track.LoadedPlates;
import caryatid.recording.track.OpenQuestions;
import caryatid.recording.track.PlateUnits;
import caryatid.recording.track.TrackBuilder;
import caryatid.recording.track.TrackLimits;
import caryatid.recording.track.UnitFinder;
import caryatid.recording.track.UnitsByMoments;
import caryatid.remark.Argument;
import caryatid.remark.Problem;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * The stages of reading an export: the bytes parsed, the columns mapped, the rows timed, the
 * plates' tracks. Each is a value; its messages are those of the stages before it and its own.
 */
final class Stages {
  private final NamedBytes export;
  private final String file;
  private final Optional<MotionFile> motion;
  private final Optional<WorkbookFile> workbook;
  private final Optional<PlateDescription> description;
  private final Optional<Axes> axes;
  private final ExportLayout layout;

  Stages(NamedBytes export, Optional<PlateDescription> stated) {
    this.export = export;
    this.file = export.name();
    this.motion = MotionFile.of(export, stated);
    this.workbook = motion.isPresent() ? Optional.empty() : WorkbookFile.of(export);
    this.description =
        motion.flatMap(MotionFile::export).map(C3dExport::description).or(() -> stated);
    this.axes = description.flatMap(PlateDescription::axes);
    this.layout = description.map(PlateDescription::layout).orElse(ExportLayout.UNSTATED);
  }

  /** What the export means: as described, and what a file without text states of itself. */
  Optional<PlateDescription> description() {
    return description;
  }

  /** What markers show. */
  Markers markers() {
    return motion.flatMap(MotionFile::export).map(C3dExport::markers).orElse(Markers.NONE);
  }

  /** The tables, and the one that holds the plate. */
  Parsed parsed() {
    ColumnMapper mapper = new ColumnMapper(file, description);
    return motion
        .map(MotionFile::parsed)
        .or(() -> workbook.map(book -> book.tables(layout, mapper::map).parsed(layout)))
        .orElseGet(() -> parsedText(mapper));
  }

  private Parsed parsedText(ColumnMapper mapper) {
    Outcome<List<ParsedTable>> read = new ExportText(export, layout, mapper::map).read();
    List<ParsedTable> tables = read.value();
    Outcome<Optional<ParsedTable>> choice = choice(tables, read.messages());
    StageMessages messages = read.messages().and(choice.messages());
    Optional<ParsedTable> shown = choice.value().or(() -> tables.stream().findFirst());
    if (shown.isPresent()) {
      messages = messages.and(new HeaderFacts(shown.get(), layout).of(file));
    }
    if (choice.value().isPresent() && tables.size() > 1) {
      messages =
          messages.withFact(
              ImportFact.OTHER_TABLES, Basis.CONCLUDED, Argument.count(tables.size() - 1));
    }
    return new Parsed(choice.value(), shown, messages, Optional.empty());
  }

  /** The table that holds the plate; none where names and columns do not belong together. */
  private Outcome<Optional<ParsedTable>> choice(List<ParsedTable> tables, StageMessages read) {
    return shifted(read)
        ? new Outcome<>(Optional.empty(), StageMessages.none(file))
        : new TableChoice(layout.recording(), file, table -> "").choose(tables);
  }

  /** Whether names and columns do not belong together. */
  static boolean shifted(StageMessages read) {
    return read.has(ImportProblem.NAMES_COUNT) || read.has(ImportProblem.NAMES_COUNT_DESCRIBED);
  }

  /** Settles units and axes, or asks for them. */
  Mapped mapped(ParsedTable table, StageMessages earlier) {
    UnitFinder units = new UnitFinder(table.head(), file);
    LoadedPlates finder = new LoadedPlates(table, description, file);
    Outcome<Map<PlateColumns, Optional<PlateUnits>>> plates = finder.find(units, earlier);
    Map<PlateColumns, PlateUnits> loaded = Mapped.loaded(plates.value());
    Axis vertical = finder.vertical(loaded);
    StageMessages messages = plates.messages().and(axesFacts(loaded, vertical));
    UnitsByMoments byMoments = new UnitsByMoments(table, vertical, file);
    for (Map.Entry<PlateColumns, PlateUnits> each : loaded.entrySet()) {
      messages = messages.and(byMoments.pairs(each.getKey(), each.getValue()));
    }
    if (!messages.has(ImportProblem.COMMA_TWICE)) {
      messages = messages.and(asked(table, vertical, loaded));
    }
    return new Mapped(plates.value(), vertical, messages);
  }

  /** What is open; where the plates of a motion file lie follows from its axes. */
  private StageMessages asked(
      ParsedTable table, Axis vertical, Map<PlateColumns, PlateUnits> loaded) {
    StageMessages asked = new OpenQuestions(table, axes, vertical, loaded, file).ask();
    return motion.isPresent() ? asked.without(ImportProblem.EXPORT_ORIGIN) : asked;
  }

  private boolean axesFromMarkers() {
    return motion.flatMap(MotionFile::export).filter(C3dExport::axesFromMarkers).isPresent();
  }

  private StageMessages axesFacts(Map<PlateColumns, PlateUnits> loaded, Axis vertical) {
    StageMessages nothing = StageMessages.none(file);
    if (axes.isPresent()) {
      return nothing.withFact(
          ImportFact.AXES,
          axesFromMarkers() ? Basis.CONCLUDED : Basis.DESCRIBED,
          Argument.text(AxesText.of(axes.get())));
    }
    boolean forces = loaded.keySet().stream().anyMatch(p -> p.count(Channel.Quantity.FORCE) > 1);
    return forces
        ? nothing.withFact(
            ImportFact.VERTICAL, Basis.CONCLUDED, Argument.text(String.valueOf(vertical.letter())))
        : nothing;
  }

  /**
   * The times; none are sought in a damaged table.
   *
   * @param table the table
   * @param parsed what was found in the table as it is
   * @param earlier that, and what was found of its meaning
   */
  Timed timed(ParsedTable table, StageMessages parsed, StageMessages earlier) {
    if (!parsed.clean()) {
      return Timed.unsought(earlier);
    }
    if (motion.isPresent()) {
      return motion.get().timed(earlier);
    }
    TimeBase base = description.map(PlateDescription::time).orElse(TimeBase.UNSTATED);
    Preamble preamble = new Preamble(table.head());
    StageMessages stated = earlier.and(new PreambleFacts(preamble, file).of(table.rows()));
    Timed found = new TimeBaseFinder(table, base, preamble, file).find(sameRow(table));
    return found.with(stated.and(found.messages()));
  }

  private static BiPredicate<Integer, Integer> sameRow(ParsedTable table) {
    List<NumberColumn> columns =
        table.mapping().plates().stream()
            .flatMap(PlateColumns::wanted)
            .distinct()
            .map(table::column)
            .toList();
    return (a, b) -> columns.stream().allMatch(c -> c.at(a) == c.at(b));
  }

  /** The plates' tracks. */
  Plates plates(ParsedTable table, Mapped mapped, Timeline timeline, StageMessages earlier) {
    TrackBuilder tracks = new TrackBuilder(table, axes.orElseThrow(), timeline, description, file);
    StageMessages messages = earlier;
    List<PlateTrack> all = new ArrayList<>();
    for (Map.Entry<PlateColumns, Optional<PlateUnits>> each : mapped.plates().entrySet()) {
      Outcome<PlateTrack> track = tracks.track(each.getKey(), each.getValue());
      messages = messages.and(track.messages());
      all.add(track.value());
    }
    boolean usable = all.stream().anyMatch(t -> t.usable().count() > 0);
    if (!usable && !messages.has(ImportProblem.FAR_OFF)) {
      boolean forces = all.stream().anyMatch(t -> t.upN().isPresent());
      messages =
          messages.withProblem(
              forces ? ImportProblem.UNLOADED : ImportProblem.EMPTY_THROUGHOUT,
              Argument.of(TrackLimits.LEAST_N, Unit.N));
    }
    return new Plates(all, messages.and(new MarkerChecks(markers(), file).of(all)));
  }

  /**
   * The first stage: a file's bytes read into tables, of which one holds the plate.
   *
   * @param table that one; empty, with a problem, where none does
   * @param shown that one, or else the first
   * @param messages what was found on the way
   * @param sheet the sheet of a workbook that holds it
   */
  record Parsed(
      Optional<ParsedTable> table,
      Optional<ParsedTable> shown,
      StageMessages messages,
      Optional<ReadSheet> sheet) {
    /** Problems of this and later stages with their places as the file has them. */
    List<Problem> located(List<Problem> problems) {
      return sheet.map(s -> s.located(problems, shown)).orElse(problems);
    }
  }

  /**
   * The second stage: what a table's columns mean.
   *
   * @param plates all plates, in their order, with what is known of their units; empty for a plate
   *     that carries nobody
   * @param vertical the export's vertical axis, as described or as it seems
   * @param messages what was found on the way, and what is asked
   */
  public record Mapped(
      Map<PlateColumns, Optional<PlateUnits>> plates, Axis vertical, StageMessages messages) {
    public Mapped {
      plates = Collections.unmodifiableMap(new LinkedHashMap<>(plates));
    }

    /** There is no table. */
    public static Mapped none(StageMessages messages) {
      return new Mapped(Map.of(), Axis.Z, messages);
    }

    /** The plates that carry somebody. */
    public Map<PlateColumns, PlateUnits> loaded() {
      return loaded(plates);
    }

    /** Those plates that carry somebody. */
    public static Map<PlateColumns, PlateUnits> loaded(
        Map<PlateColumns, Optional<PlateUnits>> plates) {
      Map<PlateColumns, PlateUnits> loaded = new LinkedHashMap<>();
      plates.forEach((plate, known) -> known.ifPresent(units -> loaded.put(plate, units)));
      return Collections.unmodifiableMap(loaded);
    }
  }

  /**
   * The last stage: what each plate recorded.
   *
   * @param tracks one a plate, in the plates' order
   * @param messages what was found on the way
   */
  public record Plates(List<PlateTrack> tracks, StageMessages messages) {
    public Plates {
      tracks = List.copyOf(tracks);
    }
  }
}
