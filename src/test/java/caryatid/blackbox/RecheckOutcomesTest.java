package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is printed of a report whose files inside were changed, in each language. */
class RecheckOutcomesTest {
  @TempDir private static Path written;
  @TempDir private Path folder;

  private Path report;

  @BeforeAll
  static void writeTheReport() throws IOException {
    Run run = new Folder(written).check();
    assertThat(run.code()).as(run.err()).isZero();
  }

  @BeforeEach
  void copyTheReport() throws IOException {
    report = folder.resolve("report.pdf");
    Files.copy(written.resolve("out/stand-report.pdf"), report);
  }

  private Run again(String language) {
    return Run.caryatid("check", report.toString(), "--language", language);
  }

  /**
   * The result as if the first method had found it, in the version that had it: with degrees of
   * freedom for which its rule gives the half-widths that are on the pages.
   */
  private static String byTheFirst(String json) {
    return FirstMethod.sameHalfWidths(json)
        .replaceFirst("(\"method\" : )\\d+", "$11")
        .replaceFirst("(\"program\" : \"Caryatid )[^\"]+", "$10.1.0");
  }

  private void changeResult(UnaryOperator<String> change) throws IOException {
    FilesInside.change(report, "RESULT", change);
  }

  private static String plain(String text) {
    return text.replaceAll("[\u00a0\u202f]", " ");
  }

  /** What is said after the result, its note at the end. */
  private static List<String> after(String note, Run run) {
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    List<String> lines = plain(run.out()).lines().toList();
    assertThat(lines).filteredOn(line -> line.startsWith(note)).hasSize(1);
    int at =
        lines.indexOf(lines.stream().filter(l -> l.startsWith(note)).findFirst().orElseThrow());
    return lines.subList(at + 1, lines.size());
  }

