package caryatid.cli;

import caryatid.entry.Entry;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.usecase.AddedEntry;
import caryatid.usecase.Inputs;
import caryatid.usecase.KeepStand;
import caryatid.usecase.Records;
import caryatid.usecase.SessionCheck;
import caryatid.usecase.prove.ClinicInputs;
import caryatid.wording.RecordText;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The options that add a check to a fitting record. */
final class KeepOptions {
  @Option(
      names = "--record",
      paramLabel = "CODE",
      description = "Add the stand to this fitting record, with its files.")
  private String code;

  @Option(
      names = "--by",
      paramLabel = "INITIALS",
      description = "Initials of the person adding it; the sheet's practitioner if left out.")
  private String by;

  @Option(
      names = "--sure",
      description =
          "With --record: the sheet's words say nothing about who the wearer is, whatever they look"
              + " like.")
  private boolean sure;

  @Mixin private CorrectionOptions correction;

  @Mixin private RecordsFolder records;

  /**
   * What keeps the stand, if a record was named.
   *
   * @throws BadInput if it is a record that cannot be added to
   */
  Optional<KeepStand> keep(CommandSpec command, Wording wording) throws BadInput {
    Optional<Entry.Correction> corrects = correction.correction(wording);
    if (code == null && corrects.isPresent()) {
      throw new ParameterException(
          command.commandLine(), wording.word("cli.correctsWithoutRecord"));
    }
    return code == null
        ? Optional.empty()
        : Optional.of(
            KeepStand.in(
                records.open(command, wording), code, Optional.ofNullable(by), corrects, sure));
  }

  /**
   * The inputs with the plate description and the limits that the clinic remembers, where none were
   * given.
   *
   * @throws BadInput if what the clinic remembers cannot be read
   */
  Inputs completed(Inputs inputs, CommandSpec command) throws BadInput {
    Records from = records.quietly(command);
    return ClinicInputs.complete(from, inputs);
  }

  /**
   * A check that asks nothing twice in a session.
   *
   * @throws BadInput if the folder of records is a storage root
   */
  SessionCheck session(SessionCheck.CheckOf check, CommandSpec command) throws BadInput {
    return new SessionCheck(records.quietly(command), check);
  }

  /** The messages about a stand that was added. */
  List<String> lines(AddedEntry added, Wording wording) {
    List<String> lines = new ArrayList<>();
    lines.add(
        wording.fill(
            "Record.added",
            Argument.count(added.entry().number()),
            Argument.text(code),
            Argument.term(added.entry().kind())));
    RecordText.remarks(added.remarks(), wording)
        .forEach(line -> lines.add(TerminalText.line(line)));
    return lines;
  }
}
