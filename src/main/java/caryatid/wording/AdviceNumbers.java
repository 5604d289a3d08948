package caryatid.wording;

import caryatid.advice.AnkleRange;
import caryatid.advice.HeelAnswer;
import caryatid.advice.Learnt;
import caryatid.advice.RepeatedSetting;
import caryatid.entry.OwnSetting;
import caryatid.loadline.LandmarkInPlane;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.views.RecordAdvice;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The numbers behind an advice: answers, predictions, heels and own settings, as lines. */
public final class AdviceNumbers {
  private final RecordAdvice of;
  private final Wording wording;
  private final LandmarkWords landmarks;

  public AdviceNumbers(RecordAdvice of, Wording wording) {
    this.of = of;
    this.wording = wording;
    this.landmarks = new LandmarkWords(wording, of.prostheticKnee());
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>(answers());
    lines.addAll(predictions());
    lines.addAll(heels());
    lines.addAll(ankles());
    lines.addAll(attempts());
    return List.copyOf(lines);
  }

  /** How each offset answers each kind of change; none where nothing was learnt. */
  public List<String> answers() {
    List<String> lines = new ArrayList<>();
    List<Learnt.Answer> answers = of.advice().learnt().answers();
    if (!answers.isEmpty()) {
      lines.add(wording.word("AdviceText.answers"));
    }
    for (Learnt.Answer answer : answers) {
      lines.add(
          "  "
              + wording.fill(
                  "AdviceText.answer",
                  Argument.term(answer.kind()),
                  landmark(answer.at()),
                  Argument.term(answer.at().plane()),
                  signed(answer.mm()),
                  signed(answer.lowMm()),
                  signed(answer.highMm()),
                  geometry(answer)));
    }
    return lines;
  }

  private Argument geometry(Learnt.Answer answer) {
    return answer.geometryMm().isPresent()
        ? signed(answer.geometryMm().getAsDouble())
        : Argument.text(wording.word("AdviceText.nothing"));
  }

  private List<String> predictions() {
    List<String> lines = new ArrayList<>();
    List<Learnt.Predicted> predictions = of.advice().learnt().predictions();
    if (!predictions.isEmpty()) {
      lines.add(wording.word("AdviceText.predictions"));
    }
    FollowedText followed = new FollowedText(of, wording);
    int state = 0;
    for (Learnt.Predicted one : predictions) {
      if (one.state() != state) {
        state = one.state();
        followed.of(state).ifPresent(line -> lines.add("  " + line));
      }
      lines.add("  " + followed.predicted(one));
    }
    return lines;
  }

  /** What a heel does that the ankle is not set for. */
  public List<String> heels() {
    List<String> lines = new ArrayList<>();
    if (!of.heels().isEmpty()) {
      lines.add(wording.word("AdviceText.heels"));
    }
    for (HeelAnswer heel : of.heels()) {
      boolean none = heel.lowestHeelMm() == 0 && heel.highestHeelMm() == 0;
      lines.add(
          "  "
              + wording.fill(
                  none ? "AdviceText.heel.none" : "AdviceText.heel",
                  landmark(heel.target().at()),
                  Argument.term(heel.target().plane()),
                  signed(heel.mmPer10Mm()),
                  signed(heel.lowPer10Mm()),
                  signed(heel.highPer10Mm()),
                  Argument.of(-heel.lowestHeelMm(), Unit.MM),
                  Argument.of(heel.highestHeelMm(), Unit.MM)));
    }
    return lines;
  }

  /** What heels the ankle can be set for, and the shoes that lie beyond. */
  public List<String> ankles() {
    List<String> lines = new ArrayList<>();
    for (AnkleRange ankle : of.ankles()) {
      lines.add(range(ankle));
      for (AnkleRange.ShoeHeel shoe : ankle.shoes()) {
        lines.add(
            "  "
                + wording.fill(
                    "AdviceText.shoe" + beyond(ankle, shoe),
                    Argument.text(shoe.name()),
                    Argument.of(shoe.heelMm(), Unit.MM),
                    Argument.of(ankle.endMm(shoe), Unit.MM),
                    Argument.of(Math.abs(ankle.leftMm(shoe)), Unit.MM)));
      }
    }
    return lines;
  }

  private String range(AnkleRange ankle) {
    Argument name = Argument.text(ankle.name());
    if (ankle.lowestMm().isEmpty()) {
      return wording.fill("AdviceText.ankle.highest", name, mm(ankle.highestMm()));
    }
    return ankle.highestMm().isEmpty()
        ? wording.fill("AdviceText.ankle.lowest", name, mm(ankle.lowestMm()))
        : wording.fill("AdviceText.ankle", name, mm(ankle.lowestMm()), mm(ankle.highestMm()));
  }

  private String beyond(AnkleRange ankle, AnkleRange.ShoeHeel shoe) {
    if (of.heels().isEmpty()) {
      return "";
    }
    return ankle.staysWithin(shoe, of.heels()) ? ".within" : ".outside";
  }

  private static Argument mm(OptionalDouble end) {
    return Argument.of(end.orElseThrow(), Unit.MM);
  }

  /** What the wearer's attempts show. */
  public List<String> attempts() {
    List<String> lines = new ArrayList<>();
    if (!of.attempts().isEmpty()) {
      lines.add(wording.word("AdviceText.attempts"));
    }
    for (RecordAdvice.Attempts attempts : of.attempts()) {
      RepeatedSetting show = attempts.show();
      lines.add(
          "  "
              + wording.fill(
                  "AdviceText.attempt",
                  Argument.text(attempts.what()),
                  Argument.count(show.n()),
                  signed(show.meanMm()),
                  Argument.of(show.sdMm(), Unit.MM),
                  Argument.of(show.reachMm(), Unit.MM),
                  AdviceText.percent(show.share()),
                  Argument.of(OwnSetting.SAME_MM.doubleValue(), Unit.MM)));
      lines.add("  " + more(show));
    }
    return lines;
  }

  private String more(RepeatedSetting show) {
    if (show.more().isEmpty()) {
      return wording.word("AdviceText.attempts.never");
    }
    int more = show.more().getAsInt();
    return more == 0
        ? wording.word("AdviceText.attempts.enough")
        : wording.fill("AdviceText.attempts.more", Argument.count(more));
  }

  private Argument landmark(LandmarkInPlane at) {
    return Argument.text(landmarks.name(at.landmark()));
  }

  private Argument signed(double mm) {
    return Argument.text(wording.signed(mm, Unit.MM) + " mm");
  }
}
