package caryatid.entry.form;

import caryatid.entry.Acceptance;
import caryatid.entry.Assessment;
import caryatid.entry.BenchAlignment;
import caryatid.entry.Closing;
import caryatid.entry.Components;
import caryatid.entry.EntryContent;
import caryatid.entry.EntryKind;
import caryatid.entry.Erasure;
import caryatid.entry.KneeLock;
import caryatid.entry.LegLength;
import caryatid.entry.Note;
import caryatid.entry.OwnSetting;
import caryatid.entry.RecordOpening;
import caryatid.entry.Sending;
import caryatid.entry.ShoeList;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.entry.Walking;
import caryatid.remark.Coded;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * Turns a filled-in form into the content of an entry. Here, in {@link AnswersToRows}, and on the
 * way back in {@link ContentToAnswers} and {@link RowsToAnswers}, a form's keys meet fields, and
 * nowhere else.
 */
public final class AnswersToContent {
  private AnswersToContent() {}

  /**
   * What answers say.
   *
   * @param kind the kind of entry
   * @param a answers that fit its form
   * @throws IllegalArgumentException if they do not
   */
  public static EntryContent content(EntryKind kind, Answers a) {
    return switch (kind) {
      case OPENING -> opening(a);
      case ASSESSMENT -> assessment(a);
      case BENCH_ALIGNMENT -> benchAlignment(a);
      case COMPONENTS -> components(a);
      case LEG_LENGTH -> length(a);
      case STAND -> stood(a);
      case WALKING -> walking(a);
      case FOOTWEAR -> footwear(a);
      case ACCEPTED -> accepted(a);
      case OWN_SETTING -> ownSetting(a);
      case CLOSING -> closing(a);
      case NOTE -> note(a);
      case SENDING -> sending(a);
      case ERASURE -> erasure(a);
    };
  }

  private static RecordOpening opening(Answers a) {
    return new RecordOpening(
        a.words("wearer").orElseThrow(),
        choice(a, "side", Choices.PROSTHETIC_SIDE).orElseThrow(),
        choice(a, "level", Choices.LEVEL).orElseThrow(),
        choice(a, "level-left", Choices.LEVEL),
        choice(a, "level-right", Choices.LEVEL),
        a.number("body-mass-kg"),
        whole(a, "mobility-grade"),
        a.words("note"));
  }

  private static Assessment assessment(Answers a) {
    return new Assessment(
        a.words("contractures"),
        a.number("contracture-deg"),
        a.words("socket-fit"),
        a.words("liner"),
        whole(a, "sock-ply"),
        a.words("suspension"),
        a.words("skin"),
        a.words("shoe"),
        a.number("minutes-since-donning"),
        whole(a, "socket-comfort"),
        whole(a, "pain"),
        a.words("wearer-says"),
        a.words("note"));
  }

  private static BenchAlignment benchAlignment(Answers a) {
    return new BenchAlignment(rows(a, "items", AnswersToRows::item), a.words("note"));
  }

  private static Components components(Answers a) {
    return new Components(rows(a, "components", AnswersToRows::component), a.words("note"));
  }

  private static LegLength length(Answers a) {
    return new LegLength(
        rows(a, "landmarks", AnswersToRows::height),
        a.number("intended-shortening-mm"),
        a.number("lift-mm"),
        choice(a, "lift-under", Choices.SIDE),
        a.yesNo("pelvis-level"),
        a.words("note"));
  }

  private static StandSummary stood(Answers a) {
    return new StandSummary(
        a.words("changed"),
        a.words("why"),
        a.words("footwear"),
        a.number("heel-height-mm"),
        name(a, "knee-mode", KneeLock.class),
        a.number("body-mass-kg"),
        choice(a, "body-mass-from", Choices.MASS_FROM),
        a.number("load-share-percent"),
        rows(a, "findings", AnswersToRows::found),
        a.words("conclusion"),
        a.words("comfort"),
        a.words("skin"),
        a.words("next-step"),
        a.words("note"));
  }

  private static Walking walking(Answers a) {
    return new Walking(
        rows(a, "observations", AnswersToRows::observation),
        whole(a, "comfort"),
        a.words("skin"),
        a.words("heel-stiffness"),
        a.words("walking-aid"),
        whole(a, "socket-comfort"),
        whole(a, "pain"),
        a.words("wearer-says"),
        a.words("note"));
  }

  private static ShoeList footwear(Answers a) {
    return new ShoeList(rows(a, "shoes", AnswersToRows::shoe), a.words("note"));
  }

  private static Acceptance accepted(Answers a) {
    return new Acceptance(
        a.words("what").orElseThrow(),
        a.words("why").orElseThrow(),
        whole(a, "stand"),
        whole(a, "entry"));
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

  private static Closing closing(Answers a) {
    return new Closing(
        whole(a, "socket-comfort"),
        whole(a, "pain"),
        a.words("wearer-says"),
        a.number("minutes-stood"),
        a.words("skin"),
        a.words("next-visit").map(LocalDate::parse),
        a.words("note"));
  }

  private static Note note(Answers a) {
    return new Note(a.words("text").orElseThrow());
  }

  private static Sending sending(Answers a) {
    return new Sending(
        a.words("sent-to").orElseThrow(), number(a, "up-to-entry"), number(a, "newly-stored"));
  }

  private static Erasure erasure(Answers a) {
    return new Erasure(a.words("why").orElseThrow(), number(a, "entries"));
  }

  static <E extends Enum<E>> Optional<E> choice(Answers a, String key, Choices<E> of) {
    return a.words(key).map(code -> of.constant(code).orElseThrow());
  }

  static <C extends Coded> Optional<TermOrText<C>> name(Answers a, String key, Class<C> type) {
    return a.name(key).map(name -> new TermOrText<>(name.code().map(type::cast), name.text()));
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
