package caryatid.cli;

import caryatid.fitting.NetworkDrive;
import caryatid.fitting.StorageRoot;
import caryatid.fitting.Store;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.time.Duration;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** Where the fitting records lie; the same option for every command that keeps or shows them. */
final class RecordsFolder {
  private static final Duration PATIENCE = Duration.ofSeconds(10);

  @Option(
      names = "--records",
      paramLabel = "FOLDER",
      defaultValue = "${env:CARYATID_RECORDS:-${sys:user.home}/caryatid-records}",
      description =
          "Where the records lie; if left out, the environment variable CARYATID_RECORDS says it,"
              + " else caryatid-records in your home folder.")
  private Path folder;

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  Path folder() {
    return folder;
  }

  /**
   * The store, with a word of warning where its folder is on a network drive.
   *
   * @throws BadInput if the folder is the storage root instead of the one it lies in
   */
  Store store(Wording wording) throws BadInput {
    if (StorageRoot.is(folder)) {
      throw new BadInput(Problem.at(Place.of(folder.toString()), Cli.STORAGE_ROOT));
    }
    NetworkDrive.of(folder)
        .ifPresent(
            type ->
                spec.commandLine()
                    .getErr()
                    .println(
                        wording.fill(
                            "Record.network",
                            Argument.text(folder.toString()),
                            Argument.text(type))));
    return new Store(folder, PATIENCE);
  }
}
