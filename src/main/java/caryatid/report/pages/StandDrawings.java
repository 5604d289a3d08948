package caryatid.report.pages;

import caryatid.alignment.Stand;
import caryatid.chart.PathDrawing;
import caryatid.chart.TimeDrawing;
import caryatid.chart.mark.Drawing;
import caryatid.geometry.Side;
import caryatid.recording.model.Recording;
import caryatid.report.pages.Block.Figures;
import caryatid.sheet.TrialSheet;
import caryatid.standing.Stance;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** Drawings of the recordings, two side by side: the paths of all stands, then each over time. */
final class StandDrawings {
  private static final double GAP_MM = 6;
  private static final double LEAST_MM = 33;
  private static final double MOST_MM = 74;

  private final List<Stand> stands;
  private final List<Recording> recordings;
  private final Wording wording;

  StandDrawings(List<Stand> stands, List<Recording> recordings, Wording wording) {
    this.stands = stands;
    this.recordings = recordings;
    this.wording = wording;
  }

  /** Plans a drawing for a room, mm. */
  @FunctionalInterface
  private interface DrawingPlan {
    Drawing at(double widthMm, double heightMm);
  }

  /** The paths of all stands, and the first one over time. */
  List<Figures> first() {
    List<DrawingPlan> plans = new ArrayList<>();
    sides().stream()
        .filter(side -> PathDrawing.isDrawn(stands, recordings, side))
        .forEach(
            side -> plans.add((w, h) -> PathDrawing.plan(stands, recordings, side, wording, w, h)));
    plans.addAll(overTime(0));
    return rows(plans);
  }

  /** The others over time. */
  List<Figures> others() {
    List<DrawingPlan> plans = new ArrayList<>();
    for (int i = 1; i < stands.size(); i++) {
      plans.addAll(overTime(i));
    }
    return rows(plans);
  }

  private List<DrawingPlan> overTime(int stand) {
    List<DrawingPlan> plans = new ArrayList<>();
    for (Side side : sides()) {
      plans.add((w, h) -> TimeDrawing.plan(stands, recordings, stand, side, wording, w, h));
    }
    return plans;
  }

  /** Whose lines are shown: of both feet on one plate there is but one. */
  private List<Side> sides() {
    TrialSheet trial = stands.get(0).trial();
    List<Side> sides = trial.side().sides();
    return trial.stance() instanceof Stance.BothFeetOnOnePlate ? sides.subList(0, 1) : sides;
  }

  private static List<Figures> rows(List<DrawingPlan> plans) {
    List<Figures> rows = new ArrayList<>();
    for (int i = 0; i < plans.size(); i += 2) {
      List<DrawingPlan> row = plans.subList(i, Math.min(i + 2, plans.size()));
      rows.add(new Figures((width, height) -> planned(row, width, height), LEAST_MM, MOST_MM));
    }
    return rows;
  }

  private static List<Drawing> planned(List<DrawingPlan> row, double widthMm, double heightMm) {
    return row.stream().map(plan -> plan.at((widthMm - GAP_MM) / 2, heightMm)).toList();
  }
}
