package caryatid.usecase;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.clinic.Clinic;
import caryatid.clinic.ClinicFile;
import caryatid.loadline.GeometryLimits;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.sheet.ClinicLimits;
import caryatid.sheet.TrialSheet;
import caryatid.sheet.TrialSheetReader;
import java.util.Optional;

/** A clinic's limits of what can hardly be and what cannot be. */
public final class RememberedLimits {
  private RememberedLimits() {}

  /**
   * Remembers limits in place of those before.
   *
   * @return for how many quantities
   * @throws BadInput if it is no file of limits
   * @throws StoreFailure if it cannot be written
   */
  public static int remember(Records records, NamedBytes file) throws BadInput, StoreFailure {
    int quantities = ClinicLimits.read(file).own().size();
    ClinicFile clinicFile = new ClinicFile(records.folder());
    clinicFile.write(clinicFile.read().limited(new String(file.readAll(), UTF_8)));
    return quantities;
  }

  /**
   * The file of the limits that are remembered.
   *
   * @throws BadInput if what the clinic remembers cannot be read
   */
  public static Optional<String> text(Records records) throws BadInput {
    return new ClinicFile(records.folder()).read().limits();
  }

  /** The limits that are remembered; the usual ones where there are none. */
  static GeometryLimits of(Records records) throws BadInput {
    Optional<String> yaml = text(records);
    return yaml.isPresent()
        ? ClinicLimits.read(NamedBytes.of("clinic.json", yaml.get().getBytes(UTF_8)))
        : GeometryLimits.USUAL;
  }

  /**
   * The inputs with the clinic's limits in the sheet, as far as the sheet has none of its own; they
   * are kept with it, so that a report is checked again without the clinic.
   *
   * @throws BadInput if what the clinic remembers or the sheet cannot be read
   */
  public static Inputs complete(Records records, Inputs inputs) throws BadInput {
    Clinic clinic = new ClinicFile(records.folder()).read();
    if (clinic.limits().isEmpty()) {
      return inputs;
    }
    NamedBytes sheet = inputs.sheet();
    TrialSheet trial = TrialSheetReader.read(sheet, new EarlierSheetFinder(inputs.beside()));
    return inputs.withSheet(ClinicLimits.into(sheet.readAll(), trial.limits(), of(records)));
  }
}
