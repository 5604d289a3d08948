package caryatid.calibration;

import caryatid.calibration.Figures.Figure;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The tables of docs/calibration.md and docs/real-data.md: ranges of the studies' numbers, lowest
 * to highest.
 */
final class Summaries {
  private static final Set<String> BEFORE = Set.of("alignments", "two and five");
  private static final Set<String> UNSEEN = Set.of("drift of 60 to 120 s", "free within bounds");

  private final List<Figure> figures;

  private Summaries(List<Figure> figures) {
    this.figures = List.copyOf(figures);
  }

  /** Each table by its name in the page. */
  static Map<String, Table> of(List<Figure> figures) {
    Summaries all = new Summaries(figures);
    Map<String, Table> tables = new LinkedHashMap<>();
    tables.put("claims", all.claims());
    tables.put("people", all.people());
    tables.put("stands", all.stands());
    tables.put("pooled", all.pooled("pooled"));
    tables.put("pooled beyond", all.pooled("pooled beyond"));
    tables.put("changes", all.changes());
    tables.put("before", all.before());
    return tables;
  }

  /** The tables about real stands whose numbers are kept, each by its name in the page. */
  static Map<String, Table> ofReal(List<Figure> figures) {
    Summaries all = new Summaries(figures);
    return Map.of(
        RealStands.PARTS,
        all.among(f -> f.table().equals(RealStands.PARTS)).compared(f -> kind(f) + ", " + f.of()),
        RealStands.RUNS,
        all.among(f -> f.table().equals(RealStands.RUNS)).compared(Figure::of));
  }

  private static String kind(Figure figure) {
    return figure.subject().startsWith("simulated") ? "simulated" : figure.subject();
  }

  private Table compared(Function<Figure, String> group) {
    Table table = new Table("compared", "pairs", "fore and aft, %", "rms", "sideways, %", "rms");
    for (String name : distinct(group)) {
      Summaries row = among(f -> group.apply(f).equals(name));
      table.row(
          name,
          row.range("pairs"),
          row.range("fore and aft, within"),
          row.range("fore and aft, rms"),
          row.range("sideways, within"),
          row.range("sideways, rms"));
    }
    return table;
  }

  private Table claims() {
    Summaries pooled = among(f -> f.table().equals("pooled"));
    Summaries before = among(f -> BEFORE.contains(f.table()));
    Set<String> enough = Set.of("12 correlation times", "20 correlation times");
    return new Table("claim", "claimed, %", "seen, %")
        .row(
            "a 95 % interval holds this alignment's offset, usual wearers, one to five stands",
            "93 to 97", pooled.range("coverage"))
        .row("\"met\" with the truth on the edge", "at most 6", pooled.range("met on the edge"))
        .row("of findings called met, truly outside*", "at most 5", before.range("truly outside"))
        .row("of findings called not met, truly inside*", "at most 5", before.range("truly inside"))
        .row(
            "a stand's own interval holds its mean, one relaxation, stretch of 12 to 20 of its times",
            "at least 90",
            among(f -> f.table().equals("known memory") && enough.contains(f.subject()))
                .range("coverage"));
  }

  private Table people() {
    Summaries people = among(f -> f.table().equals("people"));
    Summaries real = people.among(f -> f.subject().equals(People.REAL_STANDS));
    Summaries families = people.among(f -> !f.subject().equals(People.REAL_STANDS));
    Table table =
        new Table("5th percentile; median; 95th percentile", People.REAL_STANDS, "families");
    for (String measure : People.MEASURES) {
      table.row(measure, real.percentiles(measure), families.percentiles(measure));
    }
    return table;
  }

  private String percentiles(String measure) {
    return String.join(
        "; ", Tables.PERCENTILES.stream().map(p -> range(measure + ", " + p)).toList());
  }

