package caryatid.report.pages;

import caryatid.alignment.Stand;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.report.pages.Block.Bullet;
import caryatid.report.pages.Block.Points;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.standing.MeanLoad;
import caryatid.standing.PercentileRank;
import caryatid.standing.QuietStretch;
import caryatid.standing.Standing;
import caryatid.standing.Sway;
import caryatid.standing.UnusedPart;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** What each stand's recording says: the part used, the mean loads, the sway. */
final class StandTable {
  private static final String NONE = "–";

  private final List<Stand> stands;
  private final Wording wording;

  StandTable(List<Stand> stands, Wording wording) {
    this.stands = stands;
    this.wording = wording;
  }

  /** Which part of each recording was used, and why not the rest. */
  Points stretches() {
    List<Bullet> points = new ArrayList<>();
    for (int i = 0; i < stands.size(); i++) {
      String number = stands.size() > 1 ? (i + 1) + " " : "";
      Stand stand = stands.get(i);
      points.add(new Bullet(number + stand.recording().name(), stretch(stand.standing())));
    }
    return new Points(points);
  }

  private String stretch(Standing standing) {
    QuietStretch stretch = standing.stretch();
    List<String> sentences = new ArrayList<>();
    sentences.add(
        wording.fill(
            stretch.byHand() ? "StandTable.USED_BY_HAND" : "StandTable.USED",
            Argument.of(stretch.fromS(), Unit.S),
            Argument.of(stretch.toS(), Unit.S),
            Argument.of(standing.rateHz(), Unit.HZ)));
    String parts = stretch.leftOut().stream().map(this::part).collect(Collectors.joining("; "));
    if (!parts.isEmpty()) {
      sentences.add(wording.fill("StandTable.LEFT_OUT", Argument.text(parts)));
    }
    String places =
        standing.placements().stream().map(this::place).collect(Collectors.joining("; "));
    if (!places.isEmpty()) {
      sentences.add(wording.fill("StandTable.PLACED", Argument.text(places)));
    }
    return String.join(" ", sentences);
  }

  private String part(UnusedPart left) {
    return wording.fill(
        "StandTable.PART",
        Argument.text(wording.plain(left.fromS(), Unit.MM)),
        Argument.text(wording.plain(left.toS(), Unit.MM)),
        Argument.term(left.reason()));
  }

  private String place(PercentileRank placement) {
    return wording.fill(
        "StandTable.PLACE",
        Argument.term(placement.measure()),
        Argument.of(placement.value(), placement.measure().unit()),
        Argument.count(placement.fromPercent()),
        Argument.count(placement.toPercent()));
  }

  /** A row a stand and load. */
  Table loads() {
    List<TableColumn> columns = new ArrayList<>();
    if (stands.size() > 1) {
      columns.add(column("STAND", 11, false));
    }
    columns.add(column("LINE_OF", 36, false));
    columns.add(column("COP_RIGHT", 22, true));
    columns.add(column("COP_ANTERIOR", 22, true));
    columns.add(column("FORCE", 13, true));
    columns.add(column("SD_RIGHT", 19, true));
    columns.add(column("SD_ANTERIOR", 19, true));
    columns.add(column("SPEED", 23, true));
    columns.add(column("ELLIPSE", 22, true));
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < stands.size(); i++) {
      for (MeanLoad load : stands.get(i).standing().loads()) {
        rows.add(row(i, load));
      }
    }
    return new Table(columns, rows);
  }

  private TableColumn column(String name, double parts, boolean numbers) {
    return new TableColumn(wording.word("StandTable." + name), parts, numbers);
  }

  private List<String> row(int stand, MeanLoad load) {
    List<String> row = new ArrayList<>();
    if (stands.size() > 1) {
      row.add(Integer.toString(stand + 1));
    }
    row.add(wording.word(load.of()));
    row.add(load.copRightMm().map(this::plusMinus).orElse(NONE));
    row.add(plusMinus(load.copAnteriorMm()));
    row.add(load.upN().map(n -> wording.plain(n.value(), Unit.N)).orElse(NONE));
    row.addAll(
        sway(stands.get(stand).standing(), load)
            .map(this::cells)
            .orElse(List.of(NONE, NONE, NONE, NONE)));
    return row;
  }

  private List<String> cells(Sway sway) {
    return List.of(
        inBoth(sway, Sway.BothDirections::sdRightMm, Unit.MM),
        wording.plain(sway.sdAnteriorMm(), Unit.MM),
        inBoth(sway, Sway.BothDirections::meanSpeedMmPerS, Unit.MM_PER_S),
        inBoth(sway, Sway.BothDirections::ellipseMm2, Unit.MM2));
  }

  private String inBoth(Sway sway, ToDoubleFunction<Sway.BothDirections> what, Unit unit) {
    return sway.both().map(both -> wording.plain(what.applyAsDouble(both), unit)).orElse(NONE);
  }

  /** The low-passed sway where there is one: what noise makes longer is of no use. */
  private static Optional<Sway> sway(Standing standing, MeanLoad load) {
    return standing.sway().stream()
        .filter(s -> s.of() == load.of())
        .reduce((plain, lowPassed) -> lowPassed);
  }

  private String plusMinus(Estimate mm) {
    return wording.signed(mm.value(), Unit.MM)
        + " ± "
        + wording.plain(mm.expanded(Estimate.COVERAGE), Unit.MM);
  }

  /** How the table's sway was found, and why it is not placed among other people's. */
  String explanation() {
    List<String> sentences = new ArrayList<>();
    List<Sway> shown =
        stands.stream()
            .map(Stand::standing)
            .flatMap(standing -> standing.loads().stream().flatMap(l -> sway(standing, l).stream()))
            .toList();
    shown.stream()
        .flatMapToDouble(sway -> sway.lowPassHz().stream())
        .findFirst()
        .ifPresent(
            hz -> sentences.add(wording.fill("StandTable.FILTERED", Argument.of(hz, Unit.HZ))));
    if (shown.stream().anyMatch(sway -> sway.lowPassHz().isEmpty())) {
      sentences.add(wording.word("StandTable.NOT_FILTERED"));
    }
    if (stands.stream().allMatch(stand -> stand.standing().placements().isEmpty())) {
      sentences.add(wording.word("StandTable.NOT_PLACED"));
    }
    return String.join(" ", sentences);
  }
}
