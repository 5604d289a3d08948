package caryatid.views;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.entry.Acceptance;
import caryatid.entry.Entry;
import caryatid.entry.EntryContent;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.RecordOpening;
import caryatid.entry.StandSummary;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Verdict;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.ProstheticSide;
import caryatid.wording.LandmarkWords;
import caryatid.wording.WarningWords;
import caryatid.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Warnings of stands whose result is not at hand, from what their entries say. */
class StandWarningsTest {
  private final List<Entry> entries = new ArrayList<>();

  private void add(EntryContent content) {
    entries.add(
        new Entry(
            entries.size() + 1, Invented.AT, "AB", Optional.empty(), content, files(content)));
  }

  /** A result is kept, so that nothing was typed. */
  private static List<KeptFile> files(EntryContent content) {
    return content.kind() == EntryKind.STAND
        ? List.of(new KeptFile("result.json", KeptFile.Role.RESULT, "result.json"))
        : List.of();
  }

  private void open(AmputationLevel level) {
    add(
        new RecordOpening(
            "K7",
            ProstheticSide.RIGHT,
            level,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty()));
  }

  private void stood(String footwear, String landmark, String mm) {
    StandSummary.Found found =
        new StandSummary.Found(
            new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, landmark),
            new BigDecimal(mm),
            new BigDecimal("4"),
            new BigDecimal("15"),
            new BigDecimal("5"),
            new BigDecimal("5"),
            Verdict.OUTSIDE,
            "invented",
            Optional.empty());
    add(
        new StandSummary(
            Optional.empty(),
            Optional.empty(),
            Optional.of(footwear),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(found),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  private List<String> said() {
    Wording english = Wording.in(Locale.ENGLISH);
    WarningWords words = new WarningWords(english, new LandmarkWords(english, true));
    return StandWarnings.of(entries, Map.of()).all().stream()
        .map(w -> words.lead(w) + ": " + words.say(w).replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void anEntryTellsThatTheLineRunsBehindTheKnee() {
    open(AmputationLevel.TRANSFEMORAL);
    stood("boot", "knee centre", "-0.1");
    assertThat(said())
        .containsExactly(
            "Take care: The knee may bend. Seat the wearer, or hands on the rails and a helper."
                + " Correct it, then stand again. The load line runs 0.1 mm behind the right"
                + " prosthetic knee's axis. (entry 2, boot)");
  }

  @Test
  void anEntryTellsThatTheLineMayRunBehindTheKnee() {
    open(AmputationLevel.KNEE_DISARTICULATION);
    stood("boot", "Knee  centre", "3.9");
    stood("sandal", "knee centre", "4.1");
    assertThat(said())
        .containsExactly(
            "Take care: The knee may bend. Hands on the rails and a helper. Stand again; if still"
                + " in doubt, follow the knee's instructions. The load line runs 3.9 mm in front of"
                + " the right prosthetic knee's axis, give or take 4.0 mm. (entry 2, boot)");
  }

  @Test
  void aKneeOfFleshAndAnAnkleAreNotWarnedOf() {
    open(AmputationLevel.TRANSTIBIAL);
    stood("boot", "knee centre", "-9");
    assertThat(said()).isEmpty();
    entries.clear();
    open(AmputationLevel.TRANSFEMORAL);
    stood("boot", "ankle axis", "-9");
    assertThat(said()).isEmpty();
  }

  /** Where the opening is damaged, nobody knows that there is no prosthetic knee. */
  @Test
  void withoutAnOpeningAKneeIsWarnedOf() {
    stood("boot", "knee centre", "-9");
    assertThat(said()).hasSize(1);
  }

  @Test
  void theLatestStandInEachFootwearWarns() {
    open(AmputationLevel.TRANSFEMORAL);
    stood("boot", "knee centre", "-9");
    stood("sandal", "knee centre", "-8");
    stood("Boot ", "knee centre", "15");
    assertThat(said()).hasSize(1).allMatch(s -> s.endsWith("(entry 3, sandal)"));
  }

  @Test
  void whatIsAcceptedStaysWithWhoAcceptedItAndWhy() {
    open(AmputationLevel.TRANSFEMORAL);
    stood("boot", "knee centre", "-9");
    add(
        new Acceptance(
            "line behind the knee", "locked knee", OptionalInt.of(2), OptionalInt.empty()));
    add(
        new Acceptance(
            "something else", "no stand named", OptionalInt.empty(), OptionalInt.empty()));
    assertThat(said())
        .hasSize(1)
        .allMatch(
            s ->
                s.endsWith(
                    "(entry 2, boot) Accepted by AB (entry 3): line behind the knee: locked knee."
                        + " The warning stays."));
  }

  @Test
  void anAnswerToTheWarningItselfDoesNotRepeatIt() {
    open(AmputationLevel.TRANSFEMORAL);
    stood("boot", "knee centre", "-9");
    String warning = said().get(0);
    add(new Acceptance(warning, "locked knee.", OptionalInt.of(2), OptionalInt.empty()));
    assertThat(said())
        .containsExactly(warning + " Accepted by AB (entry 3): locked knee. The warning stays.");
  }
}
