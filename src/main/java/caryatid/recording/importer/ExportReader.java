package caryatid.recording.importer;

import caryatid.geometry.Axes;
import caryatid.geometry.Axis;
import caryatid.recording.model.Channel;
import caryatid.recording.model.ExportForm;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportFinding.Basis;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.Inspection.PlateView;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.recording.model.Sampled;
import caryatid.recording.model.TimeBase;
import caryatid.recording.table.ExportText;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.Preamble;
import caryatid.recording.table.StageFindings;
import caryatid.recording.time.PreambleFacts;
import caryatid.recording.time.TimeBaseFinder;
import caryatid.recording.time.Timed;
import caryatid.recording.time.Timeline;
import caryatid.recording.track.AxesText;
import caryatid.recording.track.ColumnMapper;
import caryatid.recording.track.DescriptionDraft;
import caryatid.recording.track.HeaderFacts;
import caryatid.recording.track.LoadedPlates;
import caryatid.recording.track.Mapped;
import caryatid.recording.track.OpenQuestions;
import caryatid.recording.track.PlateUnits;
import caryatid.recording.track.PlateViews;
import caryatid.recording.track.Plates;
import caryatid.recording.track.RawOddities;
import caryatid.recording.track.TableChoice;
import caryatid.recording.track.TrackBuilder;
import caryatid.recording.track.TrackLimits;
import caryatid.recording.track.UnitsByMoments;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Reads one export in stages: its bytes into tables, what the columns mean, the times, the plates'
 * tracks. Each stage is a value; its findings are those of the stages before it and its own.
 */
final class ExportReader {
  private final NamedBytes export;
  private final String file;
  private final Optional<PlateDescription> description;
  private final Optional<Axes> axes;
  private final ExportForm form;

  ExportReader(NamedBytes export, Optional<PlateDescription> description) {
    this.export = export;
    this.file = export.name();
    this.description = description;
    this.axes = description.flatMap(PlateDescription::axes);
    this.form = description.map(PlateDescription::form).orElse(ExportForm.UNSTATED);
  }

  /**
   * The recording.
   *
   * @param provenance the bytes, known once they have been read
   */
  Recording read(Supplier<Provenance> provenance) throws BadInput {
    Parsed parsed = parsed();
    if (parsed.table().isEmpty()) {
      throw new BadInput(parsed.findings().problems());
    }
    ParsedTable table = parsed.table().get();
    Mapped mapped = mapped(table, parsed.findings());
    Timed timed = timed(table, parsed.findings(), mapped.findings());
    if (!timed.findings().clean()) {
      throw new BadInput(timed.findings().problems());
    }
    Timeline timeline = timed.timeline().orElseThrow();
    Plates plates = plates(table, mapped, timeline, timed.findings());
    if (!plates.findings().clean()) {
      throw new BadInput(plates.findings().problems());
    }
    return new Recording(
        provenance.get(),
        timeline.timeS(),
        timeline.rateHz(),
        plates.tracks(),
        plates.findings().remarks());
  }

  Inspection inspect() {
    Parsed parsed = parsed();
    if (parsed.table().isEmpty()) {
      StageFindings findings = parsed.findings();
      return inspection(
          parsed, Mapped.none(findings), Timed.unsought(findings), List.of(), Optional.empty());
    }
    ParsedTable table = parsed.table().get();
    Mapped mapped = mapped(table, parsed.findings());
    Timed timed = timed(table, parsed.findings(), mapped.findings());
    // While the decimal mark is in question, a force may be read 1000 times too small.
    boolean readable = !timed.findings().has(ImportProblem.THOUSANDS);
    List<PlateView> views = readable ? views(table, mapped) : List.of();
    if (timed.timeline().isPresent() && timed.findings().clean()) {
      Timeline timeline = timed.timeline().get();
      Plates plates = plates(table, mapped, timeline, timed.findings());
      Optional<Sampled> sampled =
          plates.findings().clean()
              ? Optional.of(new SampledTracks(export.name(), timeline, plates.tracks()))
              : Optional.empty();
      return inspection(parsed, mapped, timed.with(plates.findings()), views, sampled);
    }
    return inspection(parsed, mapped, withOddities(table, mapped, timed), views, Optional.empty());
  }

  /** The times, with what is known of the plates where only answers are missing. */
  private Timed withOddities(ParsedTable table, Mapped mapped, Timed timed) {
    StageFindings findings = timed.findings();
    return findings.problems().stream().allMatch(ExportReader::asks)
        ? timed.with(findings.and(oddities(table, mapped)))
        : timed;
  }

  private Inspection inspection(
      Parsed parsed, Mapped mapped, Timed timed, List<PlateView> views, Optional<Sampled> sampled) {
    StageFindings findings = timed.findings();
    return new Inspection(
        findings.understood(),
        findings.problems().stream().filter(ExportReader::asks).toList(),
        findings.problems().stream().filter(p -> !asks(p)).toList(),
        findings.remarks(),
        views,
        timed.rateHz(),
        new DescriptionDraft(description, asked(findings))
            .of(
                parsed.table(),
                parsed.shown().map(ParsedTable::head),
                mapped.loaded(),
                timed.unit()),
        sampled);
  }

  private static Set<ImportProblem> asked(StageFindings findings) {
    return findings.problems().stream()
        .filter(ExportReader::asks)
        .map(problem -> (ImportProblem) problem.topic())
        .collect(Collectors.toSet());
  }

  private static boolean asks(Problem problem) {
    return problem.topic() instanceof ImportProblem reading && reading.asks();
  }