  /** Past the ankle, where nothing is recommended, 60.5 mm; what is kept says 61.5. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | Not a medical device. | This report was made by an older method (Caryatid 0.1.0). Its"
            + " result still stands: it was computed from the files inside. | Today's numbers would"
            + " be: | In place of: | 61.5 mm anterior (+61.5 ± | 60.5 mm anterior (+60.5 ±",
        "de | Kein Medizinprodukt. | Dieser Bericht wurde mit einem älteren Verfahren erstellt"
            + " (Caryatid 0.1.0). Sein Ergebnis bleibt gültig; es stammt aus den enthaltenen"
            + " Dateien. | Die Zahlen von heute wären: | Anstelle von: | 61,5 mm anterior (+61,5 ±"
            + " | 60,5 mm anterior (+60,5 ±",
        "fr | Ce n'est pas un dispositif médical. | Ce rapport a été établi par une méthode plus"
            + " ancienne (Caryatid 0.1.0). Son résultat reste valable ; les fichiers qu'il contient"
            + " sont ceux dont il est tiré. | Les valeurs d'aujourd'hui seraient : | Au lieu de : |"
            + " 61,5 mm en avant (+61,5 ± | 60,5 mm en avant (+60,5 ±",
        "es | No es un producto sanitario. | Este informe se elaboró con un método anterior"
            + " (Caryatid 0.1.0). Su resultado sigue siendo válido; los archivos que contiene son"
            + " aquellos de los que se obtuvo. | Los valores de hoy serían: | En lugar de: | 61,5"
            + " mm anterior (+61,5 ± | 60,5 mm anterior (+60,5 ±"
      })
  void whatAnOlderMethodFoundStandsAndTodaysOtherNumbersAreTold(
      String language,
      String note,
      String older,
      String today,
      String inPlaceOf,
      String kept,
      String now)
      throws IOException {
    changeResult(json -> byTheFirst(json).replaceAll("(\"value\" : )60\\.\\d+", "$161.5"));
    Run run = again(language);
    List<String> lines = after(note, run);
    assertThat(lines).hasSize(5);
    assertThat(lines.get(0)).isEqualTo(older);
    assertThat(lines.get(1)).isEqualTo(today);
    assertThat(lines.get(2)).startsWith("  ").contains(now).doesNotContain(kept);
    assertThat(lines.get(3)).isEqualTo(inPlaceOf);
    assertThat(lines.get(4)).startsWith("  ").contains(kept).doesNotContain(now);
    assertThat(plain(run.out()).lines().filter(line -> line.contains(kept)))
        .as("the result that stands, and the line it is compared in")
        .hasSize(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | Not a medical device. | This report was made by an older method (Caryatid 0.1.0). Its"
            + " result still stands: it was computed from the files inside. | To the digits shown"
            + " here, today's numbers would be the same. In the result for programs this differs: |"
            + " state.findings[0].target.recommended-mm: was 20.000001, would be 20",
        "de | Kein Medizinprodukt. | Dieser Bericht wurde mit einem älteren Verfahren erstellt"
            + " (Caryatid 0.1.0). Sein Ergebnis bleibt gültig; es stammt aus den enthaltenen"
            + " Dateien. | Die Zahlen von heute wären dieselben, soweit sie hier gezeigt werden. Im"
            + " Ergebnis für Programme weicht ab: | state.findings[0].target.recommended-mm: war"
            + " 20.000001, wäre 20",
        "fr | Ce n'est pas un dispositif médical. | Ce rapport a été établi par une méthode plus"
            + " ancienne (Caryatid 0.1.0). Son résultat reste valable ; les fichiers qu'il contient"
            + " sont ceux dont il est tiré. | Les valeurs d'aujourd'hui seraient les mêmes, telles"
            + " qu'elles sont affichées ici. Dans le résultat destiné aux programmes, voici ce qui"
            + " diffère : | state.findings[0].target.recommended-mm : était 20.000001, serait 20",
        "es | No es un producto sanitario. | Este informe se elaboró con un método anterior"
            + " (Caryatid 0.1.0). Su resultado sigue siendo válido; los archivos que contiene son"
            + " aquellos de los que se obtuvo. | Los valores de hoy serían los mismos, tal como se"
            + " muestran aquí. En el resultado para programas difiere lo siguiente: |"
            + " state.findings[0].target.recommended-mm: era 20.000001, sería 20"
      })
  void otherDigitsThanAreShownAreToldByTheirNames(
      String language, String note, String older, String today, String difference)
      throws IOException {
    changeResult(
        json ->
            byTheFirst(json)
                .replace("\"recommended-mm\" : 20,", "\"recommended-mm\" : 20.000001,"));
    assertThat(after(note, again(language))).startsWith(older, today).contains("  " + difference);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | Not a medical device. | This report was made by an older method (Caryatid 0.1.0). Its"
            + " result still stands: it was computed from the files inside. | Today's method"
            + " refuses the recording, because: | stand.csv: expected a table of numbers with two"
            + " columns or more, found none in 1 lines. Export again with the sample values"
            + " included.",
        "de | Kein Medizinprodukt. | Dieser Bericht wurde mit einem älteren Verfahren erstellt"
            + " (Caryatid 0.1.0). Sein Ergebnis bleibt gültig; es stammt aus den enthaltenen"
            + " Dateien. | Das Verfahren von heute lehnt die Aufzeichnung ab, weil: |"
            + " stand.csv: Erwartet wurde eine Tabelle von Zahlen mit mindestens zwei Spalten,"
            + " gefunden wurde keine (Zeilen: 1). Mit den einzelnen Messwerten erneut exportieren.",
        "fr | Ce n'est pas un dispositif médical. | Ce rapport a été établi par une méthode plus"
            + " ancienne (Caryatid 0.1.0). Son résultat reste valable ; les fichiers qu'il contient"
            + " sont ceux dont il est tiré. | La méthode d'aujourd'hui refuse l'enregistrement,"
            + " parce que : | stand.csv: un tableau de nombres d'au moins deux colonnes était"
            + " attendu, il n'y en a aucun (lignes : 1). Exporter de nouveau avec les valeurs des"
            + " échantillons.",
        "es | No es un producto sanitario. | Este informe se elaboró con un método anterior"
            + " (Caryatid 0.1.0). Su resultado sigue siendo válido; los archivos que contiene son"
            + " aquellos de los que se obtuvo. | El método de hoy rechaza la grabación, porque: |"
            + " stand.csv: se esperaba una tabla de números con dos columnas o más; no hay ninguna"
            + " (líneas: 1). Exportar de nuevo con los valores de las muestras."
      })
  void aRecordingThatTodaysMethodRefusesIsToldWithTheReason(
      String language, String note, String older, String because, String refusal)
      throws IOException {
    String sum =
        Frozen.sum("SHA-512", FilesInside.change(report, "RECORDING", text -> "no recording\n"));
    changeResult(json -> byTheFirst(json).replaceFirst("[0-9a-f]{128}", sum));
    FilesInside.print(report, sum);
    assertThat(after(note, again(language))).containsExactly(older, because, "  " + refusal);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | the result inside is not reproduced: state.stands[0].recording.bytes was 7, and is"
            + " now SIZE. The report was altered; keep it and check its recording again.",
        "de | Das enthaltene Ergebnis lässt sich nicht reproduzieren:"
            + " state.stands[0].recording.bytes war 7 und ist jetzt SIZE. Der Bericht wurde"
            + " geändert; ihn aufbewahren und die Aufzeichnung erneut prüfen.",
        "fr | le résultat contenu n'est pas reproduit : state.stands[0].recording.bytes était 7 et"
            + " vaut maintenant SIZE. Le rapport a été modifié ; le conserver et"
            + " vérifier de nouveau l'enregistrement.",
        "es | el resultado contenido no se reproduce: state.stands[0].recording.bytes era 7 y ahora"
            + " es SIZE. El informe fue modificado; conservarlo y"
            + " comprobar de nuevo la grabación."
      })
  void aResultThatItsOwnMethodDoesNotFindIsAltered(String language, String said)
      throws IOException {
    changeResult(json -> json.replaceFirst("(\"bytes\" : )\\d+", "$17"));
    Run run = again(language);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    long bytes = Files.size(written.resolve("stand.csv"));
    assertThat(plain(run.err()))
        .isEqualTo(
            report + ": " + said.replace("SIZE", Long.toString(bytes)) + System.lineSeparator());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | the result inside is not reproduced: recording[0].sha512 was WAS, and is now NOW. The"
            + " report was altered; keep it and check its recording again.",
        "de | Das enthaltene Ergebnis lässt sich nicht reproduzieren: recording[0].sha512 war WAS"
            + " und ist jetzt NOW. Der Bericht wurde geändert; ihn aufbewahren"
            + " und die Aufzeichnung erneut prüfen.",
        "fr | le résultat contenu n'est pas reproduit : recording[0].sha512 était WAS et vaut"
            + " maintenant NOW. Le rapport a été modifié ; le conserver et"
            + " vérifier de nouveau l'enregistrement.",
        "es | el resultado contenido no se reproduce: recording[0].sha512 era WAS y ahora es NOW."
            + " El informe fue modificado; conservarlo y"
            + " comprobar de nuevo la grabación."
      })
  void anOlderResultWhoseRecordingIsAnotherIsAlteredToo(String language, String said)
      throws IOException {
    byte[] other = FilesInside.change(report, "RECORDING", text -> text + "\n");
    changeResult(RecheckOutcomesTest::byTheFirst);
    Run run = again(language);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    String was = Frozen.sum("SHA-512", Files.readAllBytes(written.resolve("stand.csv")));
    assertThat(plain(run.err()))
        .isEqualTo(
            report
                + ": "
                + said.replace("WAS", was).replace("NOW", Frozen.sum("SHA-512", other))
                + System.lineSeparator());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | version | was written by a newer version of the program. Use that version, or check"
            + " the recording again.",
        "en | method | was written by a newer version of the program. Use that version, or check"
            + " the recording again.",
        "de | version | Eine neuere Version des Programms hat dies geschrieben. Diese Version"
            + " verwenden oder die Aufzeichnung erneut prüfen.",
        "de | method | Eine neuere Version des Programms hat dies geschrieben. Diese Version"
            + " verwenden oder die Aufzeichnung erneut prüfen.",
        "fr | version | une version plus récente du programme a écrit ce fichier. Utiliser cette"
            + " version, ou vérifier de nouveau l'enregistrement.",
        "fr | method | une version plus récente du programme a écrit ce fichier. Utiliser cette"
            + " version, ou vérifier de nouveau l'enregistrement.",
        "es | version | una versión más reciente del programa escribió este archivo. Usar esa"
            + " versión o comprobar de nuevo la grabación.",
        "es | method | una versión más reciente del programa escribió este archivo. Usar esa"
            + " versión o comprobar de nuevo la grabación."
      })
  void whatANewerVersionWroteIsToldSo(String language, String member, String said)
      throws IOException {
    changeResult(json -> json.replaceFirst("(\"" + member + "\" : )\\d+", "$199"));
    Run run = again(language);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(plain(run.err())).isEqualTo(report + ": " + said + System.lineSeparator());
  }
}
