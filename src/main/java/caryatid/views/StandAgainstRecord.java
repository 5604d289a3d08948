package caryatid.views;

import caryatid.alignment.AlignmentState;
import caryatid.entry.Components.ComponentLimits;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.RecordOpening;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.fitting.FittingRecord;
import caryatid.geometry.Plane;
import caryatid.loadline.LoadLineQuestion;
import caryatid.loadline.Target;
import caryatid.recording.model.Provenance;
import caryatid.remark.Argument;
import caryatid.remark.Question;
import caryatid.remark.Unit;
import caryatid.sheet.Component;
import caryatid.sheet.ProstheticSide;
import caryatid.sheet.TrialSheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Holds a stand that is to be kept against its record, and asks what does not go with it. */
public final class StandAgainstRecord {
  private final FittingRecord record;
  private final TrialSheet trial;
  private final List<Entry> valid;
  private final Optional<Entry> last;
  private final List<Question> questions = new ArrayList<>();

  private StandAgainstRecord(FittingRecord record, TrialSheet trial, OptionalInt corrects) {
    this.record = record;
    this.trial = trial;
    this.valid =
        record.valid().stream()
            .filter(e -> corrects.isEmpty() || e.number() != corrects.getAsInt())
            .toList();
    this.last = last(record, corrects);
  }

  /**
   * The latest stand of a record.
   *
   * @param corrects number of an entry that is about to be corrected, and does not count
   */
  public static Optional<Entry> last(FittingRecord record, OptionalInt corrects) {
    return Entry.latest(
        record.valid(),
        entry ->
            entry.kind() == EntryKind.STAND
                && (corrects.isEmpty() || entry.number() != corrects.getAsInt()));
  }

  /**
   * The questions, whether the sheet answers them or not.
   *
   * @param state what was found in the stand
   * @param before what was found in the record's latest stand, where that can be read
   * @param all what is asked whatever the record holds; what the record knows is left out
   * @param corrects number of the entry that the stand takes the place of, if any
   */
  public static List<Question> of(
      FittingRecord record,
      AlignmentState state,
      Optional<AlignmentState> before,
      List<Question> all,
      OptionalInt corrects) {
    TrialSheet trial = state.trial();
    StandAgainstRecord asked = new StandAgainstRecord(record, trial, corrects);
    boolean side = asked.knowsSide();
    all.stream()
        .filter(q -> !(side && q.topic() instanceof LoadLineQuestion asks && asks.ofSide()))
        .forEach(asked.questions::add);
    trial.components().forEach(asked::component);
    trial.targets().forEach(asked::target);
    state.stands().forEach(stand -> asked.recording(stand.recording()));
    asked.time();
    asked.mass();
    asked.questions.addAll(
        HeelQuestions.of(
            asked.valid.stream().filter(e -> !record.timeOf(e).isAfter(trial.at())).toList(),
            trial.footwear()));
    asked.last.ifPresent(
        entry ->
            before.ifPresent(
                earlier ->
                    asked.questions.addAll(
                        new OffsetJumps(record, entry, earlier, state).questions())));
    return List.copyOf(asked.questions);
  }

  private boolean knowsSide() {
    return record
        .opening()
        .map(RecordOpening::side)
        .filter(s -> s != ProstheticSide.BOTH)
        .isPresent();
  }

  /** The record's components of the same part, as its newest entry that names the part has them. */
  private void component(Component worn) {
    List<ComponentLimits> known =
        limits(valid).stream().filter(c -> isSame(c.what(), worn.what())).toList();
    if (known.isEmpty() || known.stream().anyMatch(c -> isSame(c, worn))) {
      return;
    }
    ComponentLimits one = known.get(0);
    questions.add(
        Question.of(
            RecordQuestion.OTHER_COMPONENT,
            words(worn.what(), worn.name(), worn.serial()),
            Argument.text(words(one.what(), one.name(), one.serial())),
            Argument.text(words(worn.what(), worn.name(), worn.serial()))));
  }

  private static boolean isSame(ComponentLimits known, Component worn) {
    boolean other =
        known.serial().isPresent()
            && worn.serial().isPresent()
            && !isSame(known.serial().get(), worn.serial().get());
    return isSame(known.name(), worn.name()) && !other;
  }

  private static boolean isSame(String one, String other) {
    return TermOrText.fold(one).equals(TermOrText.fold(other));
  }

  private static String words(String what, String name, Optional<String> serial) {
    return String.join(" ", Stream.concat(Stream.of(what, name), serial.stream()).toList());
  }

