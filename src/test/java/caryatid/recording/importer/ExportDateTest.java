package caryatid.recording.importer;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExportDateTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 26);

  private static Set<LocalDate> of(String export) throws BadInput {
    return ExportDate.of(NamedBytes.of("stand.csv", export.getBytes(UTF_8)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Aufnahme;26.11.2026 09:12",
        "Aufnahme 26.11.2026",
        "Aufnahme am: 26.11.2026 um 9 Uhr",
        "Datum;26.11.2026",
        "Date,2026-11-26",
        "Session,2026-11-26T09:12:00+01:00,B8",
        "Trial;11/26/2026 9:12 AM",
        "26-11-2026",
        "Messung vom 26. November 2026",
        "Recorded;26 Nov 2026",
        "Recorded;November 26, 2026",
        "Enregistr\u00e9 le 26 novembre 2026",
        "Registro;26 de noviembre de 2026",
      })
  void theOnlyDateAboveTheTableIsTheRecordings(String line) throws BadInput {
    assertThat(of("Messprotokoll\n" + line + "\nZeit;Fz\n0,0;800\n")).containsExactly(DAY);
  }

  @Test
  void aMonthsAccentIsReadInEveryEncoding() throws BadInput {
    byte[] french = "Essai du 3 f\u00e9vrier 2026".getBytes(ISO_8859_1);
    assertThat(ExportDate.of(NamedBytes.of("stand.csv", french)))
        .containsExactly(LocalDate.of(2026, 2, 3));
    assertThat(of("Essai du 15 ao\u00fbt 2026")).containsExactly(LocalDate.of(2026, 8, 15));
    assertThat(of("Aufnahme am 1. M\u00e4rz 2026")).containsExactly(LocalDate.of(2026, 3, 1));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Geburtsdatum;26.11.1956",
        "geb. 26.11.1956",
        "Date of birth;1956-11-26",
        "N\u00e9e le 26/11/1956",
        "Kalibriert;26.11.2025",
        "Software version 26.11.2025",
        "Gedruckt am 26.11.2026",
        "Exported 2026-11-26",
        "0.25;26.11;2026.11",
        "10.26.11.2026",
        "12 samples 2026",
        "26.11.26",
        "31.02.2026",
        "1 November 1066",
      })
  void aDateOfSomethingElseAndWhatIsNoDateAreNotTakenForIt(String line) throws BadInput {
    assertThat(of("Messprotokoll\n" + line + "\nZeit;Fz\n0,0;800\n")).isEmpty();
  }

  @Test
  void ofSeveralDatesNoneIsGuessed() throws BadInput {
    assertThat(of("von 25.11.2026\nbis 26.11.2026\n")).isEmpty();
    assertThat(of("von 26.11.2026\nbis 26.11.2026\n")).containsExactly(DAY);
  }

  @Test
  void aDateThatIsCalledSoCountsBeforeOthers() throws BadInput {
    assertThat(of("Sitzung 25.11.2026\nDatum: 26.11.2026\n")).containsExactly(DAY);
  }

  /** So that only a sheet of neither day is asked about. */
  @Test
  void aDateThatCanBeReadTwoWaysMeansEither() throws BadInput {
    assertThat(of("Aufnahme;05.06.2026"))
        .containsExactly(LocalDate.of(2026, 6, 5), LocalDate.of(2026, 5, 6));
  }
}
