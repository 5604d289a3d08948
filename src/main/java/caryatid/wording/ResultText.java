package caryatid.wording;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.Withheld;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.sheet.TrialSheet;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A result as a few lines for a terminal. */
public final class ResultText {
  private static final DateTimeFormatter DAY_AND_TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm xxx", Locale.ROOT);

  private final Wording wording;
  private final OffsetWords offsets;
  private final List<String> lines = new ArrayList<>();

  private ResultText(Wording wording) {
    this.wording = wording;
    this.offsets = new OffsetWords(wording);
  }

  /** The result's lines. */
  public static List<String> lines(Result result, Wording wording) {
    ResultText text = new ResultText(wording);
    result.states().forEach(text::state);
    text.lines.add("");
    text.lines.add(wording.word("ResultText.caution"));
    return List.copyOf(text.lines);
  }

  private void state(AlignmentState state) {
    List<Remark> remarks = remarks(state);
    remarks.stream()
        .filter(r -> r.topic().weight() == caryatid.remark.Weight.SAFETY)
        .forEach(this::remark);
    TrialSheet trial = state.stands().get(0).trial();
    say(
        "ResultText.head",
        trial.wearer(),
        wording.word(trial.side()) + " " + wording.word(trial.level()),
        DAY_AND_TIME.format(trial.at()),
        trial.footwear().description());
    state.stands().forEach(this::stand);
    lines.add("");
    state.findings().forEach(this::finding);
    state.withheld().forEach(this::withheld);
    if (!remarks.isEmpty()) {
      lines.add("");
    }
    remarks.stream()
        .filter(r -> r.topic().weight() != caryatid.remark.Weight.SAFETY)
        .forEach(this::remark);
  }

  private void stand(Stand stand) {
    say(
        "ResultText.stand",
        stand.recording().name(),
        wording.number(stand.standing().stretch().fromS(), Unit.S),
        wording.number(stand.standing().stretch().toS(), Unit.S));
    for (Side side : stand.trial().side().sides()) {
      var share = stand.standing().share().get(side);
      if (share != null) {
        say(
            "ResultText.share",
            wording.word(side),
            wording.number(100 * share.value(), Unit.PERCENT),
            wording.number(100 * share.expanded(0.95), Unit.PERCENT));
      }
    }
  }

  private void finding(Finding finding) {
    say(
        "ResultText.finding",
        wording.word(finding.offset().plane()),
        finding.offset().landmark(),
        wording.word(finding.offset().of()),
        offsets.offset(finding.offset()),
        wording.signed(finding.offset().mm().value(), Unit.MM),
        offsets.uncertainty(finding.offset()),
        offsets.target(finding.target()),
        offsets.result(finding));
  }

  private void withheld(Withheld withheld) {
    say(
        "ResultText.withheld",
        wording.word(withheld.target().plane()),
        withheld.target().landmark(),
        wording.say(withheld.reason()));
  }

  private void remark(Remark remark) {
    say("ResultText.remark", wording.word(remark.topic().weight()), wording.say(remark));
  }

  private static List<Remark> remarks(AlignmentState state) {
    return Stream.concat(
            state.remarks().stream(), state.stands().stream().flatMap(s -> s.remarks().stream()))
        .distinct()
        .sorted(Comparator.comparing(remark -> remark.topic().weight()))
        .collect(Collectors.toList());
  }

  private void say(String key, String... arguments) {
    lines.add(wording.fill(key, Stream.of(arguments).map(Argument::text).toList()));
  }
}
