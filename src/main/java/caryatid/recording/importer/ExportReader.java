package caryatid.recording.importer;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.Inspection;
import caryatid.recording.model.Inspection.PlateView;
import caryatid.recording.model.Markers;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.recording.model.Sampled;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.recording.time.Timed;
import caryatid.recording.time.Timeline;
import caryatid.recording.track.PlateUnits;
import caryatid.recording.track.PlateViews;
import caryatid.recording.track.RawOddities;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Reads one export by its {@link Stages}: as a recording, or as what an inspection tells. */
final class ExportReader {
  private final NamedBytes export;
  private final String file;
  private final Stages stages;

  ExportReader(NamedBytes export, Optional<PlateDescription> description) {
    this.export = export;
    this.file = export.name();
    this.stages = new Stages(export, description);
  }

  /**
   * The recording.
   *
   * @param provenance the bytes, known once they have been read
   * @param harmless what is no problem this time, of what the plates' tracks show
   */
  Recording read(Supplier<Provenance> provenance, Set<ImportProblem> harmless) throws BadInput {
    Stages.Parsed parsed = stages.parsed();
    if (parsed.table().isEmpty()) {
      throw new BadInput(parsed.located(parsed.messages().problems()));
    }
    ParsedTable table = parsed.table().get();
    Stages.Mapped mapped = stages.mapped(table, parsed.messages());
    Timed timed = stages.timed(table, parsed.messages(), mapped.messages());
    if (!timed.messages().clean()) {
      throw new BadInput(parsed.located(timed.messages().problems()));
    }
    Timeline timeline = timed.timeline().orElseThrow();
    Stages.Plates plates = stages.plates(table, mapped, timeline, timed.messages());
    List<Problem> problems =
        plates.messages().problems().stream()
            .filter(
                problem -> !(problem.topic() instanceof ImportProblem of && harmless.contains(of)))
            .toList();
    if (!problems.isEmpty()) {
      throw new BadInput(parsed.located(problems));
    }
    return new Recording(
        provenance.get(),
        timeline.timeS(),
        timeline.rateHz(),
        plates.tracks(),
        plates.messages().remarks(),
        stages.markers());
  }

  Inspection inspect() {
    Stages.Parsed parsed = stages.parsed();
    if (parsed.table().isEmpty()) {
      StageMessages messages = parsed.messages();
      return inspection(
          parsed,
          Stages.Mapped.none(messages),
          Timed.unsought(messages),
          List.of(),
          Optional.empty());
    }
    ParsedTable table = parsed.table().get();
    Stages.Mapped mapped = stages.mapped(table, parsed.messages());
    Timed timed = stages.timed(table, parsed.messages(), mapped.messages());
    // While the decimal mark is in question, a force may be read 1000 times too small.
    boolean readable = !timed.messages().has(ImportProblem.THOUSANDS);
    List<PlateView> views = readable ? views(table, mapped) : List.of();
    if (timed.timeline().isPresent() && timed.messages().clean()) {
      Timeline timeline = timed.timeline().get();
      Stages.Plates plates = stages.plates(table, mapped, timeline, timed.messages());
      Optional<Sampled> sampled =
          plates.messages().clean()
              ? Optional.of(
                  new SampledTracks(export.name(), timeline, plates.tracks(), stages.markers()))
              : Optional.empty();
      return inspection(parsed, mapped, timed.with(plates.messages()), views, sampled);
    }
    return inspection(parsed, mapped, withOddities(table, mapped, timed), views, Optional.empty());
  }

  /** The times, with what is known of the plates where only answers are missing. */
  private Timed withOddities(ParsedTable table, Stages.Mapped mapped, Timed timed) {
    StageMessages messages = timed.messages();
    return messages.problems().stream().allMatch(ExportReader::asks)
        ? timed.with(messages.and(oddities(table, mapped)))
        : timed;
  }

  private Inspection inspection(
      Stages.Parsed parsed,
      Stages.Mapped mapped,
      Timed timed,
      List<PlateView> views,
      Optional<Sampled> sampled) {
    StageMessages messages = timed.messages();
    List<Problem> problems = parsed.located(messages.problems());
    return new Inspection(
        messages.understood(),
        problems.stream().filter(ExportReader::asks).toList(),
        problems.stream().filter(p -> !asks(p)).toList(),
        messages.remarks(),
        views,
        timed.rateHz(),
        new DescriptionDraft(stages.description(), asked(messages))
            .of(
                parsed.table(),
                parsed.shown().map(ParsedTable::head),
                mapped.loaded(),
                timed.unit()),
        sampled);
  }

  private static Set<ImportProblem> asked(StageMessages messages) {
    return messages.problems().stream()
        .filter(ExportReader::asks)
        .map(problem -> (ImportProblem) problem.topic())
        .collect(Collectors.toSet());
  }

  private static boolean asks(Problem problem) {
    return problem.topic() instanceof ImportProblem reading && reading.asks();
  }

  /** What is known of the plates while questions are open. */
  private StageMessages oddities(ParsedTable table, Stages.Mapped mapped) {
    RawOddities oddities = new RawOddities(table, mapped.vertical(), file);
    StageMessages messages = StageMessages.none(file);
    for (Map.Entry<PlateColumns, PlateUnits> each : mapped.loaded().entrySet()) {
      messages = messages.and(oddities.remarks(each.getKey(), each.getValue()));
    }
    return messages;
  }

  private static List<PlateView> views(ParsedTable table, Stages.Mapped mapped) {
    List<PlateView> views = new ArrayList<>();
    mapped
        .loaded()
        .forEach(
            (plate, known) ->
                PlateViews.of(table, plate, mapped.vertical(), known.force())
                    .ifPresent(views::add));
    return views;
  }

  /** Tracks whose bytes were not digested: enough to seek a stand in, not to keep a result of. */
  private record SampledTracks(
      String file, Timeline timeline, List<PlateTrack> plates, Markers markers) implements Sampled {
    SampledTracks {
      file = Provenance.fileName(file);
      plates = List.copyOf(plates);
    }

    @Override
    public int size() {
      return timeline.size();
    }

    @Override
    public double timeS(int sample) {
      return Objects.checkIndex(sample, size()) / rateHz();
    }

    @Override
    public double rateHz() {
      return timeline.rateHz();
    }
  }
}
