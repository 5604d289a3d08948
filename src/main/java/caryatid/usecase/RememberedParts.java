package caryatid.usecase;

import caryatid.clinic.Clinic;
import caryatid.clinic.ClinicFile;
import caryatid.clinic.PartTorque;
import caryatid.clinic.PartTorques;
import caryatid.entry.Components;
import caryatid.entry.Components.ComponentLimits;
import caryatid.entry.EntryKind;
import caryatid.entry.SettingUnit;
import caryatid.entry.TermOrText;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.entry.form.ContentToAnswers;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.Form;
import caryatid.entry.form.FormReader;
import caryatid.entry.form.NameNotation;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.StoreFailure;
import caryatid.sheet.yaml.InputValue;
import caryatid.sheet.yaml.InputValueReader;
import caryatid.views.CurrentComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Components that a clinic remembers with their makers' limits. */
public final class RememberedParts {
  private static final String COMPONENTS = "components";

  /** A form of components, and the torques of their fasteners. */
  private static final Form FORM =
      new Form(
          Stream.concat(
                  EntryForms.of(EntryKind.COMPONENTS).fields().stream(),
                  Stream.of(PartTorques.FIELD))
              .toList(),
          List.of());

  private RememberedParts() {}

  /**
   * How much was remembered.
   *
   * @param components components with their makers' limits
   * @param torques torques of fasteners
   */
  public record Count(int components, int torques) {}

  /**
   * Remembers components and the torques of their fasteners; one of the same part and name takes
   * the place of the one before.
   *
   * @param file the form of a components entry, filled in, and {@code torques}; serial numbers and
   *     sides are left out
   * @return how many are remembered of it
   * @throws BadInput if it is no such form
   * @throws StoreFailure if it cannot be written
   */
  public static Count remember(Records records, NamedBytes file) throws BadInput, StoreFailure {
    Answers answers = FormReader.read(FORM, InputValueReader.read(file), NameNotation.INPUT);
    Components named = (Components) AnswersToContent.content(EntryKind.COMPONENTS, answers);
    ClinicFile clinicFile = new ClinicFile(records.folder());
    Clinic clinic = clinicFile.read();
    for (ComponentLimits part : named.components()) {
      clinic = clinic.with(anyone(part));
    }
    List<PartTorque> torques = PartTorques.of(answers);
    for (PartTorque torque : torques) {
      clinic = clinic.with(torque);
    }
    clinicFile.write(clinic);
    return new Count(named.components().size(), torques.size());
  }

  private static ComponentLimits anyone(ComponentLimits part) {
    return new ComponentLimits(
        part.what(),
        Optional.empty(),
        part.name(),
        Optional.empty(),
        part.ankleAxis(),
        part.bodyMassHighestKg(),
        part.mobilityGradeLowest(),
        part.mobilityGradeHighest(),
        part.heelHeightLowestMm(),
        part.heelHeightHighestMm(),
        part.source());
  }

  /**
   * The components that are remembered.
   *
   * @throws BadInput if what the clinic remembers cannot be read
   */
  public static List<ComponentLimits> all(Records records) throws BadInput {
    return new ClinicFile(records.folder()).read().parts();
  }

  /**
   * The torques that are remembered.
   *
   * @throws BadInput if what the clinic remembers cannot be read
   */
  public static List<PartTorque> torques(Records records) throws BadInput {
    return new ClinicFile(records.folder()).read().torques();
  }

  /**
   * What was given for an entry, completed by what is remembered: components by the limits of parts
   * that have none of their own (a row that states a limit or a source is left as it is), a bench
   * alignment by the torques recommended for fasteners of the record's components.
   *
   * @throws BadInput if what the clinic remembers or the record cannot be read
   */
  public static InputValue.Group complete(
      Records records, String code, EntryKind kind, InputValue.Group given) throws BadInput {
    Clinic clinic = new ClinicFile(records.folder()).read();
    if (kind == EntryKind.COMPONENTS) {
      return given.withRows(COMPONENTS::equals, row -> complete(clinic, row));
    }
    if (kind != EntryKind.BENCH_ALIGNMENT || clinic.torques().isEmpty()) {
      return given;
    }
    List<PartTorque> torques = torques(clinic, records.store().read(RecordCode.of(code)));
    return given.withRows("items"::equals, row -> secured(row, torques));
  }

  /** The torques of the components that are fitted now. */
  private static List<PartTorque> torques(Clinic clinic, FittingRecord record) {
    return CurrentComponent.of(record.valid()).stream()
        .flatMap(part -> clinic.torques(part.limits().what(), part.limits().name()).stream())
        .toList();
  }

  /** Completes a fastener without a recommended torque, if exactly one is known by its name. */
  private static InputValue.Group secured(InputValue.Group row, List<PartTorque> torques) {
    Optional<String> fastener = text(row, "fastener").map(TermOrText::fold);
    List<PartTorque> known =
        torques.stream()
            .filter(t -> fastener.filter(TermOrText.fold(t.fastener())::equals).isPresent())
            .toList();
    if (known.size() != 1 || row.members().containsKey("recommended")) {
      return row;
    }
    PartTorque torque = known.get(0);
    Map<String, InputValue> members = new LinkedHashMap<>(row.members());
    members.put(
        "recommended", InputValue.Single.ofAnyKind(torque.torqueNm().toPlainString(), row.place()));
    members.putIfAbsent(
        "unit", InputValue.Single.ofAnyKind(SettingUnit.NEWTON_METRE.code(), row.place()));
    torque
        .source()
        .ifPresent(s -> members.putIfAbsent("source", InputValue.Single.ofAnyKind(s, row.place())));
    return new InputValue.Group(members, row.place());
  }

  private static InputValue.Group complete(Clinic clinic, InputValue.Group row) {
    boolean bare =
        row.members().keySet().stream()
            .noneMatch(
                key -> key.endsWith("-mm") || key.contains("-highest") || key.equals("source"));
    Optional<ComponentLimits> part =
        text(row, "what").flatMap(what -> text(row, "name").flatMap(n -> clinic.part(what, n)));
    if (!bare || part.isEmpty()) {
      return row;
    }
    Map<String, InputValue> members = new LinkedHashMap<>(row.members());
    Components known = new Components(List.of(part.get()), Optional.empty());
    ContentToAnswers.answers(known)
        .rows(COMPONENTS)
        .get(0)
        .values()
        .forEach((key, value) -> members.putIfAbsent(key, input(value, row.place())));
    return new InputValue.Group(members, row.place());
  }

  private static Optional<String> text(InputValue.Group row, String key) {
    return row.members().get(key) instanceof InputValue.Single single
        ? Optional.of(single.text())
        : Optional.empty();
  }

  private static InputValue input(Answers.Value value, Place place) {
    if (value instanceof Answers.Value.YesNo answer) {
      return InputValue.Single.ofAnyKind(answer.yes() ? "yes" : "no", place);
    }
    String text =
        value instanceof Answers.Value.Amount amount
            ? amount.number().toPlainString()
            : ((Answers.Value.Words) value).text();
    return InputValue.Single.ofAnyKind(text, place);
  }
}
