package caryatid.report;

import caryatid.alignment.Stand;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.report.Block.Column;
import caryatid.report.Block.Table;
import caryatid.standing.MeanLoad;
import caryatid.standing.QuietStretch;
import caryatid.standing.Standing;
import caryatid.standing.Sway;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What each stand's recording says: a column a stand and load. */
final class StandTable {
  private final List<Stand> stands;
  private final Wording wording;

  StandTable(List<Stand> stands, Wording wording) {
    this.stands = stands;
    this.wording = wording;
  }

  Table table() {
    List<Column> columns =
        List.of(
            column("RECORDING", 30, false),
            column("STRETCH", 42, false),
            column("LINE_OF", 22, false),
            column("COP_RIGHT", 21, true),
            column("COP_ANTERIOR", 21, true),
            column("FORCE", 16, true),
            column("SWAY", 34, true));
    List<List<String>> rows = new ArrayList<>();
    for (Stand stand : stands) {
      stand.standing().loads().forEach(load -> rows.add(row(stand, load)));
    }
    return new Table(columns, rows);
  }

  private Column column(String name, double parts, boolean numbers) {
    return new Column(wording.word("StandTable." + name), parts, numbers);
  }

  private List<String> row(Stand stand, MeanLoad load) {
    return List.of(
        stand.recording().name(),
        stretch(stand.standing()),
        wording.word(load.of()),
        plusMinus(load.copRightMm()),
        plusMinus(load.copAnteriorMm()),
        load.upN().map(n -> wording.plain(n.value(), Unit.N)).orElse("–"),
        sway(stand.standing(), load).map(this::sway).orElse("–"));
  }

  private String plusMinus(Estimate mm) {
    return wording.signed(mm.value(), Unit.MM)
        + " ± "
        + wording.plain(mm.expanded(Findings.COVERAGE), Unit.MM);
  }

  private String stretch(Standing standing) {
    QuietStretch stretch = standing.stretch();
    String used =
        wording.fill(
            stretch.byHand() ? "StandTable.USED_BY_HAND" : "StandTable.USED",
            Argument.of(stretch.fromS(), Unit.S),
            Argument.of(stretch.toS(), Unit.S),
            Argument.of(standing.rateHz(), Unit.HZ));
    String reasons =
        stretch.leftOut().stream()
            .map(left -> wording.word(left.reason()))
            .distinct()
            .collect(Collectors.joining(", "));
    return reasons.isEmpty()
        ? used
        : used + " " + wording.fill("StandTable.LEFT_OUT", Argument.text(reasons));
  }

  private static Optional<Sway> sway(Standing standing, MeanLoad load) {
    return standing.sway().stream().filter(s -> s.of() == load.of()).findFirst();
  }

  private String sway(Sway sway) {
    return wording.fill(
        "StandTable.SWAY_IS",
        Argument.text(wording.plain(sway.sdRightMm(), Unit.MM)),
        Argument.text(wording.plain(sway.sdAnteriorMm(), Unit.MM)),
        Argument.text(wording.plain(sway.meanSpeedMmPerS(), Unit.MM_PER_S)));
  }
}
