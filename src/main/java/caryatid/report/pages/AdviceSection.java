package caryatid.report.pages;

import caryatid.advice.Learnt;
import caryatid.chart.AdviceDrawing;
import caryatid.chart.HeelDrawing;
import caryatid.chart.mark.Drawing;
import caryatid.report.pages.Block.Bullet;
import caryatid.report.pages.Block.Figures;
import caryatid.report.pages.Block.Heading;
import caryatid.report.pages.Block.Points;
import caryatid.report.pages.Block.Prose;
import caryatid.views.RecordAdvice;
import caryatid.wording.AdviceNumbers;
import caryatid.wording.AdviceText;
import caryatid.wording.FollowedText;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;

/**
 * What to change next at one leg, what became of earlier advice, and what heels and the wearer's
 * attempts show.
 */
public final class AdviceSection {
  private final RecordAdvice of;
  private final Wording wording;
  private final List<Block> blocks = new ArrayList<>();

  private AdviceSection(RecordAdvice of, Wording wording) {
    this.of = of;
    this.wording = wording;
  }

  /** What is said for each leg; that nothing is advised where the record is damaged. */
  public static List<Block> blocks(RecordReportData data, Wording wording) {
    List<Block> blocks = new ArrayList<>();
    if (!data.view().damage().isEmpty() || !data.view().unread().isEmpty()) {
      blocks.add(new Prose(wording.word("FittingReport.NOT_ADVISED"), false));
    }
    data.advice().forEach(leg -> blocks.addAll(new AdviceSection(leg, wording).blocks()));
    return blocks;
  }

  private List<Block> blocks() {
    blocks.add(new Heading(AdviceText.title(of, wording)));
    points(AdviceText.advice(of, wording));
    drawings(widthMm -> AdviceDrawing.next(of, wording, widthMm).stream().toList());
    AdviceNumbers numbers = new AdviceNumbers(of, wording);
    points(numbers.answers());
    followed();
    points(numbers.heels());
    drawings(widthMm -> HeelDrawing.heels(of, wording, widthMm));
    points(numbers.ankles());
    points(numbers.attempts());
    drawings(widthMm -> HeelDrawing.attempts(of, wording, widthMm));
    return List.copyOf(blocks);
  }

  /** What was advised, made, expected and measured, stand by stand. */
  private void followed() {
    List<Learnt.Predicted> predictions = of.advice().learnt().predictions();
    if (predictions.isEmpty()) {
      return;
    }
    blocks.add(new Heading(wording.word("FittingReport.FOLLOWED")));
    blocks.add(new Prose(wording.word("FittingReport.FOLLOWED_HOW"), false));
    FollowedText text = new FollowedText(of, wording);
    Set<Integer> states = new LinkedHashSet<>();
    predictions.forEach(one -> states.add(one.state()));
    for (int state : states) {
      List<String> lines = new ArrayList<>(text.of(state).stream().toList());
      predictions.stream()
          .filter(one -> one.state() == state)
          .forEach(one -> lines.add(text.predicted(one) + "."));
      points(lines);
    }
    drawings(widthMm -> AdviceDrawing.outcomes(of, wording, widthMm));
  }

  /** The first line leads; what belongs to it stands below as points. */
  private void points(List<String> lines) {
    if (!lines.isEmpty()) {
      blocks.add(new Prose(lines.get(0).strip(), false));
      List<Bullet> below =
          lines.stream().skip(1).map(line -> new Bullet("", line.strip())).toList();
      if (!below.isEmpty()) {
        blocks.add(new Points(below));
      }
    }
  }

  private void drawings(DoubleFunction<List<Drawing>> plan) {
    int count = plan.apply(Paper.A4.textWidthMm()).size();
    for (int i = 0; i < count; i++) {
      int which = i;
      blocks.add(
          new Figures(
              (widthMm, heightMm) -> List.of(plan.apply(widthMm).get(which)),
              AdviceDrawing.HEIGHT_MM,
              AdviceDrawing.HEIGHT_MM));
    }
  }
}
