package caryatid.views;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds what settings leave open, from what each item is set to now. */
final class SettingIssues {
  private static final Argument NOTHING = Argument.text("");

  /** A torque so far above is mostly a slip of the decimal point or of the unit. */
  private static final BigDecimal FAR_ABOVE = BigDecimal.TEN;

  private final List<Entry> valid;

  private SettingIssues(List<Entry> valid) {
    this.valid = valid;
  }

  /**
   * What is open; torques first.
   *
   * @param valid the entries that no other takes the place of, in order of time
   */
  static List<Remark> of(List<Entry> valid) {
    SettingIssues issues = new SettingIssues(valid);
    List<CurrentSetting> now = CurrentSetting.of(valid);
    List<Remark> open = new ArrayList<>();
    now.stream()
        .filter(setting -> setting.row().isTorque())
        .forEach(setting -> torque(setting).ifPresent(open::add));
    now.forEach(setting -> issues.reason(setting).ifPresent(open::add));
    return List.copyOf(open);
  }

  /** Too little torque is open whatever the reason, and whoever accepted it. */
  private static Optional<Remark> torque(CurrentSetting setting) {
    BenchAlignment.Item row = setting.row();
    if (row.set().signum() <= 0) {
      return Optional.of(remark(OpenIssue.TORQUE_NONE, setting));
    }
    if (row.recommended().isEmpty()) {
      return Optional.of(remark(OpenIssue.TORQUE_UNKNOWN, setting));
    }
    BigDecimal recommended = row.recommended().get();
    if (row.set().compareTo(recommended) < 0) {
      return Optional.of(torques(OpenIssue.TORQUE_BELOW, setting, recommended));
    }
    return recommended.signum() > 0 && row.set().compareTo(recommended.multiply(FAR_ABOVE)) >= 0
        ? Optional.of(torques(OpenIssue.TORQUE_TEN_TIMES, setting, recommended))
        : Optional.empty();
  }

  private static Remark torques(OpenIssue what, CurrentSetting setting, BigDecimal recommended) {
    List<Argument> arguments = new ArrayList<>(remark(what, setting).arguments());
    arguments.add(Argument.of(setting.row().set().doubleValue(), Unit.NM));
    arguments.add(Argument.of(recommended.doubleValue(), Unit.NM));
    return new Remark(what, arguments);
  }

  private Optional<Remark> reason(CurrentSetting setting) {
    BenchAlignment.Item row = setting.row();
    boolean differs = row.recommended().filter(r -> r.compareTo(row.set()) != 0).isPresent();
    boolean torque = row.isTorque() && torque(setting).isPresent();
    return differs
            && !torque
            && row.why().isEmpty()
            && setting.byWearer().isEmpty()
            && !Acceptances.isAccepted(valid, setting.entry())
        ? Optional.of(remark(OpenIssue.NO_REASON, setting))
        : Optional.empty();
  }

  private static Remark remark(OpenIssue what, CurrentSetting setting) {
    List<Argument> arguments = new ArrayList<>(List.of(Argument.count(setting.entry())));
    arguments.addAll(name(setting.row()));
    arguments.add(LegSuffix.behind(setting.row().side()));
    return new Remark(what, arguments);
  }

  /** A fastener goes by its name; other items by their term, their words, or both. */
  private static List<Argument> name(BenchAlignment.Item row) {
    if (row.fastener().isPresent()) {
      return List.of(NOTHING, Argument.text(row.fastener().get()));
    }
    return TargetValidity.parts(row.item());
  }
}
