package caryatid.usecase;

import caryatid.clinic.Clinic;
import caryatid.clinic.ClinicFile;
import caryatid.entry.Components;
import caryatid.entry.Components.ComponentLimits;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.entry.form.ContentToAnswers;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.FormReader;
import caryatid.entry.form.NameNotation;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.StoreFailure;
import caryatid.sheet.yaml.InputValue;
import caryatid.sheet.yaml.InputValueReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Components that a clinic remembers with their makers' limits. */
public final class RememberedParts {
  private static final String COMPONENTS = "components";

  private RememberedParts() {}

  /**
   * Remembers components; one of the same part and name takes the place of the one before.
   *
   * @param file the form of a components entry, filled in; serial numbers and sides are left out
   * @return how many are remembered of it
   * @throws BadInput if it is no such form
   * @throws StoreFailure if it cannot be written
   */
  public static int remember(Records records, NamedBytes file) throws BadInput, StoreFailure {
    Answers answers =
        FormReader.read(
            EntryForms.of(EntryKind.COMPONENTS), InputValueReader.read(file), NameNotation.INPUT);
    Components named = (Components) AnswersToContent.content(EntryKind.COMPONENTS, answers);
    ClinicFile clinicFile = new ClinicFile(records.folder());
    Clinic clinic = clinicFile.read();
    for (ComponentLimits part : named.components()) {
      clinic = clinic.with(anyone(part));
    }
    clinicFile.write(clinic);
    return named.components().size();
  }

  private static ComponentLimits anyone(ComponentLimits part) {
    return new ComponentLimits(
        part.what(),
        part.name(),
        Optional.empty(),
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
   * What was given for a components entry, with the limits that are remembered of parts that have
   * none of their own: a row that states a limit or a source is left as it is.
   *
   * @throws BadInput if what the clinic remembers cannot be read
   */
  public static InputValue.Group complete(Records records, EntryKind kind, InputValue.Group given)
      throws BadInput {
    if (kind != EntryKind.COMPONENTS
        || !(given.members().get(COMPONENTS) instanceof InputValue.Several rows)) {
      return given;
    }
    Clinic clinic = new ClinicFile(records.folder()).read();
    List<InputValue> completed = new ArrayList<>();
    for (InputValue row : rows.items()) {
      completed.add(row instanceof InputValue.Group part ? complete(clinic, part) : row);
    }
    Map<String, InputValue> members = new LinkedHashMap<>(given.members());
    members.put(COMPONENTS, new InputValue.Several(completed, rows.place()));
    return new InputValue.Group(members, given.place());
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
    String text =
        value instanceof Answers.Value.Amount amount
            ? amount.number().toPlainString()
            : ((Answers.Value.Words) value).text();
    return new InputValue.Single(text, InputValue.Kind.ANY, place);
  }
}
