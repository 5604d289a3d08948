package caryatid.cli;

import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.sheet.AmputationLevel;
import caryatid.usecase.Records;
import caryatid.usecase.SuggestedRows;
import caryatid.wording.EntryWords;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints a form to fill in. */
@Command(
    name = "form",
    mixinStandardHelpOptions = true,
    description =
        "Prints a YAML file to fill in for an entry; delete the lines you have no answer for.")
final class RecordFormCommand extends RecordSubcommand {
  @Parameters(
      paramLabel = "KIND",
      converter = Converters.ToEntryKind.class,
      description = "The kind of entry.")
  private EntryKind kind;

  @Option(
      names = "--level",
      paramLabel = "LEVEL",
      description =
          "Level of amputation, such as transtibial: the usual rows for it are filled in.")
  private AmputationLevel level;

  @Override
  int run(Records records) {
    SuggestedRows offers =
        level == null ? SuggestedRows.none(wording()) : SuggestedRows.of(kind, level, wording());
    print(EntryForms.of(kind), "", "", offers);
    return 0;
  }

  private void print(Form form, String first, String indent, SuggestedRows rows) {
    String lead = first;
    for (Field field : asked(form)) {
      print(lead + field.key() + ":", hint(field));
      if (field.type() instanceof FieldType.Rows type && rows.rows().isEmpty()) {
        print(type.form(), indent + "  - ", indent + "    ", SuggestedRows.none(wording()));
      } else if (field.type() instanceof FieldType.Rows type) {
        for (int i = 0; i < rows.rows().size(); i++) {
          row(type.form(), rows.rows().get(i), rows.words().get(i), indent);
        }
      }
      lead = indent;
    }
  }

  /** What the program computes is not asked for. */
  private static List<Field> asked(Form form) {
    return form.fields().stream()
        .filter(field -> !(field.type() instanceof FieldType.Computed))
        .toList();
  }

  /** A usual row: what is known of it is filled in, the rest is to be. */
  private void row(Form form, Answers offered, Map<String, String> row, String indent) {
    String lead = indent + "  - ";
    for (Field field : asked(form)) {
      if (row.containsKey(field.key())) {
        out().println(lead + field.key() + ": \"" + row.get(field.key()) + "\"");
      } else if (SuggestedRows.isAsked(offered, field)) {
        print(lead + field.key() + ":", hint(field));
      }
      lead = indent + "    ";
    }
  }

  private void print(String key, String hint) {
    out().println(hint.isEmpty() ? key : key + "  # " + hint);
  }

  private String hint(Field field) {
    if (field.type() instanceof FieldType.Rows) {
      return "";
    }
    String label = new EntryWords(wording()).label(field.key());
    if (field.type() instanceof FieldType.Choice choice) {
      return label + ": " + String.join(", ", choice.words());
    }
    return field.type() instanceof FieldType.YesNo
        ? label + ": " + wording().word("Record.yesOrNo")
        : label;
  }
}