  private Parsed parsed() {
    ColumnMapper planner = new ColumnMapper(file, description);
    Outcome<List<ParsedTable>> read = new ExportText(export, form, planner::plan).read();
    List<ParsedTable> tables = read.value();
    Outcome<Optional<ParsedTable>> choice = choice(tables, read.findings());
    StageFindings findings = read.findings().and(choice.findings());
    Optional<ParsedTable> shown = choice.value().or(() -> tables.stream().findFirst());
    if (shown.isPresent()) {
      findings = findings.and(new HeaderFacts(shown.get(), form).of(file));
    }
    if (choice.value().isPresent() && tables.size() > 1) {
      findings =
          findings.withFact(
              ImportFact.OTHER_TABLES, Basis.CONCLUDED, Argument.count(tables.size() - 1));
    }
    return new Parsed(choice.value(), shown, findings);
  }

  /** The table that holds the plate; none where names and columns do not belong together. */
  private Outcome<Optional<ParsedTable>> choice(List<ParsedTable> tables, StageFindings read) {
    boolean shifted =
        read.has(ImportProblem.NAMES_COUNT) || read.has(ImportProblem.NAMES_COUNT_DESCRIBED);
    return shifted
        ? new Outcome<>(Optional.empty(), StageFindings.none(file))
        : new TableChoice(form.recording(), file).choose(tables);
  }

  /** Settles units and axes, or asks for them. */
  private Mapped mapped(ParsedTable table, StageFindings earlier) {
    LoadedPlates finder = new LoadedPlates(table, description, file);
    Outcome<Map<PlateColumns, Optional<PlateUnits>>> plates = finder.find(earlier);
    Map<PlateColumns, PlateUnits> loaded = Mapped.loaded(plates.value());
    Axis vertical = finder.vertical(loaded);
    StageFindings findings = plates.findings().and(axesFacts(loaded, vertical));
    UnitsByMoments byMoments = new UnitsByMoments(table, vertical, file);
    for (Map.Entry<PlateColumns, PlateUnits> each : loaded.entrySet()) {
      findings = findings.and(byMoments.pairs(each.getKey(), each.getValue()));
    }
    if (!findings.has(ImportProblem.COMMA_TWICE)) {
      findings = findings.and(new OpenQuestions(table, axes, vertical, loaded, file).ask());
    }
    return new Mapped(plates.value(), vertical, findings);
  }

  private StageFindings axesFacts(Map<PlateColumns, PlateUnits> loaded, Axis vertical) {
    StageFindings nothing = StageFindings.none(file);
    if (axes.isPresent()) {
      return nothing.withFact(
          ImportFact.AXES, Basis.DESCRIBED, Argument.text(AxesText.of(axes.get())));
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
  private Timed timed(ParsedTable table, StageFindings parsed, StageFindings earlier) {
    if (!parsed.clean()) {
      return Timed.unsought(earlier);
    }
    TimeBase base = description.map(PlateDescription::time).orElse(TimeBase.UNSTATED);
    Preamble preamble = new Preamble(table.head());
    StageFindings stated = earlier.and(new PreambleFacts(preamble, file).of(table.rows()));
    Timed found = new TimeBaseFinder(table, base, preamble, file).find(sameRow(table));
    return found.with(stated.and(found.findings()));
  }

  private static BiPredicate<Integer, Integer> sameRow(ParsedTable table) {
    List<NumberColumn> columns =
        table.plan().plates().stream()
            .flatMap(PlateColumns::wanted)
            .distinct()
            .map(table::column)
            .toList();
    return (a, b) -> columns.stream().allMatch(c -> c.at(a) == c.at(b));
  }

  /** What is known of the plates while questions are open. */
  private StageFindings oddities(ParsedTable table, Mapped mapped) {
    RawOddities oddities = new RawOddities(table, mapped.vertical(), file);
    StageFindings findings = StageFindings.none(file);
    for (Map.Entry<PlateColumns, PlateUnits> each : mapped.loaded().entrySet()) {
      findings = findings.and(oddities.remarks(each.getKey(), each.getValue()));
    }
    return findings;
  }

  private static List<PlateView> views(ParsedTable table, Mapped mapped) {
    List<PlateView> views = new ArrayList<>();
    mapped
        .loaded()
        .forEach(
            (plan, known) ->
                PlateViews.of(table, plan, mapped.vertical(), known.force()).ifPresent(views::add));
    return views;
  }

  private Plates plates(
      ParsedTable table, Mapped mapped, Timeline timeline, StageFindings earlier) {
    TrackBuilder tracks = new TrackBuilder(table, axes.orElseThrow(), timeline, description, file);
    StageFindings findings = earlier;
    List<PlateTrack> all = new ArrayList<>();
    for (Map.Entry<PlateColumns, Optional<PlateUnits>> each : mapped.plates().entrySet()) {
      Outcome<PlateTrack> track = tracks.track(each.getKey(), each.getValue());
      findings = findings.and(track.findings());
      all.add(track.value());
    }
    boolean usable = all.stream().anyMatch(t -> t.usable().count() > 0);
    if (!usable && !findings.has(ImportProblem.FAR_OFF)) {
      boolean forces = all.stream().anyMatch(t -> t.upN().isPresent());
      findings =
          findings.withProblem(
              forces ? ImportProblem.UNLOADED : ImportProblem.EMPTY_THROUGHOUT,
              Argument.of(TrackLimits.LEAST_N, Unit.N));
    }
    return new Plates(all, findings);
  }
}
