package caryatid.format;

import caryatid.sheet.TrialSheet;
import java.io.IOException;

/** What a trial sheet says. */
final class TrialForm {
  private TrialForm() {}

  static void write(TrialSheet trial, JsonObjectWriter out) throws IOException {
    out.text("wearer", trial.wearer())
        .time("at", trial.at())
        .word("side", BodySpellings.PROSTHETIC_SIDE, trial.side())
        .word("level", BodySpellings.LEVEL, trial.level())
        .number("body-mass-kg", trial.bodyMassKg())
        .object("stance", trial.stance(), StanceForm::write)
        .object("other-foot", trial.otherFoot(), StanceForm::writeOtherFoot)
        .word("hands", BodySpellings.HANDS, trial.hands())
        .object("knee", trial.knee(), WornForm::writeKnee)
        .object("footwear", trial.footwear(), WornForm::writeFootwear)
        .number("stance-width-mm", trial.stanceWidthMm())
        .number("toe-out-rad", trial.toeOutRad())
        .number("minutes-walked", trial.minutesWalked())
        .list("components", trial.components(), WornForm::writeComponent)
        .list("landmarks", trial.landmarks(), LandmarkForm::writeEntry)
        .list("targets", trial.targets(), TargetForm::write)
        .object("doubts", trial.doubts(), TargetForm::writeDoubts)
        .object("rule", trial.rule(), TargetForm::writeRule)
        .object("notes", trial.notes(), NotesForm::write);
  }

  static TrialSheet read(JsonObjectReader in) {
    return new TrialSheet(
        in.text("wearer"),
        in.time("at"),
        in.word("side", BodySpellings.PROSTHETIC_SIDE),
        in.word("level", BodySpellings.LEVEL),
        in.numberIfThere("body-mass-kg"),
        in.object("stance", StanceForm::read),
        in.objectIfThere("other-foot", StanceForm::readOtherFoot),
        in.word("hands", BodySpellings.HANDS),
        in.objectIfThere("knee", WornForm::readKnee),
        in.object("footwear", WornForm::readFootwear),
        in.numberIfThere("stance-width-mm"),
        in.numberIfThere("toe-out-rad"),
        in.numberIfThere("minutes-walked"),
        in.list("components", WornForm::readComponent),
        in.list("landmarks", LandmarkForm::readEntry),
        in.list("targets", TargetForm::read),
        in.object("doubts", TargetForm::readDoubts),
        in.object("rule", TargetForm::readRule),
        in.object("notes", NotesForm::read));
  }
}
