package caryatid.cli;

import caryatid.fitting.EntryKind;
import caryatid.fitting.Field;
import caryatid.fitting.FieldType;
import caryatid.fitting.Form;
import caryatid.fitting.Store;
import caryatid.wording.EntryWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints a form to fill in. */
@Command(
    name = "form",
    mixinStandardHelpOptions = true,
    description =
        "Prints a YAML file to fill in for an entry; delete the lines you have no answer for.")
final class RecordFormCommand extends RecordPart {
  @Parameters(paramLabel = "KIND", converter = AddedKind.class, description = "The kind of entry.")
  private EntryKind kind;

  @Override
  int run(Store store) {
    print(kind.form(), "", "");
    return 0;
  }

  private void print(Form form, String first, String indent) {
    String lead = first;
    for (Field field : form.fields()) {
      String hint = hint(field);
      out().println(lead + field.key() + ":" + (hint.isEmpty() ? "" : "  # " + hint));
      if (field.type() instanceof FieldType.Rows rows) {
        print(rows.form(), indent + "  - ", indent + "    ");
      }
      lead = indent;
    }
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
