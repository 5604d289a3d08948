package caryatid.clinic;

import caryatid.disk.DurableFiles;
import caryatid.disk.FilePermissions;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.remark.Topic;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The file that holds what a clinic remembers: {@code clinic/clinic.json} beside the records. It is
 * written under another name first, so that it is the old or the new one whatever happens.
 */
public final class ClinicFile {
  private final Path file;

  /**
   * The file of a folder of records.
   *
   * @param records the folder that the records lie in
   */
  public ClinicFile(Path records) {
    this.file = records.resolve("clinic").resolve("clinic.json");
  }

  /**
   * What the clinic remembers; nothing where there is no file.
   *
   * @throws BadInput if it cannot be read, or a newer version of the program wrote it
   */
  public Clinic read() throws BadInput {
    if (!Files.exists(file)) {
      return Clinic.NEW;
    }
    try {
      return ClinicJson.read(Files.readAllBytes(file), file.toString());
    } catch (IOException e) {
      throw new BadInput(problem(ClinicProblem.CANNOT_READ, e));
    }
  }

  /**
   * Writes what the clinic remembers.
   *
   * @throws StoreFailure if it cannot be written; what was remembered before stays
   */
  public void write(Clinic clinic) throws StoreFailure {
    Path folder = file.getParent();
    try {
      FilePermissions.createPrivateFolder(folder.toAbsolutePath().getParent());
      DurableFiles.replace(file, ClinicJson.write(clinic), folder);
    } catch (IOException e) {
      throw new StoreFailure(problem(ClinicProblem.CANNOT_WRITE, e));
    }
  }

  private Problem problem(ClinicProblem what, IOException e) {
    return Problem.at(
        Place.of(file.toString()), what, Argument.text(String.valueOf(e.getMessage())));
  }

  /** Why what the clinic remembers cannot be read or written. */
  private enum ClinicProblem implements Topic {
    /** Arguments: the reason. */
    CANNOT_READ("ClinicProblem.CANNOT_READ"),
    /** Arguments: the reason. */
    CANNOT_WRITE("ClinicProblem.CANNOT_WRITE");

    private final String code;

    ClinicProblem(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }
}
