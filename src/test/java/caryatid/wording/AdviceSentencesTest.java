package caryatid.wording;

import static caryatid.advice.AdvisedLeg.FLEXION;
import static caryatid.advice.AdvisedLeg.FORWARD;
import static caryatid.advice.AdvisedLeg.KNEE;
import static caryatid.advice.AdvisedLeg.KNEE_FRONT;
import static caryatid.advice.AdvisedLeg.offset;
import static caryatid.advice.AdvisedLeg.target;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.advice.Adjustment;
import caryatid.advice.AdviceRemark;
import caryatid.advice.AdvisedLeg;
import caryatid.advice.ChangeKind;
import caryatid.advice.Situation.Circumstance;
import caryatid.demo.Entries;
import caryatid.demo.Invented;
import caryatid.demo.TurnedAnkle;
import caryatid.entry.EntryKind;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.views.RecordAdvice;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Situations, and the sentences that an advice says in them, whole. */
class AdviceSentencesTest {
  private static final Adjustment AT_ITS_END =
      new Adjustment(ChangeKind.PLANTARFLEXION, 1, 1, 1, 0.5, OptionalDouble.empty());
  private static final Adjustment INVERSION =
      new Adjustment(ChangeKind.INVERSION, 0, -8, 8, 0.5, OptionalDouble.empty());

  private static final Map<String, RecordAdvice> SITUATIONS = new TreeMap<>();

  static {
    situation("first stand", new AdvisedLeg().kneeAt(-10));
    situation("no stand", new AdvisedLeg());
    situation("refused", new AdvisedLeg().kneeAt(-10).holds(Circumstance.REFUSED));
    situation("locked", new AdvisedLeg().prosthetic().kneeAt(-10).holds(Circumstance.LOCKED));
    situation("hand-held", new AdvisedLeg().kneeAt(-10).holds(Circumstance.HAND_HELD));
    situation("changed since", new AdvisedLeg().kneeAt(-10).holds(Circumstance.CHANGED_SINCE));
    situation("no target", new AdvisedLeg().kneeAt(-10).asks());
    situation("no travel", new AdvisedLeg().kneeAt(-10).can());
    situation("flexion alone", new AdvisedLeg().kneeAt(-10).can(FLEXION));
    situation("unknown geometry", new AdvisedLeg().ankleNotMarked().kneeAt(-10));
    situation(
        "polycentric", new AdvisedLeg().prosthetic().kneeAt(20).holds(Circumstance.AXIS_NOT_NAMED));
    situation(
        "prosthetic knee not marked", frontalOnly(new AdvisedLeg().prosthetic()).can(INVERSION));
    situation("own knee not marked", frontalOnly(new AdvisedLeg()).can(INVERSION));
    situation(
        "prosthetic",
        new AdvisedLeg()
            .prosthetic()
            .kneeAt(12)
            .asks(target(KNEE, 30, 10))
            .can(FORWARD)
            .holds(Circumstance.AXIS_ASKED));
    situation(
        "warned",
        new AdvisedLeg()
            .prosthetic()
            .kneeAt(-2)
            .holds(Circumstance.KNEE_WARNING, Circumstance.ONE_UNDECIDED_STAND));
    situation(
        "warned at its end",
        new AdvisedLeg().prosthetic().kneeAt(-2).can(AT_ITS_END).holds(Circumstance.KNEE_WARNING));
    situation("contradiction", new AdvisedLeg().kneeAt(-30, 10));
    situation(
        "undecided",
        new AdvisedLeg().stands(offset(KNEE, 15, 7)).holds(Circumstance.ONE_UNDECIDED_STAND));
    situation("within", new AdvisedLeg().kneeAt(15, 15));
    situation("at its end", new AdvisedLeg().kneeAt(-30).can(AT_ITS_END));
    situation("contracture", new AdvisedLeg().kneeAt(-10).contracture(5, 8));
    situation("causes", causes());
    situation("way back below the contracture", belowContracture());
  }

  private static AdvisedLeg frontalOnly(AdvisedLeg of) {
    return of.stands(offset(KNEE_FRONT, 20, 2)).asks(target(KNEE_FRONT, 0, 5));
  }

  private static void situation(String name, AdvisedLeg of) {
    SITUATIONS.put(name, of.ofRecord());
  }

  private static void situation(String name, Entries of) {
    SITUATIONS.put(name, RecordAdvice.of(of.record(), Map.of()).get(0));
  }