  private Table stands() {
    Table table =
        new Table(
            "stand",
            "coverage, %",
            "coverage where something is slower than any recording, %",
            "half-width, mm");
    Summaries stands = among(f -> f.table().equals("stands"));
    for (String seconds : stands.distinct(Figure::of)) {
      Summaries row = stands.among(f -> f.of().equals(seconds));
      table.row(
          seconds,
          row.among(f -> !UNSEEN.contains(f.subject())).range("coverage"),
          row.among(f -> UNSEEN.contains(f.subject())).range("coverage"),
          row.range("half-width"));
    }
    return table;
  }

  private Table pooled(String name) {
    Table table =
        new Table(
            "stands of 20 s",
            "coverage, %",
            "half-width sagittal, mm",
            "its 95th percentile",
            "half-width frontal, mm",
            "met in the middle, sagittal, %",
            "frontal, %",
            "met on the edge, %");
    Summaries pooled = among(f -> f.table().equals(name) && !f.of().contains("after states"));
    for (String clinic : pooled.distinct(Figure::of)) {
      Summaries row = pooled.among(f -> f.of().equals(clinic));
      table.row(
          shortened(clinic),
          row.range("coverage"),
          row.range("half-width sagittal, mm"),
          row.range("half-width sagittal, 95th"),
          row.range("half-width frontal, mm"),
          row.range("met in the middle sagittal"),
          row.range("met in the middle frontal"),
          row.range("met on the edge"));
    }
    return table;
  }

  private Table changes() {
    Table table =
        new Table(
            "three stands a state",
            "A-B half-width, mm",
            "called real, %",
            "with a drift of 4 mm, %",
            "A-B-A half-width, mm",
            "called real, %",
            "with the drift, %");
    Summaries changes = among(f -> f.table().equals("changes"));
    for (String clinic : changes.distinct(Figure::subject)) {
      Summaries row = changes.among(f -> f.subject().equals(clinic));
      Summaries steady = row.among(f -> f.of().equals("0 mm"));
      Summaries drifting = row.among(f -> f.of().equals("4 mm"));
      table.row(
          shortened(clinic).replace("3 stands, ", "").replace(", after [3, 3]", ""),
          row.range("A-B half-width"),
          steady.range("A-B called"),
          drifting.range("A-B called"),
          row.range("A-B-A half-width"),
          steady.range("A-B-A called"),
          drifting.range("A-B-A called"));
    }
    return table;
  }

  private Table before() {
    Table table =
        new Table(
            "method before",
            "coverage, %",
            "half-width sagittal, mm",
            "met on the edge, %",
            "truly outside of those said met, %",
            "truly inside of those said not met, %");
    Summaries before = among(f -> BEFORE.contains(f.table()) && f.of().contains(" of 20 s, 50 Hz"));
    for (String clinic : before.distinct(Figure::of)) {
      Summaries row = before.among(f -> f.of().equals(clinic));
      table.row(
          shortened(clinic),
          row.range("coverage"),
          row.range("half-width sagittal"),
          row.range("met on the edge"),
          row.range("truly outside"),
          row.range("truly inside"));
    }
    return table;
  }

  private Summaries among(Predicate<Figure> which) {
    return new Summaries(figures.stream().filter(which).toList());
  }

  private List<String> distinct(Function<Figure, String> cell) {
    return figures.stream().map(cell).distinct().toList();
  }

  /** The lowest and the highest of the quantities whose name begins so, or the only value. */
  private String range(String quantity) {
    List<String> values =
        figures.stream()
            .filter(f -> f.quantity().startsWith(quantity))
            .map(Figure::value)
            .sorted(Comparator.comparingDouble(Double::parseDouble))
            .toList();
    Stream<String> ends = Stream.of(values.get(0), values.get(values.size() - 1));
    return String.join("\u2013", ends.distinct().toList());
  }

  private static String shortened(String clinic) {
    return clinic
        .replace(" of 20 s, 50 Hz", "")
        .replace(" of 20 s", "")
        .replace(", one plate", "")
        .replace("wearers 2.0 times as", "twice as")
        .replace("after states of", "after")
        .replace("] stands", "]");
  }
}
