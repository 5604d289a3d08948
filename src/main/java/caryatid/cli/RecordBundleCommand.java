package caryatid.cli;

import caryatid.exchange.BundleRecord;
import caryatid.exchange.PatientIdentifier;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Records;
import caryatid.usecase.file.Output;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a record as a bundle for a clinic's system. */
@Command(
    name = "bundle",
    mixinStandardHelpOptions = true,
    description =
        "Writes a record as one HL7 FHIR R4 bundle, which a clinic's record system takes in.")
final class RecordBundleCommand extends OneRecordCommand {
  static final String PATIENT =
      "Who the wearer is in the clinic's system: the system's URI, |, and the clinic's number. It"
          + " goes into the bundle and is not kept in the record.";

  @Parameters(
      index = "1",
      paramLabel = "FILE",
      description = "The JSON file to write; it must not exist yet.")
  private Path file;

  @Option(
      names = "--patient-identifier",
      required = true,
      paramLabel = "SYSTEM|VALUE",
      description = PATIENT)
  private String patient;

  @Override
  int run(Records records) throws BadInput, StoreFailure {
    BundleRecord.write(
        records,
        code(),
        PatientIdentifier.of(patient),
        wording(),
        new Output(file, false),
        CaryatidCommand.FILES);
    say("Exchange.written", file);
    return 0;
  }
}