  /** Neither lengths nor the seat are noted, and there is pain. */
  private static Entries causes() {
    return Entries.opened()
        .add(EntryKind.ASSESSMENT, Invented.answers("pain", 4))
        .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(0))
        .add(EntryKind.STAND, TurnedAnkle.stand(-20))
        .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.ankle(3))
        .add(EntryKind.STAND, TurnedAnkle.stand(-8, "load-share-percent", 30));
  }

  private static Entries belowContracture() {
    return TurnedAnkle.begun()
        .add(EntryKind.ASSESSMENT, Invented.answers("contracture-deg", 5))
        .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.socketFlexion(4))
        .add(EntryKind.STAND, TurnedAnkle.stand(15))
        .add(EntryKind.BENCH_ALIGNMENT, TurnedAnkle.socketFlexion(8))
        .add(EntryKind.STAND, TurnedAnkle.stand(-20));
  }

  private static List<String> said(String situation, Locale locale) {
    return AdviceText.lines(SITUATIONS.get(situation), Wording.in(locale)).stream()
        .map(line -> line.replace('\u00a0', ' '))
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "no stand | This leg has no stand with a result yet. Let the wearer stand first.",
        "refused | The newest stand gave no result, so nothing is advised from it.",
        "locked | The knee was locked in the newest stand, so nothing is advised from it.",
        "hand-held | A hand held or touched something in the newest stand, so nothing is advised"
            + " from it.",
        "changed since | Something was changed after the newest stand. Let the wearer stand as the"
            + " prosthesis is set now, before anything else is changed.",
        "no target | The newest stand has no offset of this foot's line with a target, so nothing"
            + " is advised.",
        "no travel | Nothing that may be changed has its travel noted. Note with the bench"
            + " alignment how far each joint goes (lowest, highest) and in what steps; nothing else"
            + " is proposed.",
        "flexion alone | Nothing that may be changed has its travel noted. Note with the bench"
            + " alignment how far each joint goes (lowest, highest) and in what steps; nothing else"
            + " is proposed.",
        "unknown geometry | The landmarks do not tell what the noted changes would do, and this"
            + " wearer has not shown it yet. Mark the ankle and the knee.",
        "polycentric | The knee is polycentric. Which axis or point does its document measure from?"
            + " Mark that one and write it as the landmark's definition; until then nothing is"
            + " advised.",
        "prosthetic knee not marked | The prosthetic knee's axis was not marked from the side, so"
            + " that nothing guards it, and nothing is advised.",
        "own knee not marked | The wearer's knee was not marked from the side, so that nothing"
            + " guards it. Mark it before the next stand.",
        "prosthetic | Nothing is proposed that makes it more probable than 5 % that the line runs"
            + " behind the prosthetic knee's axis.",
        "prosthetic | Does the target hold for the axis or point that was marked? With a"
            + " polycentric knee its document names it: write it as the landmark's definition.",
        "warned | The prosthetic knee may bend: seat the wearer, or hands on the rails and a"
            + " helper. Only what makes that less probable is proposed, or the way back to the last"
            + " good setting.",
        "warned | This rests on one stand that decides neither way.",
        "warned at its end | None of the changes that this prosthesis allows makes it clearly less"
            + " probable that the knee bends. Look at the set-up, the components and the targets"
            + " again before the wearer stands.",
        "contradiction | The stand of entry 2 contradicts those before it: it fits them in less"
            + " than 1 of 100 cases. Look for the reason; everything expected is less certain until"
            + " then.",
        "undecided | Measure again first: what is uncertain is the measurement, and no change makes"
            + " it clearly more probable that every offset is within its tolerance.",
        "undecided | This rests on one stand that decides neither way. Two more would make it"
            + " surer.",
        "within | Every tolerance is met, as far as standing shows. Nothing is to be changed for"
            + " the line.",
        "at its end | None of the changes that this prosthesis allows makes it more probable that"
            + " every offset is within its tolerance. Look at the set-up, the components and the"
            + " targets again.",
        "first stand | This is what geometry expects; this wearer has not shown an answer yet."
            + " People shift their weight, so the answer may be a third of it, twice as much, or"
            + " the other way.",
        "first stand | No flexion contracture is noted in degrees. See that the joint above the"
            + " socket still reaches full extension before anything is changed.",
        "first stand | The wearer's knee is guarded too: a line behind it can let it buckle, one"
            + " far in front of it can overextend it.",
        "contracture | Nothing is proposed that asks for more extension than the noted contracture"
            + " leaves.",
        "causes | Rule these out first, before any screw is turned:",
        "causes | The lengths of the legs are not noted.",
        "causes | How the wearer sits in the socket is not noted.",
        "causes | Pain was scored 4 of 10 (entry 2). Find its cause before the line is moved.",
        "causes | The prosthesis bears 30.0 % of the load. Find out why before the line is moved:"
            + " pain, fear, length, fit.",
        "way back below the contracture | The last good setting flexes the socket less than the"
            + " noted contracture, so going back to it is not advised."
      })
  void eachSituationHasItsSentence(String situation, String sentence) {
    assertThat(said(situation, Locale.ENGLISH)).contains(sentence);
  }

  /** So that no remark goes without a row above. */
  @Test
  void everyRemarkIsSaidInSomeSituation() {
    assertThat(
            SITUATIONS.values().stream()
                .flatMap(
                    of -> Stream.concat(of.advice().remarks().stream(), of.backAgainst().stream()))
                .<Topic>map(Remark::topic)
                .collect(Collectors.toSet()))
        .containsAll(Arrays.asList(AdviceRemark.values()));
  }

  @Test
  void inEverySituationTheLastTwoSentencesAreThoseThatAreSaidAlways() {
    for (String situation : SITUATIONS.keySet()) {
      RecordAdvice of = SITUATIONS.get(situation);
      List<String> advice = AdviceText.advice(of, Wording.in(Locale.ENGLISH));
      assertThat(advice.subList(advice.size() - 2, advice.size()))
          .as(situation)
          .containsExactly(
              "Change one thing at a time, unloaded. Secure the fasteners to the stated torque"
                  + " before the wearer stands or walks. Comfort, gait and the maker's limits"
                  + " decide.",
              "Standing does not show how the wearer walks; walk between rails first. If gait,"
                  + " comfort or skin disagree, they decide: keep what walks well, write why, and"
                  + " stand once more.");
    }
  }

  /** Where nothing is advised no line names a change or a probability. */
  @ParameterizedTest
  @CsvSource({
    "no stand",
    "refused",
    "locked",
    "hand-held",
    "changed since",
    "no target",
    "no travel",
    "flexion alone",
    "unknown geometry",
    "polycentric",
    "prosthetic knee not marked",
    "causes"
  })
  void whereNothingIsAdvisedNoChangeIsNamed(String situation) {
    assertThat(SITUATIONS.get(situation).advice().proposals()).isEmpty();
    assertThat(said(situation, Locale.ENGLISH))
        .noneMatch(line -> line.startsWith("Next:") || line.startsWith("Or"));
  }

  /** The wearer is made secure first; nobody is asked to repeat the stand. */
  @ParameterizedTest
  @CsvSource({"warned", "warned at its end"})
  void theKneesWarningComesFirstAndNobodyIsAskedToMeasureAgain(String situation) {
    RecordAdvice of = SITUATIONS.get(situation);
    assertThat(said(situation, Locale.ENGLISH).get(1)).startsWith("The prosthetic knee may bend:");
    assertThat(AdviceText.sentence(of, Wording.in(Locale.ENGLISH)))
        .startsWith("The prosthetic knee may bend:");
    assertThat(said(situation, Locale.ENGLISH))
        .noneMatch(line -> line.contains("easure again") || line.contains("Two more"));
  }

  /**
   * Never said: these words in any form, and nothing of how the wearer is going to walk. The last
   * column shows that each pattern finds what it is for.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | correct\\w* optim\\w* safe\\w* ideal\\w* perfect\\w* best will.walk walks?.better |"
            + " this is safe.",
        "de | korrekt\\w* richtig\\w* optim\\w* sicher(e[rsnm]?)? ideal\\w* perfekt\\w* beste\\w*"
            + " wird.gehen geht.besser | das ist sicherer.",
        "fr | correct\\w* optim\\w* sûre?s? sécurit\\w* idéal\\w* parfait\\w* meilleur\\w* marchera"
            + " | c'est sûr.",
        "es | correct\\w* óptim\\w* segur\\w* ideal\\w* perfect\\w* mejor\\w* caminará | es óptimo."
      })
  void someWordsAreNeverSaidInAnyAdvice(String language, String words, String found) {
    Pattern never = Pattern.compile("(?iU)\\b(" + words.strip().replace(' ', '|') + ")\\b");
    assertThat(found).containsPattern(never);
    for (String situation : SITUATIONS.keySet()) {
      assertThat(said(situation, Locale.forLanguageTag(language)))
          .as(situation)
          .hasSizeGreaterThan(2)
          .noneMatch(line -> never.matcher(line).find());
    }
  }
}
