package caryatid.sheet;

import static caryatid.sheet.Sheets.problemsOfDescription;
import static caryatid.sheet.Sheets.withLines;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no YAML, or more YAML than is allowed. */
class YamlFileTest {
  private static final String NOT_YAML =
      "from here on the file cannot be read as YAML. Look here and in the line above for a colon"
          + " without a space after it, a quote or bracket that is not closed, or a line that does"
          + " not begin under its neighbours.";

  private static List<String> said(NamedBytes file) {
    return Sheets.said(catchThrowableOfType(BadInput.class, () -> DescriptionReader.read(file)));
  }

  @Test
  void aFileThatCannotBeReadIsRefused() {
    NamedBytes broken =
        new NamedBytes() {
          @Override
          public String name() {
            return "plate.yaml";
          }

          @Override
          public InputStream open() throws IOException {
            throw new IOException("broken");
          }
        };
    assertThat(said(broken))
        .containsExactly(
            "plate.yaml: the file cannot be read. Check that it exists, is not a folder and may be"
                + " opened.");
  }

  @Test
  void aFileOf100KilobytesIsReadAndALargerOneRefused() throws BadInput {
    String comment = "#".repeat(100_000 - Sheets.DESCRIPTION.length());
    assertThat(Sheets.description(Sheets.DESCRIPTION + comment).name()).isEqualTo("Level plate");
    assertThat(withLines(comment + "#"))
        .containsExactly(
            "plate.yaml: the file is larger than 100 kB; a file written by hand is far smaller."
                + " Check which file was meant.");
  }

  @Test
  void textInAnotherEncodingIsRefusedWithItsLine() {
    byte[] latin =
        "plate-description: 1\nname: Messplatte f\u00fcr Gang\n"
            .getBytes(StandardCharsets.ISO_8859_1);
    assertThat(said(NamedBytes.of("plate.yaml", latin)))
        .containsExactly(
            "plate.yaml line 2: the text is not UTF-8. Save the file again with the encoding"
                + " UTF-8.");
  }

  @Test
  void aByteOrderMarkDoesNotCount() throws BadInput {
    assertThat(Sheets.description("\uFEFF" + Sheets.DESCRIPTION).name()).isEqualTo("Level plate");
  }

  @Test
  void aControlCharacterIsRefusedWithItsLine() {
    assertThat(problemsOfDescription("plate-description: 1\nname: a\u0007b\n"))
        .containsExactly(
            "plate.yaml line 2: this line has an invisible control character. Delete it, or type"
                + " the line again.");
  }

  @Test
  void aTabIsRefusedWithLineAndColumn() {
    assertThat(withLines("axes:\n\tright: +x\n"))
        .containsExactly(
            "plate.yaml line 4, column 1: found a tab; YAML needs spaces. Replace it with spaces.");
  }

  @Test
  void whatIsNoYamlIsRefusedWhereItBegins() {
    assertThat(withLines("time: {column: Time\naxes: {}\n"))
        .containsExactly("plate.yaml line 4, column 5: " + NOT_YAML);
    assertThat(withLines("time: 'Time\n"))
        .containsExactly("plate.yaml line 4, column 1: " + NOT_YAML);
    assertThat(withLines("? [a, b]\n: 1\n"))
        .containsExactly("plate.yaml line 3, column 3: " + NOT_YAML);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "# nothing\n", "just a word\n", "- a list\n"})
  void aFileWithoutKeysIsRefused(String text) {
    assertThat(problemsOfDescription(text))
        .containsExactly(
            "plate.yaml: the file holds no lines of the form `key: value`. Check which file was"
                + " meant.");
  }

  @Test
  void deepNestingIsRefusedBeforeItIsBuilt() {
    assertThat(withLines("axes: " + "[".repeat(90_000)))
        .containsExactly(
            "plate.yaml line 3, column 26: more than 20 levels are nested here. Check the brackets"
                + " and the spaces before each line.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"axes: &a {right: +x}\n", "axes: *a\n"})
  void anchorsAndAliasesAreRefused(String line) {
    assertThat(withLines(line))
        .containsExactly(
            "plate.yaml line 3, column 7: & and * are YAML anchors here, which are not allowed:"
                + " every value must be written where it is used. Write the value out, or put a"
                + " text that begins with such a sign in quotes.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"axes: !mine {right: +x}\n", "axes: !!str x\n"})
  void tagsAreRefused(String line) {
    assertThat(withLines(line))
        .containsExactly(
            "plate.yaml line 3, column 7: a YAML tag (!) comes before the value, which is not"
                + " allowed. Delete it, or put a text that begins with ! in quotes.");
  }

  @Test
  void aSecondDocumentIsRefused() {
    assertThat(withLines("---\nname: other\n"))
        .containsExactly(
            "plate.yaml line 3, column 1: a second document begins here (---). Keep one in each"
                + " file.");
  }
}