  private void target(Target target) {
    last.flatMap(entry -> entry.content(StandSummary.class)).stream()
        .flatMap(stood -> stood.findings().stream())
        .filter(found -> found.plane() == target.plane() && found.side() == target.side())
        .filter(found -> isSame(found.landmark(), target.landmark()))
        .findFirst()
        .ifPresent(found -> target(target, found, last.orElseThrow().number()));
  }

  private void target(Target target, StandSummary.Found before, int entry) {
    double then = before.recommendedMm().doubleValue();
    Optional<Entry> replaced = componentsSince(entry);
    boolean same = isSame(before.source(), target.source());
    if (then != 0 && then == -target.recommendedMm()) {
      ask(RecordQuestion.TARGET_REVERSED, target, mm(then), entry, mm(target.recommendedMm()));
    } else if (!same && replaced.isEmpty()) {
      ask(
          RecordQuestion.TARGET_FROM_ELSEWHERE,
          target,
          Argument.text(before.source()),
          entry,
          Argument.text(target.source()));
    } else if (same && replaced.filter(e -> names(e, target.source())).isPresent()) {
      ask(
          RecordQuestion.TARGET_OF_OLD_COMPONENT,
          target,
          Argument.text(target.source()),
          replaced.get().number(),
          Argument.text(target.source()));
    }
  }

  /** Components that were written down after a stand. */
  private Optional<Entry> componentsSince(int stand) {
    return Entry.latest(StandChange.after(valid, stand), e -> e.kind() == EntryKind.COMPONENTS);
  }

  /** Whether a document is that of a component which an entry replaced by one of another name. */
  private boolean names(Entry replaced, String source) {
    List<ComponentLimits> before = limits(valid.subList(0, valid.indexOf(replaced)));
    List<ComponentLimits> now = limits(valid);
    return before.stream()
        .filter(old -> TermOrText.fold(source).contains(TermOrText.fold(old.name())))
        .anyMatch(old -> now.stream().noneMatch(c -> isSame(c.name(), old.name())));
  }

  private void ask(RecordQuestion topic, Target target, Argument then, int entry, Argument now) {
    String where = target.plane() == Plane.SAGITTAL ? "sagittal" : "frontal";
    String side = target.side().lastPart().toLowerCase(Locale.ROOT);
    questions.add(
        Question.of(
            topic,
            "target " + target.landmark() + " " + side + " " + where,
            Argument.text(target.landmark()),
            Argument.term(target.plane()),
            then,
            Argument.count(entry),
            now));
  }

  /** No two stands give the same recording, to the last digit. */
  private void recording(Provenance recording) {
    valid.stream()
        .filter(e -> e.kind() == EntryKind.STAND)
        .filter(e -> e.files().stream().anyMatch(file -> isSame(e, file, recording)))
        .findFirst()
        .ifPresent(
            e ->
                questions.add(
                    Question.of(
                        RecordQuestion.SAME_RECORDING,
                        recording.name() + " as in entry " + e.number(),
                        Argument.text(recording.name()),
                        Argument.count(e.number()))));
  }

  private boolean isSame(Entry entry, KeptFile file, Provenance recording) {
    return file.is() == KeptFile.Role.RECORDING
        && record.digest(entry, file).filter(recording.sha512()::equals).isPresent();
  }

  /** A sheet that was used before, perhaps yesterday, still says when that was. */
  private void time() {
    valid.stream()
        .filter(e -> e.kind() == EntryKind.STAND)
        .filter(e -> record.timeOf(e).isEqual(trial.at()))
        .findFirst()
        .ifPresent(
            e ->
                questions.add(
                    Question.of(
                        RecordQuestion.SAME_TIME,
                        "at " + trial.at(),
                        Argument.text(trial.at().toString()),
                        Argument.count(e.number()))));
  }

  private void mass() {
    Optional<BigDecimal> known =
        last.flatMap(e -> e.content(StandSummary.class))
            .flatMap(StandSummary::bodyMassKg)
            .or(() -> record.opening().flatMap(RecordOpening::bodyMassKg));
    if (known.isPresent() && trial.bodyMassKg().isPresent()) {
      double then = known.get().doubleValue();
      double now = trial.bodyMassKg().getAsDouble();
      if (Math.abs(now / then - 1) > ChangeLimits.MASS_CHANGES) {
        questions.add(
            Question.of(
                RecordQuestion.OTHER_MASS,
                "body-mass-kg " + Math.round(now),
                Argument.of(now, Unit.KG),
                Argument.of(then, Unit.KG)));
      }
    }
  }

  private static Argument mm(double value) {
    return Argument.of(value, Unit.MM);
  }

  /** The components, as the newest entry that names each has them. */
  private static List<ComponentLimits> limits(List<Entry> entries) {
    return CurrentComponent.of(entries).stream().map(CurrentComponent::limits).toList();
  }
}
