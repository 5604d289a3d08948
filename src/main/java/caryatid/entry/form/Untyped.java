package caryatid.entry.form;

import caryatid.entry.Accepted;
import caryatid.entry.Assessment;
import caryatid.entry.BenchAlignment;
import caryatid.entry.Components;
import caryatid.entry.Content;
import caryatid.entry.Erasure;
import caryatid.entry.Footwear;
import caryatid.entry.Length;
import caryatid.entry.Note;
import caryatid.entry.Opening;
import caryatid.entry.OwnSetting;
import caryatid.entry.Stood;
import caryatid.entry.Walking;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What an entry says as answers to its form, in the form's order; the way back from {@link Typed}.
 */
public final class Untyped {
  private Untyped() {}

  /** The answers that say what an entry says. */
  public static Answers answers(Content content) {
    return of(content).answers();
  }

  private static Filling of(Content content) {
    if (content instanceof Opening c) {
      return of(c);
    }
    if (content instanceof Assessment c) {
      return of(c);
    }
    if (content instanceof BenchAlignment c) {
      return of(c);
    }
    if (content instanceof Components c) {
      return of(c);
    }
    if (content instanceof Length c) {
      return of(c);
    }
    if (content instanceof Stood c) {
      return of(c);
    }
    if (content instanceof Walking c) {
      return of(c);
    }
    if (content instanceof Footwear c) {
      return of(c);
    }
    if (content instanceof Accepted c) {
      return of(c);
    }
    if (content instanceof OwnSetting c) {
      return of(c);
    }
    if (content instanceof Note c) {
      return of(c);
    }
    return of((Erasure) content);
  }

  private static Filling of(Opening c) {
    return new Filling()
        .words("wearer", Optional.of(c.wearer()))
        .choice("side", Choices.PROSTHETIC_SIDE, Optional.of(c.side()))
        .choice("level", Choices.LEVEL, Optional.of(c.level()))
        .number("body-mass-kg", c.bodyMassKg())
        .whole("mobility-grade", c.mobilityGrade())
        .words("note", c.note());
  }

  private static Filling of(Assessment c) {
    return new Filling()
        .words("contractures", c.contractures())
        .words("socket-fit", c.socketFit())
        .words("liner", c.liner())
        .whole("sock-ply", c.sockPly())
        .words("suspension", c.suspension())
        .words("skin", c.skin())
        .words("shoe", c.shoe())
        .number("minutes-since-donning", c.minutesSinceDonning())
        .words("note", c.note());
  }

  private static Filling of(BenchAlignment c) {
    return new Filling().rows("items", c.items(), UntypedRows::item).words("note", c.note());
  }

  private static Filling of(Components c) {
    return new Filling()
        .rows("components", c.components(), UntypedRows::component)
        .words("note", c.note());
  }

  private static Filling of(Length c) {
    return new Filling()
        .rows("landmarks", c.landmarks(), UntypedRows::height)
        .number("intended-shortening-mm", c.intendedShorteningMm())
        .number("lift-mm", c.liftMm())
        .choice("lift-under", Choices.SIDE, c.liftUnder())
        .yesNo("pelvis-level", c.pelvisLevel())
        .words("note", c.note());
  }

  private static Filling of(Stood c) {
    return new Filling()
        .words("changed", c.changed())
        .words("why", c.why())
        .words("footwear", c.footwear())
        .number("heel-height-mm", c.heelHeightMm())
        .name("knee-mode", c.kneeMode())
        .number("body-mass-kg", c.bodyMassKg())
        .choice("body-mass-from", Choices.MASS_FROM, c.bodyMassFrom())
        .number("load-share-percent", c.loadSharePercent())
        .rows("findings", c.findings(), UntypedRows::found)
        .words("conclusion", c.conclusion())
        .words("comfort", c.comfort())
        .words("skin", c.skin())
        .words("next-step", c.nextStep())
        .words("note", c.note());
  }

  private static Filling of(Walking c) {
    return new Filling()
        .rows("observations", c.observations(), UntypedRows::observation)
        .whole("comfort", c.comfort())
        .words("skin", c.skin())
        .words("heel-stiffness", c.heelStiffness())
        .words("walking-aid", c.walkingAid())
        .words("note", c.note());
  }

  private static Filling of(Footwear c) {
    return new Filling().rows("shoes", c.shoes(), UntypedRows::shoe).words("note", c.note());
  }

  private static Filling of(Accepted c) {
    return new Filling()
        .words("what", Optional.of(c.what()))
        .words("why", Optional.of(c.why()))
        .whole("stand", c.stand());
  }

  private static Filling of(OwnSetting c) {
    return new Filling()
        .words("what", Optional.of(c.what()))
        .whole("attempts", OptionalInt.of(c.attempts()))
        .whole("succeeded", OptionalInt.of(c.succeeded()))
        .number("heel-height-wanted-mm", c.heelHeightWantedMm())
        .number("heel-height-set-mm", c.heelHeightSetMm())
        .words("note", c.note());
  }

  private static Filling of(Note c) {
    return new Filling().words("text", Optional.of(c.text()));
  }

  private static Filling of(Erasure c) {
    return new Filling()
        .words("why", Optional.of(c.why()))
        .whole("entries", OptionalInt.of(c.entries()));
  }
}
