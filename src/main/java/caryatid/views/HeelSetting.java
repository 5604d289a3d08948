package caryatid.views;

import caryatid.entry.BenchItem;
import caryatid.entry.Entry;
import caryatid.entry.OwnSetting;
import caryatid.entry.SettingUnit;
import caryatid.entry.StandSummary;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Compares the heel height that the ankle is set for with what was wanted and with the shoe's. */
final class HeelSetting {
  private HeelSetting() {}

  /** The setting of a heel height that was made last. */
  static Optional<CurrentSetting> last(Collection<CurrentSetting> settings) {
    return settings.stream()
        .filter(s -> s.item().is(BenchItem.HEEL_HEIGHT) && s.row().unit() == SettingUnit.MM)
        .max(Comparator.comparingInt(CurrentSetting::entry));
  }

  /** Whether two heel heights are not the same, mm. */
  static boolean differ(BigDecimal oneMm, BigDecimal otherMm) {
    return oneMm.subtract(otherMm).abs().compareTo(OwnSetting.SAME_MM) > 0;
  }

  /**
   * What is open.
   *
   * @param valid the entries that no other takes the place of, in order of time
   */
  static List<Remark> issues(List<Entry> valid) {
    List<Remark> open = new ArrayList<>();
    Optional<CurrentSetting> now = last(CurrentSetting.of(valid));
    now.flatMap(setting -> notAsWanted(valid, setting)).ifPresent(open::add);
    Entry.latest(valid, e -> e.content(StandSummary.class).isPresent())
        .flatMap(stand -> notOfTheShoe(valid, stand))
        .filter(remark -> now.isPresent() && isOf(remark, now.get()))
        .ifPresent(open::add);
    return List.copyOf(open);
  }

  private static Optional<Remark> notAsWanted(List<Entry> valid, CurrentSetting setting) {
    return valid.stream()
        .filter(e -> e.number() == setting.entry())
        .filter(e -> !Acceptances.isAccepted(valid, e.number()))
        .flatMap(e -> e.content(OwnSetting.class).stream())
        .filter(OwnSetting::missed)
        .map(
            own ->
                Remark.of(
                    OpenIssue.OWN_SETTING_DIFFERS,
                    Argument.count(setting.entry()),
                    mm(own.heelHeightSetMm().orElseThrow()),
                    mm(own.heelHeightWantedMm().orElseThrow())))
        .findFirst();
  }

  private static Optional<Remark> notOfTheShoe(List<Entry> valid, Entry stand) {
    Optional<BigDecimal> heelMm =
        stand.content(StandSummary.class).flatMap(StandSummary::heelHeightMm);
    Optional<CurrentSetting> then = last(CurrentSetting.of(valid.subList(0, valid.indexOf(stand))));
    return then.filter(setting -> heelMm.filter(h -> differ(h, setting.row().set())).isPresent())
        .filter(setting -> !Acceptances.isAccepted(valid, stand.number()))
        .map(
            setting ->
                Remark.of(
                    OpenIssue.ANKLE_AND_HEEL,
                    Argument.count(stand.number()),
                    mm(heelMm.orElseThrow()),
                    mm(setting.row().set()),
                    Argument.count(setting.entry())));
  }

  /** What was set after the stand takes its place; that it was is open by itself. */
  private static boolean isOf(Remark remark, CurrentSetting now) {
    return remark.arguments().get(3).equals(Argument.count(now.entry()));
  }

  private static Argument mm(BigDecimal heelMm) {
    return Argument.of(heelMm.doubleValue(), Unit.MM);
  }
}
