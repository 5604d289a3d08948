package caryatid.cli;

import caryatid.exchange.AccessToken;
import caryatid.exchange.PatientIdentifier;
import caryatid.exchange.SendRecord;
import caryatid.exchange.ServerAddress;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Records;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sends a record to a clinic's system. */
@Command(
    name = "send",
    mixinStandardHelpOptions = true,
    description =
        "Sends a record to the clinic's record system (HL7 FHIR R4), reads it back, compares it and"
            + " notes it in the record. Given again, it goes on where it was interrupted.")
final class RecordSendCommand extends OneRecordCommand {
  private static final int LONGEST_S = 3600;

  @Parameters(
      index = "1",
      paramLabel = "FILE",
      description =
          "The JSON file that is written first; one that an interrupted sending left is taken.")
  private Path file;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "URL",
      description = "The address of the system's FHIR interface; https, but for this computer.")
  private String to;

  @Option(
      names = "--patient-identifier",
      required = true,
      paramLabel = "SYSTEM|VALUE",
      description = RecordBundleCommand.PATIENT)
  private String patient;

  @Option(
      names = "--by",
      required = true,
      paramLabel = "INITIALS",
      description = "Initials of the person doing it.")
  private String by;

  @Option(
      names = "--token-file",
      paramLabel = "FILE",
      description =
          "A file with the access token; if left out, the environment variable "
              + AccessToken.VARIABLE
              + " holds it, or none is needed.")
  private Path tokenFile;

  @Option(
      names = "--new-patient",
      description = "Make the patient there if the system does not know the identifier.")
  private boolean newPatient;

  @Option(
      names = "--timeout",
      paramLabel = "S",
      defaultValue = "60",
      description = "How many seconds one answer may take, 1 to 3600; 60 if left out.")
  private int timeoutS;

  @Override
  int run(Records records) throws BadInput, StoreFailure {
    ServerAddress server = ServerAddress.of(to);
    SendRecord.SendingOrder order =
        new SendRecord.SendingOrder(
            file,
            PatientIdentifier.of(patient),
            server,
            token(),
            Duration.ofSeconds(Math.max(1, Math.min(timeoutS, LONGEST_S))),
            newPatient,
            by);
    SendRecord.SendingDone done =
        SendRecord.run(records, code(), order, wording(), CaryatidCommand.FILES);
    if (done.entry().isPresent()) {
      say("Exchange.sent", server.base(), done.created(), done.there(), done.entry().get());
    } else {
      say("Exchange.sentBefore", server.base(), done.there());
    }
    return 0;
  }

  private Optional<AccessToken> token() throws BadInput {
    if (tokenFile != null) {
      return Optional.of(AccessToken.in(CaryatidCommand.FILES.read(tokenFile)));
    }
    String variable = System.getenv(AccessToken.VARIABLE);
    return variable == null || variable.isBlank()
        ? Optional.empty()
        : Optional.of(AccessToken.of(variable, AccessToken.VARIABLE));
  }
}
