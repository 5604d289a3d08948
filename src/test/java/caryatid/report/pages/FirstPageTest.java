package caryatid.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Stand;
import caryatid.alignment.StateRemark;
import caryatid.demo.ChangedStand;
import caryatid.demo.Numbered;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.Landmark;
import caryatid.loadline.LoadLineRemark;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.report.pages.Block.Blanks;
import caryatid.report.pages.Block.Figures;
import caryatid.report.pages.Block.Heading;
import caryatid.report.pages.Block.Points;
import caryatid.report.pages.Block.Prose;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What page one has and in which order: what is unsafe, what to do, the strips, the remarks. */
class FirstPageTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final AlignmentState STATE = Numbered.state();
  private static final Remark BENDS =
      Remark.of(
          LoadLineRemark.LINE_BEHIND_KNEE, Argument.term(Side.RIGHT), Argument.of(12.6, Unit.MM));

  private static List<Block> blocks(List<Finding> findings, List<Remark> remarks) {
    FirstPage page =
        new FirstPage(
            new AlignmentState(
                STATE.stands(), STATE.offsets(), findings, STATE.withheld(), remarks),
            Optional.empty(),
            ENGLISH);
    return page.blocks(page.hasMoreRoom());
  }

  private static <B extends Block> List<B> only(Class<B> kind, List<Block> blocks) {
    return blocks.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static List<String> headings(List<Block> blocks) {
    return only(Heading.class, blocks).stream().map(Heading::words).toList();
  }

  @Test
  void whatToDoLeadsAndAPlainFigureFollowsForEachPlane() {
    List<Block> blocks = blocks(STATE.findings(), List.of());
    assertThat(headings(blocks))
        .containsExactly(
            "× Tolerance not met: prosthetic knee axis (sagittal). Undecided: ankle axis (sagittal)."
                + " Change one thing, then measure again.",
            "Remarks",
            "How the wearer stood");
    // The sagittal plane, the frontal plane, and the bar to check the print's scale by.
    assertThat(only(Figures.class, blocks)).hasSize(3);
    assertThat(only(Prose.class, blocks)).noneMatch(Prose::strong);
  }

  @Test
  void whatIsUnsafeStandsAboveAllAndTakesThePlaceOfWhatToDo() {
    List<Block> blocks = blocks(STATE.findings(), List.of(BENDS));
    Prose first =
        only(Prose.class, blocks).stream().filter(Prose::strong).findFirst().orElseThrow();
    assertThat(first.words()).startsWith("Take care: The knee may bend.");
    assertThat(blocks.indexOf(first))
        .isLessThan(blocks.indexOf(only(Figures.class, blocks).get(0)));
    assertThat(headings(blocks)).containsExactly("Remarks", "How the wearer stood");
  }

  /** The frontal hip has no result; that is important and never left out. */
  @Test
  void aTargetWithoutResultIsNamedWithItsReason() {
    assertThat(points(blocks(STATE.findings(), List.of())))
        .singleElement()
        .satisfies(
            point -> {
              assertThat(point.lead()).isEqualTo("Remark");
              assertThat(point.words()).contains("greater trochanter");
            });
  }

  /** Up to four findings leave page two the room for notes; five leave it to page one. */
  @Test
  void notesStandOnPageOneWhereThereAreMoreThanFourFindings() {
    List<Finding> four = new ArrayList<>(STATE.findings());
    four.add(STATE.findings().get(0));
    List<Finding> five = new ArrayList<>(four);
    five.add(STATE.findings().get(0));
    Remark note = Remark.of(StateRemark.ONE_STAND, Argument.count(1));
    assertThat(points(blocks(four, List.of(note))))
        .extracting(Block.Bullet::lead)
        .doesNotContain("Note");
    assertThat(points(blocks(five, List.of(note)))).extracting(Block.Bullet::lead).contains("Note");
  }

  private static List<Block.Bullet> points(List<Block> blocks) {
    return only(Points.class, blocks).stream().flatMap(p -> p.points().stream()).toList();
  }

  @Test
  void whatIsToBeFilledInEndsWithASignature() {
    assertThat(only(Blanks.class, blocks(STATE.findings(), List.of())))
        .flatExtracting(Blanks::blanks)
        .extracting(Block.Blank::label)
        .containsExactly(
            "Conclusion",
            "Comfort",
            "Skin",
            "Reason",
            "Next step",
            "Initials or code",
            "Role",
            "Signature, date");
  }

  private static List<String> drawn(List<Block> blocks) {
    return only(Figures.class, blocks).stream()
        .flatMap(figures -> figures.plan().at(186, 60).stream())
        .map(drawing -> drawing.alternative().replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void theTitleNamesWearerAndLeg() {
    assertThat(only(Block.Title.class, blocks(STATE.findings(), List.of())))
        .extracting(Block.Title::words)
        .containsExactly("Load line in standing: DEMO-7, right leg");
  }

  @Test
  void eachFigureIsOfItsOwnPlaneAndTheLastIsTheBar() {
    List<String> drawn = drawn(blocks(STATE.findings(), List.of()));
    assertThat(drawn).hasSize(3);
    assertThat(drawn.get(0)).contains("sagittal").doesNotContain("frontal");
    assertThat(drawn.get(1)).contains("frontal").doesNotContain("sagittal");
    assertThat(drawn.get(2)).isEqualTo("A bar of 100 mm, to check the scale of a print.");
  }

  private static Landmark withoutSideways(Landmark of) {
    return new Landmark(
        of.name(),
        of.kind(),
        of.side(),
        Optional.empty(),
        of.anteriorMm(),
        of.heightMm(),
        of.definition());
  }

  /** Marked in the sagittal plane alone. */
  @Test
  void aPlaneInWhichNothingWasMarkedHasNoFigure() {
    Stand stand = STATE.stands().get(0);
    Stand marked =
        ChangedStand.landmarks(
            stand, stand.landmarks().stream().map(FirstPageTest::withoutSideways).toList());
    AlignmentState sagittal =
        new AlignmentState(
            List.of(marked),
            STATE.offsets().subList(0, 2),
            STATE.findings().subList(0, 2),
            List.of(),
            List.of());
    List<String> drawn = drawn(new FirstPage(sagittal, Optional.empty(), ENGLISH).blocks(false));
    assertThat(drawn).hasSize(2);
    assertThat(drawn.get(0)).contains("sagittal");
  }

  @Test
  void withoutAnythingToRemarkThereIsNoHeadingForIt() {
    FirstPage page =
        new FirstPage(
            new AlignmentState(STATE.stands(), STATE.offsets(), List.of(), List.of(), List.of()),
            Optional.empty(),
            ENGLISH);
    List<Block> blocks = page.blocks(true);
    assertThat(headings(blocks))
        .containsExactly("No recommendation entered: the load line alone.", "How the wearer stood");
    assertThat(only(Prose.class, blocks)).noneMatch(prose -> prose.words().isBlank());
  }
}
