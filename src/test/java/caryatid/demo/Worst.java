package caryatid.demo;

import caryatid.alignment.StateRemark;
import caryatid.geometry.Side;
import caryatid.loadline.LoadLineRemark;
import caryatid.recording.model.RecordingRemark;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.PercentileRank;
import caryatid.standing.PercentileRank.Measure;
import caryatid.standing.StandRemark;

/** The fullest report of one stand: as many remarks as may meet in one, long names, much to say. */
public final class Worst {
  private Worst() {}

  /** Four landmarks with targets in both planes, a plate under each foot. */
  public static Demo stand() {
    return Demo.transfemoral(Side.LEFT)
        .twoPlates()
        .notes()
        .wearer("DEMO-2026-000017")
        .shoe("ankle-high walking boot with a rocker sole, laced to the third eyelet")
        .placements(
            new PercentileRank(Measure.SD_ANTERIOR, 5.2, 25, 50),
            new PercentileRank(Measure.SD_RIGHT, 3.1, 25, 50),
            new PercentileRank(Measure.RANGE_ANTERIOR, 24.8, 25, 50),
            new PercentileRank(Measure.MEAN_SPEED, 10.6, 25, 50))
        .stateRemarks(
            Remark.of(
                LoadLineRemark.LINE_MAY_BE_BEHIND_KNEE,
                Argument.term(Side.LEFT),
                Argument.of(3.1, Unit.MM),
                Argument.of(9.2, Unit.MM),
                Argument.term(LoadLineOwner.LEFT_FOOT)),
            Remark.of(StateRemark.ONE_STAND))
        .remarks(
            Remark.of(
                StandRemark.PROSTHESIS_LITTLE_LOADED,
                Argument.term(Side.LEFT),
                Argument.of(28, Unit.PERCENT)),
            Remark.of(
                StandRemark.BODY_MASS_DIFFERS,
                Argument.of(86.4, Unit.KG),
                Argument.of(82, Unit.KG)),
            Remark.of(LoadLineRemark.FEET_NOT_LEVEL, Argument.of(6, Unit.MM)),
            Remark.of(LoadLineRemark.HAND_TOUCHES),
            Remark.of(StandRemark.SLOWER_UNSEEN, Argument.of(18, Unit.S), Argument.count(7)),
            Remark.of(StandRemark.SHORT_STRETCH, Argument.of(18, Unit.S), Argument.of(25, Unit.S)),
            Remark.of(StandRemark.LOW_RATE, Argument.of(40, Unit.HZ), Argument.of(50, Unit.HZ)),
            Remark.of(LoadLineRemark.FRONTAL_MOMENT_UNTRUSTED),
            Remark.of(
                RecordingRemark.UNLOADED,
                Argument.text("left plate"),
                Argument.count(409),
                Argument.of(20, Unit.N)));
  }
}
