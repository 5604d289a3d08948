package caryatid.usecase;

import caryatid.clinic.Clinic;
import caryatid.clinic.ClinicFile;
import caryatid.clinic.KnownPlate;
import caryatid.recording.importer.Importer;
import caryatid.recording.model.ColumnView;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.sheet.DescriptionReader;
import caryatid.sheet.ProvenDescription;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Plate descriptions that a clinic remembers, by the columns of an export. */
public final class RememberedPlates {
  private RememberedPlates() {}

  /**
   * Remembers the description of a plate for all exports with the columns of one.
   *
   * @param replace whether another description for these columns may be forgotten
   * @return how many columns it is remembered for
   * @throws BadInput if the description does not fit the export, the export has no columns, or
   *     another one is remembered for them
   * @throws StoreFailure if it cannot be written
   */
  public static int remember(
      Records records, NamedBytes export, NamedBytes description, boolean replace)
      throws BadInput, StoreFailure {
    Importer.read(export, Optional.of(DescriptionReader.read(description)));
    List<String> columns = columns(export);
    if (columns.isEmpty()) {
      throw new BadInput(Problem.at(Place.of(export.name()), CheckProblem.NO_COLUMNS));
    }
    ClinicFile file = new ClinicFile(records.folder());
    Clinic clinic = file.read();
    String text = new String(description.readAll(), StandardCharsets.UTF_8);
    KnownPlate plate = new KnownPlate(columns, bare(description.name()), text);
    Optional<KnownPlate> before = clinic.plate(columns);
    if (before.isPresent() && !before.get().description().equals(text) && !replace) {
      throw new BadInput(
          Problem.at(
              Place.of(description.name()),
              CheckProblem.ANOTHER_PLATE,
              Argument.text(before.get().name())));
    }
    file.write(clinic.with(plate));
    return columns.size();
  }

  /**
   * Remembers a proof with the descriptions that it is of.
   *
   * @param proven a description with its proof
   * @return with how many
   * @throws BadInput if what the clinic remembers cannot be read
   * @throws StoreFailure if it cannot be written
   */
  public static int proven(Records records, byte[] proven) throws BadInput, StoreFailure {
    ClinicFile file = new ClinicFile(records.folder());
    Clinic before = file.read();
    Clinic clinic = before;
    int count = 0;
    String text = new String(proven, StandardCharsets.UTF_8);
    for (KnownPlate plate : before.plates()) {
      if (ProvenDescription.isOf(text, plate.description())) {
        clinic = clinic.with(new KnownPlate(plate.columns(), plate.name(), text));
        count++;
      }
    }
    if (count > 0) {
      file.write(clinic);
    }
    return count;
  }

  /**
   * What the clinic remembers.
   *
   * @throws BadInput if it cannot be read
   */
  public static List<KnownPlate> all(Records records) throws BadInput {
    return new ClinicFile(records.folder()).read().plates();
  }

  /**
   * The description that the clinic remembers for the columns of an export.
   *
   * @throws BadInput if what the clinic remembers cannot be read
   */
  public static Optional<KnownPlate> of(Records records, NamedBytes export) throws BadInput {
    return new ClinicFile(records.folder()).read().plate(columns(export));
  }

  /**
   * Forgets the description for exports with these columns.
   *
   * @throws BadInput if what the clinic remembers cannot be read
   * @throws StoreFailure if it cannot be written
   */
  public static void forget(Records records, List<String> columns) throws BadInput, StoreFailure {
    ClinicFile file = new ClinicFile(records.folder());
    file.write(file.read().withoutPlate(columns));
  }

  /**
   * The inputs with the description that the clinic remembers for the first recording's columns,
   * where they have none of their own.
   *
   * @throws BadInput if what the clinic remembers cannot be read
   */
  public static Inputs complete(Records records, Inputs inputs) throws BadInput {
    if (inputs.description().isPresent()) {
      return inputs;
    }
    Clinic clinic = new ClinicFile(records.folder()).read();
    if (clinic.plates().isEmpty()) {
      return inputs;
    }
    Optional<NamedBytes> known =
        clinic
            .plate(columns(inputs.recordings().get(0)))
            .map(
                plate ->
                    NamedBytes.of(
                        plate.name(), plate.description().getBytes(StandardCharsets.UTF_8)));
    return inputs.withDescription(known);
  }

  private static List<String> columns(NamedBytes export) {
    return Importer.columns(export, ExportLayout.UNSTATED).stream().map(ColumnView::name).toList();
  }

  private static String bare(String path) {
    return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
  }
}
