package caryatid.report.pages;

import caryatid.alignment.Stand;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Moment;
import caryatid.remark.Unit;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.uncertainty.Estimate;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The external moments of stands: a row for each joint and plane, a column for each line, and what
 * they do.
 */
final class MomentTable {
  private final List<Stand> stands;
  private final Wording wording;
  private final boolean measured;
  private final boolean massKnown;

  /**
   * @param stands all of a state
   */
  MomentTable(List<Stand> stands, Wording wording) {
    this.stands = stands;
    this.wording = wording;
    this.measured = moments().stream().anyMatch(m -> m.kind() == LoadLineMethod.MEASURED_FORCE);
    this.massKnown = moments().stream().anyMatch(m -> m.newtonMetresPerKg().isPresent());
  }

  private List<Moment> moments() {
    return stands.stream().flatMap(stand -> stand.moments().stream()).toList();
  }

  /** The table; empty when no moment is known. */
  Optional<Table> table() {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < stands.size(); i++) {
      for (LandmarkInPlane about :
          stands.get(i).moments().stream().map(Moment::at).distinct().toList()) {
        rows.add(row(i, about));
      }
    }
    return rows.isEmpty() ? Optional.empty() : Optional.of(new Table(columns(), rows));
  }

  private List<TableColumn> columns() {
    List<TableColumn> columns = new ArrayList<>();
    if (stands.size() > 1) {
      columns.add(column("StandTable.STAND", 13, false));
    }
    columns.add(column("Findings.LANDMARK", 38, false));
    columns.add(column("Findings.PLANE", 15, false));
    columns.add(column("MomentTable.VERTICAL", 32, true));
    if (massKnown) {
      columns.add(column("MomentTable.PER_KG", 24, true));
    }
    if (measured) {
      columns.add(column("MomentTable.MEASURED", 36, true));
    }
    columns.add(column("MomentTable.EFFECT", massKnown ? 52 : 70, false));
    return columns;
  }

  private TableColumn column(String key, double parts, boolean numbers) {
    return new TableColumn(wording.word(key), parts, numbers);
  }

  private List<String> row(int stand, LandmarkInPlane about) {
    List<String> row = new ArrayList<>();
    if (stands.size() > 1) {
      row.add(Integer.toString(stand + 1));
    }
    boolean both = stands.get(stand).trial().side().sides().size() > 1;
    LandmarkWords names = new LandmarkWords(wording, stands.get(stand).trial());
    row.add(
        names.name(about.landmark(), about.side())
            + (both ? ", " + wording.word(about.side()) : ""));
    row.add(wording.word(about.plane()));
    List<Moment> moments =
        stands.get(stand).moments().stream().filter(m -> m.at().equals(about)).toList();
    row.add(value(moments, LoadLineMethod.VERTICAL));
    if (massKnown) {
      row.add(perKg(moments));
    }
    if (measured) {
      row.add(value(moments, LoadLineMethod.MEASURED_FORCE));
    }
    row.add(effects(moments));
    return row;
  }

  private String value(List<Moment> moments, LoadLineMethod kind) {
    return moments.stream()
        .filter(moment -> moment.kind() == kind)
        .findFirst()
        .map(moment -> plusMinus(moment.newtonMetres()))
        .orElse("–");
  }

  private String perKg(List<Moment> moments) {
    return moments.stream()
        .filter(moment -> moment.kind() == LoadLineMethod.VERTICAL)
        .flatMap(moment -> moment.newtonMetresPerKg().stream())
        .findFirst()
        .map(value -> wording.signed(value.value(), Unit.NM_PER_KG))
        .orElse("–");
  }

  /** What both do, or what each does, in the order of the columns. */
  private String effects(List<Moment> moments) {
    return moments.stream()
        .sorted(Comparator.comparing(Moment::kind))
        .map(moment -> wording.word(moment.effect()))
        .distinct()
        .collect(Collectors.joining(" / "));
  }

  private String plusMinus(Estimate value) {
    return wording.signed(value.value(), Unit.NM)
        + " ± "
        + wording.plain(value.expanded(Estimate.COVERAGE), Unit.NM);
  }
}
