package caryatid.usecase;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierState;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.geometry.Side;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.sheet.AnkleAxis;
import caryatid.sheet.Component;
import caryatid.sheet.SheetAnswers;
import caryatid.sheet.TrialSheet;
import caryatid.sheet.TrialSheetReader;
import caryatid.store.StoredRecord;
import caryatid.views.CurrentComponent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Completes the inputs of a check by what the record knows; all of it is kept with the report. */
final class RecordInputs {
  /** With two stands each they reach the degrees of freedom that are believed at most. */
  private static final int MOST_STATES = 12;

  private final StoredRecord stored;
  private final List<Entry> valid;

  /**
   * @param corrects number of an entry that is about to be corrected, and does not count
   */
  RecordInputs(StoredRecord stored, OptionalInt corrects) {
    this.stored = stored;
    this.valid =
        stored.record().valid().stream()
            .filter(e -> corrects.isEmpty() || e.number() != corrects.getAsInt())
            .toList();
  }

  Inputs complete(Inputs inputs) throws BadInput {
    TrialSheet trial = read(inputs);
    Inputs known = withSheet(inputs, trial);
    return known.earlier().isPresent() ? known : known.withEarlier(before(trial));
  }

  private static TrialSheet read(Inputs inputs) throws BadInput {
    return TrialSheetReader.read(inputs.sheet(), new EarlierSheetFinder(inputs.beside()));
  }

  /** A sheet written so that nothing can be added to it is left as it is. */
  private Inputs withSheet(Inputs inputs, TrialSheet trial) throws BadInput {
    byte[] sheet = inputs.sheet().readAll();
    List<Component> more = components(trial);
    Optional<AnkleAxis> axis = trial.ankleAxis().isPresent() ? Optional.empty() : axis(trial);
    if (more.isEmpty() && axis.isEmpty()) {
      return inputs;
    }
    byte[] known = more.isEmpty() ? sheet : SheetAnswers.withComponents(sheet, more);
    Inputs completed =
        inputs.withSheet(
            axis.isEmpty() ? known : SheetAnswers.withAnkleAxis(known, axis.get(), trial.side()));
    try {
      boolean all = read(completed).components().containsAll(more);
      return all ? completed : inputs;
    } catch (BadInput unwritable) {
      return inputs;
    }
  }

  /** The record's components of this leg, of parts that the sheet does not name. */
  private List<Component> components(TrialSheet trial) {
    Set<String> named = new HashSet<>();
    trial.components().forEach(component -> named.add(TermOrText.fold(component.what())));
    return CurrentComponent.of(valid).stream()
        .map(CurrentComponent::limits)
        .filter(c -> c.side().isEmpty() || trial.side().sides().contains(c.side().get()))
        .filter(c -> !named.contains(TermOrText.fold(c.what())))
        .map(c -> new Component(c.what(), c.name(), c.serial()))
        .distinct()
        .toList();
  }

  /** Only where the record says it of every leg of the sheet. */
  private Optional<AnkleAxis> axis(TrialSheet trial) {
    Set<Side> with = new HashSet<>();
    for (Side leg : trial.side().sides()) {
      Optional<Boolean> stated = CurrentComponent.statedAnkleAxis(valid, leg);
      if (stated.isEmpty()) {
        return Optional.empty();
      }
      if (stated.get()) {
        with.add(leg);
      }
    }
    return Optional.of(AnkleAxis.of(with));
  }

  /**
   * The states before whose results can be read: the last one in the same footwear, which drawings
   * mark, and those of several stands, which tell how far this wearer's stands scatter. Of these
   * the latest {@link #MOST_STATES}: more would not be believed.
   */
  private Optional<NamedBytes> before(TrialSheet trial) {
    List<EarlierState> states = new ArrayList<>();
    boolean marked = false;
    for (int i = valid.size() - 1; i >= 0 && states.size() < MOST_STATES; i--) {
      Entry entry = valid.get(i);
      boolean mark = !marked && isLike(entry, trial);
      if (entry.kind() == EntryKind.STAND && (mark || entry.recordings().size() > 1)) {
        Optional<EarlierState> state = state(entry).filter(s -> isUsable(s, trial));
        state.ifPresent(s -> states.add(0, s.marked(mark)));
        marked |= mark && state.isPresent();
      }
    }
    return states.isEmpty() ? Optional.empty() : Optional.of(EarlierInput.input(states));
  }

  private static boolean isLike(Entry entry, TrialSheet trial) {
    String worn = TermOrText.fold(trial.footwear().description());
    return entry
        .content(StandSummary.class)
        .filter(stood -> stood.footwear().map(TermOrText::fold).equals(Optional.of(worn)))
        .flatMap(StandSummary::heelHeightMm)
        .filter(mm -> Math.abs(mm.doubleValue() - trial.footwear().heelHeightMm()) < 0.5)
        .isPresent();
  }

  private static boolean isUsable(EarlierState state, TrialSheet trial) {
    return state.wearer().equals(trial.wearer())
        && state.at().isBefore(trial.at())
        && trial.side().sides().stream().anyMatch(state::tellsOf);
  }

  private Optional<EarlierState> state(Entry stand) {
    Optional<AlignmentState> found =
        KeptResults.of(stored, List.of(stand), new ArrayList<>(), new ArrayList<>())
            .values()
            .stream()
            .findFirst();
    Optional<String> sha512 =
        stand.file(KeptFile.Role.RESULT).flatMap(file -> stored.record().digest(stand, file));
    return found.flatMap(state -> sha512.map(sum -> EarlierState.of(state, sum)));
  }
}
