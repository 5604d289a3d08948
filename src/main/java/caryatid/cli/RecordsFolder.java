package caryatid.cli;

import caryatid.fitting.NetworkDrive;
import caryatid.fitting.Store;
import caryatid.remark.Argument;
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

  /** The store, with a word of warning where its folder is on a network drive. */
  Store store(Wording wording) {
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
