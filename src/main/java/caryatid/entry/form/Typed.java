package caryatid.entry.form;

import caryatid.entry.Accepted;
import caryatid.entry.Assessment;
import caryatid.entry.BenchAlignment;
import caryatid.entry.Components;
import caryatid.entry.Content;
import caryatid.entry.EntryKind;
import caryatid.entry.Erasure;
import caryatid.entry.Footwear;
import caryatid.entry.KneeLock;
import caryatid.entry.Length;
import caryatid.entry.Named;
import caryatid.entry.Note;
import caryatid.entry.Opening;
import caryatid.entry.OwnSetting;
import caryatid.entry.Stood;
import caryatid.entry.Walking;
import caryatid.remark.Coded;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * Answers as what they say: the one place where a form's keys become fields, with {@link Untyped}.
 */
public final class Typed {
  private Typed() {}

  /**
   * What answers say.
   *
   * @param kind the kind of entry
   * @param a answers that fit its form
   * @throws IllegalArgumentException if they do not
   */
  public static Content content(EntryKind kind, Answers a) {
    return switch (kind) {
      case OPENING -> opening(a);
      case BEFORE_ANY_SCREW -> assessment(a);
      case BENCH_ALIGNMENT -> benchAlignment(a);
      case COMPONENTS -> components(a);
      case LENGTH -> length(a);
      case STAND -> stood(a);
      case WALKING -> walking(a);
      case FOOTWEAR -> footwear(a);
      case ACCEPTED -> accepted(a);
      case OWN_SETTING -> ownSetting(a);
      case NOTE -> note(a);
      case ERASURE -> erasure(a);
    };
  }

  private static Opening opening(Answers a) {
    return new Opening(
        a.words("wearer").orElseThrow(),
        choice(a, "side", Choices.PROSTHETIC_SIDE).orElseThrow(),
        choice(a, "level", Choices.LEVEL).orElseThrow(),
        a.number("body-mass-kg"),
        whole(a, "mobility-grade"),
        a.words("note"));
  }

  private static Assessment assessment(Answers a) {
    return new Assessment(
        a.words("contractures"),
        a.words("socket-fit"),
        a.words("liner"),
        whole(a, "sock-ply"),
        a.words("suspension"),
        a.words("skin"),
        a.words("shoe"),
        a.number("minutes-since-donning"),
        a.words("note"));
  }

  private static BenchAlignment benchAlignment(Answers a) {
    return new BenchAlignment(rows(a, "items", TypedRows::item), a.words("note"));
  }

  private static Components components(Answers a) {
    return new Components(rows(a, "components", TypedRows::component), a.words("note"));
  }

  private static Length length(Answers a) {
    return new Length(
        rows(a, "landmarks", TypedRows::height),
        a.number("intended-shortening-mm"),
        a.number("lift-mm"),
        choice(a, "lift-under", Choices.SIDE),
        a.yesNo("pelvis-level"),
        a.words("note"));
  }

  private static Stood stood(Answers a) {
    return new Stood(
        a.words("changed"),
        a.words("why"),
        a.words("footwear"),
        a.number("heel-height-mm"),
        name(a, "knee-mode", KneeLock.class),
        a.number("body-mass-kg"),
        choice(a, "body-mass-from", Choices.MASS_FROM),
        a.number("load-share-percent"),
        rows(a, "findings", TypedRows::found),
        a.words("conclusion"),
        a.words("comfort"),
        a.words("skin"),
        a.words("next-step"),
        a.words("note"));
  }

  private static Walking walking(Answers a) {
    return new Walking(
        rows(a, "observations", TypedRows::observation),
        whole(a, "comfort"),
        a.words("skin"),
        a.words("heel-stiffness"),
        a.words("walking-aid"),
        a.words("note"));
  }

  private static Footwear footwear(Answers a) {
    return new Footwear(rows(a, "shoes", TypedRows::shoe), a.words("note"));
  }

  private static Accepted accepted(Answers a) {
    return new Accepted(
        a.words("what").orElseThrow(), a.words("why").orElseThrow(), whole(a, "stand"));
  }

  private static OwnSetting ownSetting(Answers a) {
    return new OwnSetting(
        a.words("what").orElseThrow(),
        number(a, "attempts"),
        number(a, "succeeded"),
        a.number("heel-height-wanted-mm"),
        a.number("heel-height-set-mm"),
        a.words("note"));
  }

  private static Note note(Answers a) {
    return new Note(a.words("text").orElseThrow());
  }

  private static Erasure erasure(Answers a) {
    return new Erasure(a.words("why").orElseThrow(), number(a, "entries"));
  }

  static <E extends Enum<E>> Optional<E> choice(Answers a, String key, Choices<E> of) {
    return a.words(key).map(code -> of.constant(code).orElseThrow());
  }

  static <C extends Coded> Optional<Named<C>> name(Answers a, String key, Class<C> type) {
    return a.name(key).map(name -> new Named<>(name.code().map(type::cast), name.text()));
  }

  static OptionalInt whole(Answers a, String key) {
    return a.number(key).stream().mapToInt(n -> n.intValueExact()).findFirst();
  }

  private static int number(Answers a, String key) {
    return whole(a, key).orElseThrow();
  }

  private static <R> List<R> rows(Answers a, String key, Function<Answers, R> row) {
    return a.rows(key).stream().map(row).toList();
  }
}
