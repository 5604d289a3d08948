package caryatid.cli;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.entry.form.FormReader;
import caryatid.fitting.Addition;
import caryatid.remark.BadInput;
import caryatid.sheet.Given;
import caryatid.sheet.GivenReader;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** What an entry says and who says it: from a file, as arguments, or asked for at a terminal. */
final class RecordEntryOptions {
  @Option(names = "--by", paramLabel = "INITIALS", description = RecordPart.BY)
  private String by;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      converter = Moment.class,
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
              + " sheet, earlier-sheet, result, report, other. May be given several times.")
  private List<String> keep = new ArrayList<>();

  @Option(
      names = "--sure",
      description =
          "The code and the words say nothing about who the wearer is, whatever they look like.")
  private boolean sure;

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  /**
   * The addition.
   *
   * @param values the arguments of the form KEY=VALUE
   * @param offers usual rows of the form
   * @throws BadInput if something is missing and there is no terminal to ask at, or does not fit
   */
  Addition addition(
      EntryKind kind,
      List<String> values,
      Optional<Entry.Correction> corrects,
      Offers offers,
      Wording wording)
      throws BadInput {
    List<Addition.Attached> files = files(wording);
    Given.Group given = given(values);
    Optional<Questions> terminal = Questions.atTerminal(wording, System.console());
    if (terminal.isPresent()) {
      boolean told = !given.members().isEmpty() || !files.isEmpty();
      given = terminal.get().complete(kind.form(), given, !told, offers);
      by = by == null ? terminal.get().initials() : by;
    }
    Answers content = FormReader.read(kind.form(), offers.complete(given));
    OffsetDateTime now = CaryatidCommand.now(spec);
    OffsetDateTime when = at == null ? now : at;
    Addition addition =
        new Addition(kind, when, by == null ? "" : by, corrects, content, files).checked(now);
    return sure ? addition : addition.anonymous();
  }

  /** Whether what looks like a name or a date of birth is none. */
  boolean isSure() {
    return sure;
  }

  private Given.Group given(List<String> values) throws BadInput {
    Map<String, Given> members = new LinkedHashMap<>();
    if (from != null) {
      members.putAll(GivenReader.read(CaryatidCommand.FILES.read(from)).members());
    }
    return Assignments.onto(members, values);
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
                              RecordPart.texts(String.join(", ", KeptFile.Role.keys()), pair))));
      files.add(
          new Addition.Attached(
              role, CaryatidCommand.FILES.read(Path.of(pair.substring(equals + 1)))));
    }
    return files;
  }
}
