package caryatid.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Times as they are typed. The clock of Berlin goes forward on 29 March 2026 at 2:00 and back on 25
 * October 2026 at 3:00 (Directive 2000/84/EC, Articles 2 and 3: last Sundays, 1:00 UTC; from
 * memory).
 */
class LocalTimesTest {
  private static LocalTimes times(String language) {
    return new LocalTimes(Wording.in(Locale.forLanguageTag(language)), ZoneId.of("Europe/Berlin"));
  }

  @ParameterizedTest
  @CsvSource({
    "de, 28.11.2026 14:05, 2026-11-28T14:05+01:00",
    "de, '28.11.2026, 14:05', 2026-11-28T14:05+01:00",
    "de, 3.7.2026 9:05, 2026-07-03T09:05+02:00",
    "fr, 28/11/2026 14:05, 2026-11-28T14:05+01:00",
    "es, 3/7/2026 9:05, 2026-07-03T09:05+02:00",
    "en, 2026-11-28 14:05, 2026-11-28T14:05+01:00",
    "en, 28.11.2026 14:05, 2026-11-28T14:05+01:00",
    "en, 2026-03-04T10:15+01:00, 2026-03-04T10:15+01:00",
    "en, 2026-03-04 10:15 +01:00, 2026-03-04T10:15+01:00",
    "de, 2026-03-04T10:15:30Z, 2026-03-04T10:15:30Z",
    "de, 25.10.2026 02:30 +01:00, 2026-10-25T02:30+01:00"
  })
  void theFormOfTheLanguageIsRead(String language, String typed, String is) {
    assertThat(times(language).read(typed)).contains(OffsetDateTime.parse(is));
    assertThat(times(language).fault(typed)).isEmpty();
    assertThat(times(language).plain(typed)).isEqualTo(is);
  }

  /** In English a slash is written between month and day as well as between day and month. */
  @ParameterizedTest
  @CsvSource({
    "en, 3/7/2026 9:05",
    "de, 31.2.2026 9:05",
    "de, 28.11.2026",
    "de, 14:05",
    "de, 28.11.26 14:05",
    "fr, 28/13/2026 14:05",
    "de, 28.11.2026 24:05",
    "de, 28.11.1826 14:05",
    "de, 28.11.2026 14:05 +25:00"
  })
  void whatIsNoTimeOrCouldBeTwoIsRefused(String language, String typed) {
    assertThat(times(language).read(typed)).isEmpty();
    assertThat(times(language).fault(typed).orElseThrow()).contains(" 10:15", typed);
    assertThat(times(language).plain(typed)).isEqualTo(typed);
  }

  @Test
  void theHourThatIsMissingOrDoubleIsAskedAbout() {
    assertThat(times("en").fault("2026-03-29 02:30").orElseThrow())
        .isEqualTo("The clocks were put forward, and 2026-03-29 02:30 did not exist. Check it.");
    assertThat(times("en").fault("2026-10-25 02:30").orElseThrow())
        .isEqualTo(
            "The clocks were put back, and 2026-10-25 02:30 came twice. Add +02:00 for the first"
                + " or +01:00 for the second.");
  }

  @Test
  void aTimeOfAnotherOffsetKeepsIt() {
    assertThat(times("de").show(OffsetDateTime.parse("2026-11-28T14:05+01:00")))
        .isEqualTo("28.11.2026 14:05");
    assertThat(times("de").show(OffsetDateTime.parse("2026-11-28T14:05+02:00")))
        .isEqualTo("2026-11-28 14:05 +02:00");
    assertThat(times("de").show(OffsetDateTime.parse("2026-10-25T02:30+02:00")))
        .isEqualTo("2026-10-25 02:30 +02:00");
  }
}
