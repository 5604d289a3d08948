package caryatid.entry.form;

import caryatid.entry.Acceptance;
import caryatid.entry.Assessment;
import caryatid.entry.BenchAlignment;
import caryatid.entry.Closing;
import caryatid.entry.Components;
import caryatid.entry.EntryContent;
import caryatid.entry.Erasure;
import caryatid.entry.LegLength;
import caryatid.entry.Note;
import caryatid.entry.OwnSetting;
import caryatid.entry.RecordOpening;
import caryatid.entry.Sending;
import caryatid.entry.ShoeList;
import caryatid.entry.StandSummary;
import caryatid.entry.Walking;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Turns the content of an entry into answers to its form, in the form's order; the inverse of
 * {@link AnswersToContent}.
 */
public final class ContentToAnswers {
  private ContentToAnswers() {}

  /** The answers that say what an entry says. */
  public static Answers answers(EntryContent content) {
    return of(content).answers();
  }

  private static AnswersBuilder of(EntryContent content) {
    return switch (content.kind()) {
      case OPENING -> of((RecordOpening) content);
      case ASSESSMENT -> of((Assessment) content);
      case BENCH_ALIGNMENT -> of((BenchAlignment) content);
      case COMPONENTS -> of((Components) content);
      case LEG_LENGTH -> of((LegLength) content);
      case STAND -> of((StandSummary) content);
      case WALKING -> of((Walking) content);
      case FOOTWEAR -> of((ShoeList) content);
      case ACCEPTED -> of((Acceptance) content);
      case OWN_SETTING -> of((OwnSetting) content);
      case CLOSING -> of((Closing) content);
      case NOTE -> of((Note) content);
      case SENDING -> of((Sending) content);
      case ERASURE -> of((Erasure) content);
    };
  }

  private static AnswersBuilder of(RecordOpening c) {
    return new AnswersBuilder()
        .words("wearer", Optional.of(c.wearer()))
        .choice("side", Choices.PROSTHETIC_SIDE, Optional.of(c.side()))
        .choice("level", Choices.LEVEL, Optional.of(c.level()))
        .choice("level-left", Choices.LEVEL, c.levelLeft())
        .choice("level-right", Choices.LEVEL, c.levelRight())
        .number("body-mass-kg", c.bodyMassKg())
        .whole("mobility-grade", c.mobilityGrade())
        .words("note", c.note());
  }

  private static AnswersBuilder of(Assessment c) {
    return new AnswersBuilder()
        .words("contractures", c.contractures())
        .number("contracture-deg", c.contractureDeg())
        .words("socket-fit", c.socketFit())
        .words("liner", c.liner())
        .whole("sock-ply", c.sockPly())
        .words("suspension", c.suspension())
        .words("skin", c.skin())
        .words("shoe", c.shoe())
        .number("minutes-since-donning", c.minutesSinceDonning())
        .whole("socket-comfort", c.socketComfort())
        .whole("pain", c.pain())
        .words("wearer-says", c.wearerSays())
        .words("note", c.note());
  }

  private static AnswersBuilder of(BenchAlignment c) {
    return new AnswersBuilder()
        .rows("items", c.items(), RowsToAnswers::item)
        .words("note", c.note());
  }

  private static AnswersBuilder of(Components c) {
    return new AnswersBuilder()
        .rows("components", c.components(), RowsToAnswers::component)
        .words("note", c.note());
  }

  private static AnswersBuilder of(LegLength c) {
    return new AnswersBuilder()
        .rows("landmarks", c.landmarks(), RowsToAnswers::height)
        .number("intended-shortening-mm", c.intendedShorteningMm())
        .number("lift-mm", c.liftMm())
        .choice("lift-under", Choices.SIDE, c.liftUnder())
        .yesNo("pelvis-level", c.pelvisLevel())
        .words("note", c.note());
  }

  private static AnswersBuilder of(StandSummary c) {
    return new AnswersBuilder()
        .words("changed", c.changed())
        .words("why", c.why())
        .words("footwear", c.footwear())
        .number("heel-height-mm", c.heelHeightMm())
        .name("knee-mode", c.kneeMode())
        .number("body-mass-kg", c.bodyMassKg())
        .choice("body-mass-from", Choices.MASS_FROM, c.bodyMassFrom())
        .number("load-share-percent", c.loadSharePercent())
        .rows("findings", c.findings(), RowsToAnswers::found)
        .words("conclusion", c.conclusion())
        .words("comfort", c.comfort())
        .words("skin", c.skin())
        .words("next-step", c.nextStep())
        .words("note", c.note());
  }

  private static AnswersBuilder of(Walking c) {
    return new AnswersBuilder()
        .rows("observations", c.observations(), RowsToAnswers::observation)
        .whole("comfort", c.comfort())
        .words("skin", c.skin())
        .words("heel-stiffness", c.heelStiffness())
        .words("walking-aid", c.walkingAid())
        .whole("socket-comfort", c.socketComfort())
        .whole("pain", c.pain())
        .words("wearer-says", c.wearerSays())
        .words("note", c.note());
  }

  private static AnswersBuilder of(ShoeList c) {
    return new AnswersBuilder()
        .rows("shoes", c.shoes(), RowsToAnswers::shoe)
        .words("note", c.note());
  }

  private static AnswersBuilder of(Acceptance c) {
    return new AnswersBuilder()
        .words("what", Optional.of(c.what()))
        .words("why", Optional.of(c.why()))
        .whole("stand", c.stand())
        .whole("entry", c.entry());
  }

  private static AnswersBuilder of(OwnSetting c) {
    return new AnswersBuilder()
        .words("what", Optional.of(c.what()))
        .whole("attempts", OptionalInt.of(c.attempts()))
        .whole("succeeded", OptionalInt.of(c.succeeded()))
        .number("heel-height-wanted-mm", c.heelHeightWantedMm())
        .number("heel-height-set-mm", c.heelHeightSetMm())
        .words("note", c.note());
  }

  private static AnswersBuilder of(Closing c) {
    return new AnswersBuilder()
        .whole("socket-comfort", c.socketComfort())
        .whole("pain", c.pain())
        .words("wearer-says", c.wearerSays())
        .number("minutes-stood", c.minutesStood())
        .words("skin", c.skin())
        .words("next-visit", c.nextVisit().map(LocalDate::toString))
        .words("note", c.note());
  }

  private static AnswersBuilder of(Note c) {
    return new AnswersBuilder().words("text", Optional.of(c.text()));
  }

  private static AnswersBuilder of(Sending c) {
    return new AnswersBuilder()
        .words("sent-to", Optional.of(c.to()))
        .whole("up-to-entry", OptionalInt.of(c.upTo()))
        .whole("newly-stored", OptionalInt.of(c.newlyStored()));
  }

  private static AnswersBuilder of(Erasure c) {
    return new AnswersBuilder()
        .words("why", Optional.of(c.why()))
        .whole("entries", OptionalInt.of(c.entries()));
  }
}
