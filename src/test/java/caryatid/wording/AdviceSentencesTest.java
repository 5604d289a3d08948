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
        "no stand | No stand of this leg has a result yet. Let the wearer stand first.",
        "refused | No advice: the newest stand gave no result.",
        "locked | No advice: the knee was locked in the newest stand.",
        "hand-held | No advice: a hand held or touched something in the newest stand.",
        "changed since | Something was changed after the newest stand. Let the wearer stand with"
            + " the present setting before anything else is changed.",
        "no target | No advice: in the newest stand this foot's load line has no target.",
        "no travel | No advice: no joint has its range noted. With the bench alignment, note how"
            + " far each joint goes (lowest, highest) and in what steps; only those joints can be"
            + " advised on.",
        "flexion alone | No advice: no joint has its range noted. With the bench alignment, note"
            + " how far each joint goes (lowest, highest) and in what steps; only those joints can"
            + " be advised on.",
        "unknown geometry | Mark the ankle and the knee. Without them geometry cannot say what the"
            + " noted changes would do, and this wearer's stands do not show it yet.",
        "polycentric | The knee is polycentric. Which axis or point does its document measure from?"
            + " Mark that one and enter it as the landmark's definition; until then there is no"
            + " advice.",
        "prosthetic knee not marked | No advice: the prosthetic knee's axis was not marked from the"
            + " side, so nothing shows whether a change would let the knee bend. Mark it before the"
            + " next stand.",
        "own knee not marked | The wearer's own knee was not marked from the side, so the proposals"
            + " cannot protect it. Mark it before the next stand.",
        "prosthetic | No proposed change raises the probability above 5 % that the line runs behind"
            + " the prosthetic knee's axis.",
        "prosthetic | Is the target meant for the axis or point that was marked? For a polycentric"
            + " knee the document names it: enter it as the landmark's definition.",
        "warned | The prosthetic knee may bend: seat the wearer, or hands on the rails and a"
            + " helper. Proposed are only changes that make this less probable, or the way back to"
            + " the last good setting.",
        "warned | This rests on a single stand, which is undecided.",
        "warned at its end | None of the changes that this prosthesis allows makes it clearly less"
            + " probable that the knee bends. Check the set-up, the components and the targets"
            + " again before the wearer stands.",
        "contradiction | The stand of entry 2 contradicts those before it: by chance this happens"
            + " in less than 1 of 100 cases. Look for the reason; until then all predictions are"
            + " less certain.",
        "undecided | Measure again first: the measurement is too uncertain, and no change makes it"
            + " clearly more probable that every offset is within its tolerance.",
        "undecided | This rests on a single stand, which is undecided. Two more would make it more"
            + " certain.",
        "within | In standing, every tolerance is met. The load line needs no change.",
        "at its end | None of the changes that this prosthesis allows makes it more probable that"
            + " every offset is within its tolerance. Check the set-up, the components and the"
            + " targets again.",
        "first stand | This is from geometry alone: no change has been measured on this wearer yet."
            + " People shift their weight, so the real effect may be a third of this, twice as"
            + " much, or the opposite.",
        "first stand | No flexion contracture is noted in degrees. Before changing anything, check"
            + " that the joint above the socket still reaches full extension.",
        "first stand | The proposals protect the wearer's own knee too: a line behind it can let it"
            + " buckle, one far in front of it can overextend it.",
        "contracture | No proposed change needs more extension than the noted contracture leaves.",
        "causes | Rule these out before turning any screw:",
        "causes | The lengths of the legs are not noted.",
        "causes | How the wearer sits in the socket is not noted.",
        "causes | Pain was scored 4 of 10 (entry 2). Find its cause before moving the line.",
        "causes | The prosthesis bears only 30.0 % of the load. Before moving the line, find out"
            + " why: pain, fear, length, fit.",
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
              "Standing does not show how the wearer walks: walk between rails first. If gait,"
                  + " comfort or skin disagree, they decide: keep what walks well, note why, and"
                  + " measure another stand.");
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
