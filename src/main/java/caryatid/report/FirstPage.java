package caryatid.report;

import caryatid.alignment.AlignmentState;
import caryatid.chart.Drawing;
import caryatid.chart.LegDrawing;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Weight;
import caryatid.report.Block.Blank;
import caryatid.report.Block.Blanks;
import caryatid.report.Block.Facts;
import caryatid.report.Block.Figures;
import caryatid.report.Block.Heading;
import caryatid.report.Block.Points;
import caryatid.report.Block.Prose;
import caryatid.report.Block.Title;
import caryatid.sheet.Notes;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Page one: right at a glance, and what is to be signed. */
final class FirstPage {
  private static final double GAP_MM = 6;

  /** Less leaves no room for the leg. */
  private static final double LEAST_MM = 69;

  /** What a drawing takes besides its labels, and a label of one line with its close-up. */
  private static final double AROUND_LABELS_MM = 21.3;

  private static final double LABEL_MM = 11.9;

  private static final double MOST_MM = 114;

  private final AlignmentState state;
  private final Wording wording;

  FirstPage(AlignmentState state, Wording wording) {
    this.state = state;
    this.wording = wording;
  }

  String title() {
    return wording.fill("FirstPage.TITLE", Argument.text(state.stands().get(0).trial().wearer()));
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Title(title()));
    Remarks remarks = new Remarks(state, wording);
    remarks
        .of(Weight.SAFETY)
        .forEach(p -> blocks.add(new Prose(p.lead() + ": " + p.words(), true)));
    blocks.add(new Facts(TrialFacts.of(state.stands(), wording)));
    blocks.add(heading("FINDINGS"));
    Findings findings = new Findings(state, wording);
    blocks.add(findings.results());
    findings.explanation().ifPresent(words -> blocks.add(new Prose(words, false)));
    findings.sources().ifPresent(words -> blocks.add(new Prose(words, false)));
    for (Side side : state.stands().get(0).trial().side().sides()) {
      blocks.add(
          new Figures((width, height) -> drawings(side, width, height), leastMm(side), MOST_MM));
    }
    blocks.addAll(remarks(remarks));
    blocks.addAll(toFillIn(state.stands().get(0).trial().notes()));
    blocks.add(new Prose(wording.word("FirstPage.NOT_A_DEVICE"), false));
    return blocks;
  }

  /** Enough for a close-up of each finding, however many landmarks there are. */
  private double leastMm(Side side) {
    long landmarks =
        state.stands().get(0).landmarks().stream().filter(l -> l.side() == side).count();
    return Math.max(LEAST_MM, AROUND_LABELS_MM + landmarks * LABEL_MM);
  }

  private List<Block> remarks(Remarks remarks) {
    List<Block> blocks = new ArrayList<>();
    List<Block.Point> important = remarks.of(Weight.IMPORTANT);
    List<Block.Point> notes = Remarks.onPageOne(state) ? remarks.of(Weight.NOTE) : List.of();
    if (!important.isEmpty() || !notes.isEmpty()) {
      blocks.add(heading("REMARKS"));
      points(important).ifPresent(blocks::add);
    }
    if (!notes.isEmpty()) {
      blocks.add(new Points(2, notes));
    }
    return blocks;
  }

  private static Optional<Points> points(List<Block.Point> points) {
    return points.isEmpty() ? Optional.empty() : Optional.of(new Points(points));
  }

  private Heading heading(String of) {
    return new Heading(wording.word("FirstPage." + of));
  }

  private List<Drawing> drawings(Side side, double widthMm, double heightMm) {
    double width = (widthMm - GAP_MM) / 2;
    return Stream.of(Plane.values())
        .map(
            plane ->
                LegDrawing.plan(state, Optional.empty(), plane, side, wording, width, heightMm))
        .toList();
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
