package caryatid.entry.form;

import caryatid.entry.Accepted;
import caryatid.entry.Assessment;
import caryatid.entry.BenchAlignment;
import caryatid.entry.Components;
import caryatid.entry.Content;
import caryatid.entry.Erasure;
import caryatid.entry.Footwear;
import caryatid.entry.Length;
import caryatid.entry.Named;
import caryatid.entry.Note;
import caryatid.entry.Opening;
import caryatid.entry.OwnSetting;
import caryatid.entry.Stood;
import caryatid.entry.Walking;
import caryatid.remark.Coded;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * What an entry says as answers to its form, in the form's order; the way back from {@link Typed}.
 */
public final class Untyped {
  private final Map<String, Answers.Value> values = new LinkedHashMap<>();

  private Untyped() {}

  /** The answers that say what an entry says. */
  public static Answers answers(Content content) {
    return new Answers(of(content).values);
  }

  private static Untyped of(Content content) {
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

  private static Untyped of(Opening c) {
    return new Untyped()
        .words("wearer", Optional.of(c.wearer()))
        .choice("side", Choices.PROSTHETIC_SIDE, Optional.of(c.side()))
        .choice("level", Choices.LEVEL, Optional.of(c.level()))
        .number("body-mass-kg", c.bodyMassKg())
        .whole("mobility-grade", c.mobilityGrade())
        .words("note", c.note());
  }

  private static Untyped of(Assessment c) {
    return new Untyped()
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

  private static Untyped of(BenchAlignment c) {
    return new Untyped().rows("items", c.items(), Untyped::item).words("note", c.note());
  }

  private static Untyped of(Components c) {
    return new Untyped()
        .rows("components", c.components(), Untyped::component)
        .words("note", c.note());
  }

  private static Untyped of(Length c) {
    return new Untyped()
        .rows("landmarks", c.landmarks(), Untyped::height)
        .number("intended-shortening-mm", c.intendedShorteningMm())
        .number("lift-mm", c.liftMm())
        .choice("lift-under", Choices.SIDE, c.liftUnder())
        .yesNo("pelvis-level", c.pelvisLevel())
        .words("note", c.note());
  }

  private static Untyped of(Stood c) {
    return new Untyped()
        .words("changed", c.changed())
        .words("why", c.why())
        .words("footwear", c.footwear())
        .number("heel-height-mm", c.heelHeightMm())
        .name("knee-mode", c.kneeMode())
        .number("body-mass-kg", c.bodyMassKg())
        .choice("body-mass-from", Choices.MASS_FROM, c.bodyMassFrom())
        .number("load-share-percent", c.loadSharePercent())
        .rows("findings", c.findings(), Untyped::found)
        .words("conclusion", c.conclusion())
        .words("comfort", c.comfort())
        .words("skin", c.skin())
        .words("next-step", c.nextStep())
        .words("note", c.note());
  }

  private static Untyped of(Walking c) {
    return new Untyped()
        .rows("observations", c.observations(), Untyped::observation)
        .whole("comfort", c.comfort())
        .words("skin", c.skin())
        .words("heel-stiffness", c.heelStiffness())
        .words("walking-aid", c.walkingAid())
        .words("note", c.note());
  }

  private static Untyped of(Footwear c) {
    return new Untyped().rows("shoes", c.shoes(), Untyped::shoe).words("note", c.note());
  }

  private static Untyped of(Accepted c) {
    return new Untyped()
        .words("what", Optional.of(c.what()))
        .words("why", Optional.of(c.why()))
        .whole("stand", c.stand());
  }

  private static Untyped of(OwnSetting c) {
    return new Untyped()
        .words("what", Optional.of(c.what()))
        .whole("attempts", OptionalInt.of(c.attempts()))
        .whole("succeeded", OptionalInt.of(c.succeeded()))
        .number("heel-height-wanted-mm", c.heelHeightWantedMm())
        .number("heel-height-set-mm", c.heelHeightSetMm())
        .words("note", c.note());
  }

  private static Untyped of(Note c) {
    return new Untyped().words("text", Optional.of(c.text()));
  }

  private static Untyped of(Erasure c) {
    return new Untyped()
        .words("why", Optional.of(c.why()))
        .whole("entries", OptionalInt.of(c.entries()));
  }

  private static Untyped item(BenchAlignment.Item c) {
    return new Untyped()
        .name("item", Optional.of(c.item()))
        .number("recommended", c.recommended())
        .number("set", Optional.of(c.set()))
        .choice("unit", Choices.UNIT, Optional.of(c.unit()))
        .words("source", c.source())
        .words("note", c.note());
  }

  private static Untyped component(Components.Component c) {
    return new Untyped()
        .words("what", Optional.of(c.what()))
        .words("name", Optional.of(c.name()))
        .words("serial", c.serial())
        .number("body-mass-highest-kg", c.bodyMassHighestKg())
        .whole("mobility-grade-lowest", c.mobilityGradeLowest())
        .whole("mobility-grade-highest", c.mobilityGradeHighest())
        .number("heel-height-lowest-mm", c.heelHeightLowestMm())
        .number("heel-height-highest-mm", c.heelHeightHighestMm())
        .words("source", c.source());
  }

  private static Untyped height(Length.Height c) {
    return new Untyped()
        .words("landmark", Optional.of(c.landmark()))
        .number("left-mm", Optional.of(c.leftMm()))
        .number("right-mm", Optional.of(c.rightMm()));
  }

  private static Untyped found(Stood.Found c) {
    return new Untyped()
        .choice("plane", Choices.PLANE, Optional.of(c.plane()))
        .choice("side", Choices.SIDE, Optional.of(c.side()))
        .words("landmark", Optional.of(c.landmark()))
        .number("offset-mm", Optional.of(c.offsetMm()))
        .number("expanded-mm", Optional.of(c.expandedMm()))
        .number("recommended-mm", Optional.of(c.recommendedMm()))
        .number("below-mm", Optional.of(c.belowMm()))
        .number("above-mm", Optional.of(c.aboveMm()))
        .choice("result", Choices.RESULT, Optional.of(c.result()))
        .words("source", Optional.of(c.source()))
        .name("valid-for", c.validFor());
  }

  private static Untyped observation(Walking.Observation c) {
    return new Untyped()
        .name("deviation", Optional.of(c.deviation()))
        .choice("plane", Choices.GAIT_PLANE, c.plane())
        .choice("phase", Choices.PHASE, c.phase())
        .choice("severity", Choices.SEVERITY, c.severity())
        .name("points-to", c.pointsTo())
        .name("source", c.source());
  }

  private static Untyped shoe(Footwear.Shoe c) {
    return new Untyped()
        .words("shoe", Optional.of(c.shoe()))
        .number("heel-height-mm", Optional.of(c.heelHeightMm()))
        .whole("stand", c.stand())
        .yesNo("wearer-sets-ankle-alone", c.wearerSetsAnkleAlone())
        .words("note", c.note());
  }

  private Untyped put(String key, Optional<? extends Answers.Value> value) {
    value.ifPresent(v -> values.put(key, v));
    return this;
  }

  private Untyped words(String key, Optional<String> text) {
    return put(key, text.map(Answers.Value.Words::new));
  }

  private Untyped number(String key, Optional<BigDecimal> number) {
    return put(key, number.map(Answers.Value.Amount::new));
  }

  private Untyped whole(String key, OptionalInt number) {
    return number.isPresent()
        ? number(key, Optional.of(BigDecimal.valueOf(number.getAsInt())))
        : this;
  }

  private Untyped yesNo(String key, Optional<Boolean> yes) {
    return put(key, yes.map(Answers.Value.YesNo::new));
  }

  private <E extends Enum<E>> Untyped choice(String key, Choices<E> of, Optional<E> constant) {
    return words(key, constant.map(of::code));
  }

  private <C extends Coded> Untyped name(String key, Optional<Named<C>> name) {
    return put(
        key, name.map(n -> new Answers.Value.Name(n.code().map(Coded.class::cast), n.text())));
  }

  private <R> Untyped rows(String key, List<R> rows, Function<R, Untyped> row) {
    List<Answers> all = rows.stream().map(r -> new Answers(row.apply(r).values)).toList();
    return put(key, all.isEmpty() ? Optional.empty() : Optional.of(new Answers.Value.Rows(all)));
  }
}
