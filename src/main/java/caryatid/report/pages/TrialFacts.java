package caryatid.report.pages;

import caryatid.alignment.Stand;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.report.pages.Block.Fact;
import caryatid.sheet.Component;
import caryatid.sheet.TrialSheet;
import caryatid.standing.Stance;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How the wearer stood and in what, as short facts. */
final class TrialFacts {
  private final Wording wording;
  private final List<Fact> facts = new ArrayList<>();

  private TrialFacts(Wording wording) {
    this.wording = wording;
  }

  /** Everything but what {@link TrialSummary} says. */
  static List<Fact> of(List<Stand> stands, Wording wording) {
    TrialFacts facts = new TrialFacts(wording);
    TrialSheet trial = stands.get(0).trial();
    facts.number("BODY_MASS", trial.bodyMassKg(), Unit.KG);
    facts.stance(trial);
    facts.prosthesis(trial);
    return facts.facts;
  }

  private static String key(Stance stance) {
    if (stance instanceof Stance.PlatePerFoot) {
      return "Stance.PlatePerFoot";
    }
    return stance instanceof Stance.BothFeetOnOnePlate
        ? "Stance.BothFeetOnOnePlate"
        : "Stance.ProstheticFootOnPlate";
  }

  private void stance(TrialSheet trial) {
    add("STANCE", wording.word(key(trial.stance())));
    trial
        .otherFoot()
        .ifPresent(
            other ->
                add(
                    "OTHER_FOOT",
                    wording.fill(
                        "TrialFacts.OTHER_FOOT_ON",
                        Argument.term(other.on()),
                        Argument.text(wording.signed(other.heightDifferenceMm(), Unit.MM)))));
    add("HANDS", wording.word(trial.hands()));
    number("STANCE_WIDTH", trial.stanceWidthMm(), Unit.MM);
    trial
        .toeOutRad()
        .ifPresent(rad -> add("TOE_OUT", wording.number(Math.toDegrees(rad), Unit.DEG)));
    trial
        .minutesWalked()
        .ifPresent(
            min ->
                add("WALKED", wording.fill("TrialFacts.MINUTES", Argument.count(Math.round(min)))));
  }

  private void prosthesis(TrialSheet trial) {
    trial
        .knee()
        .ifPresent(
            knee ->
                add(
                    "KNEE",
                    wording.word(knee.locked() ? "TrialFacts.LOCKED" : "TrialFacts.UNLOCKED")
                        + knee.mode().map(mode -> ", " + mode).orElse("")));
    trial
        .components()
        .forEach(component -> facts.add(new Fact(component.what(), named(component))));
    trial.notes().lastChange().ifPresent(change -> add("LAST_CHANGE", change));
  }

  private String named(Component component) {
    return component
        .serial()
        .map(
            serial ->
                wording.fill(
                    "TrialFacts.SERIAL", Argument.text(component.name()), Argument.text(serial)))
        .orElse(component.name());
  }

  private void number(String label, OptionalDouble value, Unit unit) {
    value.ifPresent(number -> add(label, wording.number(number, unit)));
  }

  private void add(String label, String value) {
    facts.add(new Fact(wording.word("TrialFacts." + label), value));
  }
}
