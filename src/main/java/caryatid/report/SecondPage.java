package caryatid.report;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.chart.Drawing;
import caryatid.chart.PathDrawing;
import caryatid.chart.TimeDrawing;
import caryatid.loadline.Moment;
import caryatid.recording.Provenance;
import caryatid.recording.Recording;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.remark.Weight;
import caryatid.report.Block.Fact;
import caryatid.report.Block.Facts;
import caryatid.report.Block.Figures;
import caryatid.report.Block.Heading;
import caryatid.report.Block.Point;
import caryatid.report.Block.Points;
import caryatid.report.Block.Prose;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Page two: how it was found, exact on a second look. */
final class SecondPage {
  /** The cautions of every report, in the order in which they are said. */
  private static final int CAUTIONS = 9;

  private static final double GAP_MM = 6;

  private final Result result;
  private final AlignmentState state;
  private final List<Recording> recordings;
  private final Wording wording;

  SecondPage(Result result, AlignmentState state, List<Recording> recordings, Wording wording) {
    this.result = result;
    this.state = state;
    this.recordings = recordings;
    this.wording = wording;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(heading("METHOD"));
    blocks.add(new Prose(wording.word("SecondPage.HOW"), false));
    blocks.add(heading("CERTAINTY"));
    blocks.add(new Findings(state, wording).certainty());
    blocks.add(heading("STANDS"));
    blocks.add(new StandTable(state.stands(), wording).table());
    if (!recordings.isEmpty()) {
      blocks.add(new Figures(this::drawings, 46, 74));
    }
    moments(blocks);
    List<Point> notes = new Remarks(state, wording).of(Weight.NOTE);
    if (!notes.isEmpty()) {
      blocks.add(heading("NOTES"));
      blocks.add(new Points(notes));
    }
    blocks.add(heading("CAUTIONS"));
    blocks.add(new Prose(cautions(wording), false));
    blocks.add(heading("ORIGIN"));
    blocks.add(new Facts(origin()));
    return blocks;
  }

  private Heading heading(String of) {
    return new Heading(wording.word("SecondPage." + of));
  }

  private List<Drawing> drawings(double widthMm, double heightMm) {
    double width = (widthMm - GAP_MM) / 2;
    Stand first = state.stands().get(0);
    Recording recording = recordings.get(0);
    return List.of(
        PathDrawing.plan(first, recording, wording, width, heightMm),
        TimeDrawing.plan(first, recording, wording, width, heightMm));
  }

  private void moments(List<Block> blocks) {
    List<Moment> moments = state.stands().get(0).moments();
    if (!moments.isEmpty()) {
      blocks.add(heading("MOMENTS"));
      blocks.add(new Points(moments.stream().map(m -> new Point("", moment(m))).toList()));
    }
  }

  private String moment(Moment moment) {
    Estimate value = moment.newtonMetres();
    return wording.fill(
        "SecondPage.MOMENT",
        Argument.text(moment.landmark()),
        Argument.term(moment.plane()),
        Argument.text(wording.signed(value.value(), Unit.NM)),
        Argument.of(value.expanded(Findings.COVERAGE), Unit.NM),
        Argument.term(moment.kind()),
        Argument.term(moment.effect()));
  }

  static String cautions(Wording wording) {
    return IntStream.rangeClosed(1, CAUTIONS)
        .mapToObj(i -> wording.word("SecondPage.CAUTION." + i))
        .collect(Collectors.joining(" "));
  }

  private List<Fact> origin() {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact(wording.word("SecondPage.PROGRAM"), result.program()));
    Stand first = state.stands().get(0);
    state.stands().forEach(stand -> facts.add(file("RECORDING", stand.recording())));
    facts.add(file("SHEET", first.sheet()));
    first.description().ifPresent(description -> facts.add(file("DESCRIPTION", description)));
    return facts;
  }

  private Fact file(String label, Provenance file) {
    return new Fact(
        wording.word("SecondPage." + label),
        wording.fill(
            "SecondPage.FILE",
            Argument.text(file.name()),
            Argument.count(file.bytes()),
            Argument.text(file.sha512().substring(0, 32) + "…")));
  }
}
