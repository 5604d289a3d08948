package caryatid.cli;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.EntryForms;
import caryatid.fitting.Addition;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.sheet.yaml.InputValue;
import caryatid.usecase.Assignments;
import caryatid.usecase.EntryDraft;
import caryatid.usecase.KeptPhotograph;
import caryatid.usecase.SuggestedRows;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** What an entry says and who says it: from a file, as arguments, or asked for at a terminal. */
final class RecordEntryOptions {
  @Option(names = "--by", paramLabel = "INITIALS", description = RecordSubcommand.BY)
  private String by;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description =
          "When, with the offset from UTC, such as 2026-03-04T10:15+01:00; now if left out.")
  private OffsetDateTime at;

  @Option(
      names = "--from",
      paramLabel = "FILE",
      description = "A YAML file that says it; `record form` prints one to fill in.")
  private Path from;

  @Option(
      names = "--keep",
      paramLabel = "IS=FILE",
      description =
          "A file to keep with it, byte for byte; IS says what it is: recording, description,"
              + " sheet, earlier-sheet, result, report, photograph, other. May be given several"
              + " times.")
  private List<String> keep = new ArrayList<>();

  @Option(
      names = "--original",
      paramLabel = "KEEP-OR-DROP",
      description =
          "With a photograph, of which the picture alone is kept: keep its original as well, which"
              + " may tell place, time and serial number, or drop it.")
  private KeptPhotograph.Original original;

  @Option(
      names = "--sure",
      description =
          "The code and the words say nothing about who the wearer is, whatever they look like.")
  private boolean sure;

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  /**
   * The entry, completed by questions at a terminal, if there is one.
   *
   * @param values the arguments of the form KEY=VALUE
   * @param offers usual rows of the form
   * @throws BadInput if a file cannot be read or the values are no values
   */
  EntryDraft draft(
      EntryKind kind,
      List<String> values,
      Optional<Entry.Correction> corrects,
      SuggestedRows offers,
      Wording wording)
      throws BadInput {
    List<Addition.Attached> files = files(wording);
    InputValue.Group given = given(values);
    Optional<TerminalPrompt> terminal = TerminalPrompt.atTerminal(wording, System.console());
    if (terminal.isPresent()) {
      boolean told = !given.members().isEmpty() || !files.isEmpty();
      TerminalPrompt.Said said =
          terminal.get().entry(Optional.ofNullable(by), EntryForms.of(kind), given, !told, offers);
      by = said.by();
      given = said.given();
    }
    return new EntryDraft(
        kind, given, offers, files, by == null ? "" : by, Optional.ofNullable(at), corrects, sure);
  }

  /** Whether what looks like a name or a date of birth is none. */
  boolean isSure() {
    return sure;
  }

  private InputValue.Group given(List<String> values) throws BadInput {
    Optional<NamedBytes> yaml =
        from == null ? Optional.empty() : Optional.of(CaryatidCommand.FILES.read(from));
    return Assignments.read(yaml, values, Place.of("command line"));
  }

  private List<Addition.Attached> files(Wording wording) throws BadInput {
    List<Addition.Attached> files = new ArrayList<>();
    for (String pair : keep) {
      int equals = pair.indexOf('=');
      String is = equals < 0 ? "" : pair.substring(0, equals);
      KeptFile.Role role =
          KeptFile.Role.of(is)
              .orElseThrow(
                  () ->
                      new ParameterException(
                          spec.commandLine(),
                          wording.fill(
                              "cli.keep",
                              RecordSubcommand.texts(
                                  String.join(", ", KeptFile.Role.keys()), pair))));
      NamedBytes file = CaryatidCommand.FILES.read(Path.of(pair.substring(equals + 1)));
      if (role == KeptFile.Role.PHOTOGRAPH) {
        files.addAll(KeptPhotograph.files(file, Optional.ofNullable(original)));
      } else {
        files.add(new Addition.Attached(role, file));
      }
    }
    return files;
  }
}
