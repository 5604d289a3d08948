package caryatid.report.pages;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierState;
import caryatid.chart.ScaleBar;
import caryatid.chart.StripDrawing;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Weight;
import caryatid.report.pages.Block.Blank;
import caryatid.report.pages.Block.Blanks;
import caryatid.report.pages.Block.Facts;
import caryatid.report.pages.Block.Figures;
import caryatid.report.pages.Block.Heading;
import caryatid.report.pages.Block.Points;
import caryatid.report.pages.Block.Prose;
import caryatid.report.pages.Block.Title;
import caryatid.sheet.Notes;
import caryatid.sheet.TrialSheet;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Page one of a check's report: the results at a glance, and what is to be signed. */
public final class FirstPage {
  /** The width of the narrower paper between its margins: words need no more room on the other. */
  private static final double WIDTH_MM = 186;

  private final AlignmentState state;
  private final Optional<EarlierState> before;
  private final Wording wording;

  /**
   * @param before the state before, which the strips mark
   */
  public FirstPage(AlignmentState state, Optional<EarlierState> before, Wording wording) {
    this.state = state;
    this.before = before;
    this.wording = wording;
  }

  public String title() {
    TrialSheet trial = state.trial();
    return wording.fill(
        "FirstPage.TITLE",
        Argument.text(trial.wearer()),
        Argument.text(wording.word("FirstPage." + trial.side().code())));
  }

  /** Whether it has more room for notes than page two, however large the paper. */
  public boolean hasMoreRoom() {
    return RemarkList.onPageOne(state);
  }

  /**
   * @param notes whether the notes stand here
   */
  public List<Block> blocks(boolean notes) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Title(title()));
    blocks.add(new Prose(TrialSummary.of(state.stands(), wording), false));
    RemarkList remarks = new RemarkList(state, wording);
    remarks
        .of(Weight.SAFETY)
        .forEach(p -> blocks.add(new Prose(p.lead() + ": " + p.words(), true)));
    Summary lead = new Summary(state, wording);
    lead.next().ifPresent(words -> blocks.add(new Heading(words)));
    if (!lead.planes().isEmpty()) {
      blocks.add(new Prose(String.join(" ", lead.planes()), false));
    }
    blocks.addAll(figures());
    blocks.addAll(remarks(remarks, notes));
    blocks.add(heading("STOOD"));
    blocks.add(new Facts(3, TrialFacts.of(state.stands(), wording)));
    blocks.addAll(toFillIn(state.trial().notes()));
    blocks.add(new Prose(wording.word("FirstPage.NOT_A_DEVICE"), false));
    return blocks;
  }

  /** The strips of each leg and plane that has landmarks, and the bar to check their scale by. */
  private List<Block> figures() {
    List<Block> blocks = new ArrayList<>();
    for (Side side : state.trial().side().sides()) {
      Stream.of(Plane.values())
          .filter(plane -> StripDrawing.isDrawn(state, plane, side))
          .forEach(plane -> blocks.add(strips(plane, side)));
    }
    if (!blocks.isEmpty()) {
      double height = ScaleBar.plan(state, before, wording, WIDTH_MM).heightMm();
      blocks.add(
          new Figures(
              (width, h) -> List.of(ScaleBar.plan(state, before, wording, width)), height, height));
    }
    return blocks;
  }

  private Figures strips(Plane plane, Side side) {
    return new Figures(
        (width, height) ->
            List.of(StripDrawing.plan(state, before, plane, side, wording, width, height)),
        StripDrawing.leastMm(state, plane, side, wording, WIDTH_MM),
        StripDrawing.mostMm(state, plane, side, wording, WIDTH_MM));
  }

  private List<Block> remarks(RemarkList remarks, boolean withNotes) {
    List<Block> blocks = new ArrayList<>();
    List<Block.Bullet> important = remarks.of(Weight.IMPORTANT);
    List<Block.Bullet> notes = withNotes ? remarks.of(Weight.NOTE) : List.of();
    if (!important.isEmpty() || !notes.isEmpty()) {
      blocks.add(heading("REMARKS"));
      points(important).ifPresent(blocks::add);
    }
    if (!notes.isEmpty()) {
      blocks.add(new Points(2, notes));
    }
    return blocks;
  }

  private static Optional<Points> points(List<Block.Bullet> points) {
    return points.isEmpty() ? Optional.empty() : Optional.of(new Points(points));
  }

  private Heading heading(String of) {
    return new Heading(wording.word("FirstPage." + of));
  }

  private List<Block> toFillIn(Notes notes) {
    return List.of(
        new Blanks(1, List.of(blank("CONCLUSION", notes.conclusion()))),
        new Blanks(
            2,
            List.of(
                blank("COMFORT", notes.comfort()),
                blank("SKIN", notes.skin()),
                blank("REASON", notes.reason()),
                blank("NEXT_STEP", notes.nextStep()))),
        new Blanks(
            3,
            List.of(
                blank("PRACTITIONER_CODE", notes.practitioner()),
                blank("ROLE", notes.role()),
                blank("SIGNATURE", Optional.empty()))));
  }

  private Blank blank(String label, Optional<String> filled) {
    return new Blank(wording.word("FirstPage." + label), filled);
  }
}
