package caryatid.views;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.entry.BenchAlignment;
import caryatid.entry.BenchItem;
import caryatid.entry.Entry;
import caryatid.entry.EntryContent;
import caryatid.entry.OwnSetting;
import caryatid.entry.SettingUnit;
import caryatid.entry.TermOrText;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What an item is set to now, and what of its earlier numbers still holds. */
class CurrentSettingTest {
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-04T10:00:00+01:00");

  private static BenchAlignment.Item item(
      BenchItem what, String recommended, String set, SettingUnit unit, String source) {
    return new BenchAlignment.Item(
        TermOrText.of(what),
        Optional.empty(),
        Optional.empty(),
        number(recommended),
        new BigDecimal(set),
        unit,
        Optional.empty(),
        text(source),
        text(""));
  }

  private static Optional<String> text(String text) {
    return Optional.of(text).filter(t -> !t.isEmpty());
  }

  private static Optional<BigDecimal> number(String number) {
    return text(number).map(BigDecimal::new);
  }

  private static Entry entry(int number, EntryContent content) {
    return new Entry(number, AT.plusMinutes(number), "AB", Optional.empty(), content, List.of());
  }

  private static Entry bench(int number, BenchAlignment.Item... items) {
    return entry(number, new BenchAlignment(List.of(items), Optional.empty()));
  }

  @Test
  void whatWasRecommendedHoldsUntilSomethingElseIs() {
    List<CurrentSetting> now =
        CurrentSetting.of(
            List.of(
                bench(2, item(BenchItem.SOCKET_FLEXION, "5", "3", SettingUnit.DEG, "leaflet")),
                bench(4, item(BenchItem.SOCKET_FLEXION, "", "7", SettingUnit.DEG, ""))));
    assertThat(now)
        .containsExactly(
            new CurrentSetting(
                item(BenchItem.SOCKET_FLEXION, "5", "7", SettingUnit.DEG, "leaflet"),
                4,
                Optional.empty()));
    assertThat(
            CurrentSetting.of(
                List.of(
                    bench(2, item(BenchItem.SOCKET_FLEXION, "5", "3", SettingUnit.DEG, "leaflet")),
                    bench(4, item(BenchItem.SOCKET_FLEXION, "6", "7", SettingUnit.DEG, "other")))))
        .extracting(CurrentSetting::row)
        .containsExactly(item(BenchItem.SOCKET_FLEXION, "6", "7", SettingUnit.DEG, "other"));
  }

  @Test
  void whatWasRecommendedInAnotherUnitDoesNotHold() {
    assertThat(
            CurrentSetting.of(
                List.of(
                    bench(2, item(BenchItem.SOCKET_FLEXION, "5", "3", SettingUnit.DEG, "leaflet")),
                    bench(4, item(BenchItem.SOCKET_FLEXION, "", "7", SettingUnit.MM, "")))))
        .containsExactly(
            new CurrentSetting(
                item(BenchItem.SOCKET_FLEXION, "", "7", SettingUnit.MM, ""), 4, Optional.empty()));
  }

  @Test
  void theHeelThatTheWearerSetIsTheHeelNow() {
    OwnSetting own = new OwnSetting("ankle", 3, 2, number("15"), number("14"), Optional.empty());
    assertThat(
            CurrentSetting.of(
                List.of(
                    bench(2, item(BenchItem.HEEL_HEIGHT, "12", "11", SettingUnit.MM, "leaflet")),
                    entry(3, own))))
        .containsExactly(
            new CurrentSetting(
                item(BenchItem.HEEL_HEIGHT, "12", "14", SettingUnit.MM, "leaflet"),
                3,
                Optional.of("ankle")));
  }
}
