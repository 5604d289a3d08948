package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is refused is refused in the language that was asked for. */
class RefusalsInFourLanguagesTest {
  @TempDir private Path path;

  private Folder folder;

  @BeforeEach
  void prepare() throws IOException {
    folder = new Folder(path);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          en | line 18, column 1: unknown key `landmark`; did you mean `landmarks`?
          de | Zeile 18, Spalte 1: Unbekannter Schlüssel `landmark`; ist `landmarks` gemeint?
          fr | ligne 18, colonne 1: clé inconnue `landmark` ; est-ce `landmarks` ?
          es | línea 18, columna 1: clave desconocida `landmark`; ¿se quería `landmarks`?
          """)
  void aSheet(String language, String complaint) throws IOException {
    folder.sheet("landmarks:", "landmark:");
    refused("sheet.yaml " + complaint, language);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          en | expected a force plate's text export, found an empty file. Export again.
          de | Erwartet wurde der Textexport einer Kraftmessplatte, gefunden wurde eine leere Datei.\
           Erneut exportieren.
          fr | l'export en texte d'une plateforme de force était attendu, le fichier est vide.\
           Exporter de nouveau.
          es | se esperaba la exportación en texto de una plataforma de fuerza; el archivo está\
           vacío. Exportar de nuevo.
          """,
      quoteCharacter = '"')
  void aRecording(String language, String complaint) throws IOException {
    folder.recording(all -> List.of());
    refused("stand.csv: " + complaint, language);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          en | expected a file, found nothing of that name. Check the name and the folder.
          de | Erwartet wurde eine Datei, doch keine heißt so. Namen und Ordner prüfen.
          fr | un fichier était attendu, aucun ne porte ce nom. Vérifier le nom et le répertoire.
          es | se esperaba un archivo; ninguno se llama así. Comprobar el nombre y la carpeta.
          """)
  void aFileThatIsNotThere(String language, String complaint) throws IOException {
    Files.delete(path.resolve("plate.yaml"));
    refused("plate.yaml: " + complaint, language);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          en | there is no record with that code in FOLDER. Check the code, or start the record first.
          de | In FOLDER gibt es keine Akte mit diesem Code. Den Code prüfen oder die Akte zuerst\
           beginnen.
          fr | il n'y a pas de dossier portant ce code dans FOLDER. Vérifier le code, ou ouvrir\
           d'abord le dossier.
          es | no hay ningún expediente con ese código en FOLDER. Comprobar el código, o iniciar\
           antes el expediente.
          """,
      quoteCharacter = '"')
  void aRecordThatIsNotThere(String language, String complaint) {
    Run run =
        Run.caryatid(
            "record", "show", "K7", "--records", path.toString(), "--language=" + language);
    assertThat(run.err().strip()).isEqualTo("K7: " + complaint.replace("FOLDER", path.toString()));
    assertThat(run.code()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          en | expected a date, a time and its offset from UTC, such as 2026-03-04T10:15+01:00,\
           found "noon". Write it like that.
          de | Erwartet wurden Datum, Uhrzeit und Abstand zu UTC wie 2026-03-04T10:15+01:00,\
           gefunden wurde „noon“. In dieser Form schreiben.
          fr | une date et une heure avec leur décalage par rapport à UTC, telles que\
           2026-03-04T10:15+01:00, étaient attendues, trouvé «\u00a0noon\u00a0». Les écrire ainsi.
          es | se esperaba fecha, hora y diferencia con UTC, como 2026-03-04T10:15+01:00; se\
           encontró «noon». Escribirlo así.
          """,
      quoteCharacter = '~')
  void anOption(String language, String complaint) {
    Run run = Run.caryatid("record", "add", "K7", "note", "--at=noon", "--language", language);
    assertThat(run.err()).contains(complaint);
    assertThat(run.code()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          en | The file cannot be used yet.
          de | Die Datei kann noch nicht verwendet werden.
          fr | Le fichier ne peut pas encore être utilisé.
          es | El archivo aún no se puede usar.
          """)
  void whatAnExportStillLacksForInspect(String language, String last) throws IOException {
    folder.recording(UnaryOperator.identity());
    Run run = Run.caryatid("inspect", folder.file("stand.csv"), "--language", language);
    assertThat(run.out()).contains(last);
    assertThat(run.code()).isZero();
  }

  /** What programs read is the same whoever reads beside them. */
  @Test
  void theResultForProgramsIsTheSameInEveryLanguage() {
    String english = folder.check("--json").out();
    assertThat(english).startsWith("{");
    for (String language : List.of("de", "fr", "es")) {
      assertThat(folder.check("--json", "--language", language).out()).isEqualTo(english);
    }
  }

  private void refused(String complaint, String language) {
    Run run = folder.check("--language", language);
    assertThat(folder.complaint(run)).isEqualTo(complaint);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
  }
}
