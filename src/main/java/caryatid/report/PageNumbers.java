package caryatid.report;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.alignment.StateOffset;
import caryatid.format.ArchiveProblem;
import caryatid.loadline.Finding;
import caryatid.loadline.Moment;
import caryatid.loadline.Target;
import caryatid.recording.model.Provenance;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Topic;
import caryatid.remark.Unit;
import caryatid.report.pdf.ShownLines;
import caryatid.standing.MeanLoad;
import caryatid.standing.Standing;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The numbers that every layout there was takes from a result: for pages that can no longer be
 * printed again. Numbers that belong together stand on one line.
 */
final class PageNumbers {
  private static final Pattern NUMBER = Pattern.compile("[+\u2212]?\\d+(?:[.,]\\d+)?");

  /** So many digits of a checksum every layout shows. */
  private static final int DIGITS = 16;

  private final String name;
  private final Wording wording;
  private final int method;
  private final List<List<String>> pages;
  private final List<Problem> found = new ArrayList<>();

  private PageNumbers(String name, List<List<String>> pages, int method, Wording wording) {
    this.name = name;
    this.pages = pages;
    this.method = method;
    this.wording = wording;
  }

  /**
   * What a report's pages do not show as a result says it.
   *
   * @param name the report's name, for messages
   * @param wording in the report's language
   * @throws IOException if the report is no PDF
   */
  static List<Problem> missing(String name, byte[] pdf, Result result, Wording wording)
      throws IOException {
    PageNumbers numbers = new PageNumbers(name, ShownLines.of(pdf), result.method(), wording);
    numbers.pages();
    ShownLines.covered(pdf)
        .forEach(page -> numbers.add(ArchiveProblem.OTHER_PAGE, Argument.count(page)));
    numbers.expect(result.state());
    return List.copyOf(numbers.found);
  }

  private void add(Topic topic, Argument... arguments) {
    found.add(Problem.at(Place.of(name), topic, arguments));
  }

  /** Each page says which of how many it is. */
  private void pages() {
    for (int i = 0; i < pages.size(); i++) {
      String foot =
          wording.fill("PdfFooters.PAGE", Argument.count(i + 1), Argument.count(pages.size()));
      if (pages.get(i).stream().noneMatch(line -> line.contains(foot))) {
        add(ArchiveProblem.OTHER_PAGE, Argument.count(i + 1));
      }
    }
  }

  private void expect(AlignmentState state) {
    state.findings().forEach(this::expect);
    state.offsets().stream()
        .filter(o -> state.findings().stream().anyMatch(f -> f.offset().equals(o.offset())))
        .forEach(this::expect);
    for (Stand stand : state.stands()) {
      expect(stand.standing());
      stand.moments().forEach(this::expect);
      sum(stand.recording());
    }
    Stand first = state.stands().get(0);
    sum(first.sheet());
    first.description().ifPresent(this::sum);
    first.trial().bodyMassKg().ifPresent(kg -> line(wording.plain(kg, Unit.KG)));
  }

  private void expect(Finding finding) {
    Estimate mm = finding.offset().mm();
    Target target = finding.target();
    line(
        signed(mm.value(), Unit.MM),
        wording.plain(halfWidth(mm), Unit.MM),
        signed(target.recommendedMm(), Unit.MM),
        signed(target.lowestMm(), Unit.MM),
        signed(target.highestMm(), Unit.MM));
    line(wording.plain(100 * finding.probabilityWithin(), Unit.PERCENT));
  }

  private void expect(StateOffset offset) {
    line(wording.plain(offset.smallestDifferenceMm(), Unit.MM));
  }

  private void expect(Standing standing) {
    line(
        wording.plain(standing.stretch().fromS(), Unit.S),
        wording.plain(standing.stretch().toS(), Unit.S));
    for (MeanLoad load : standing.loads()) {
      List<String> row = new ArrayList<>();
      Stream.concat(load.copRightMm().stream(), Stream.of(load.copAnteriorMm()))
          .forEach(
              mm -> {
                row.add(signed(mm.value(), Unit.MM));
                row.add(wording.plain(halfWidth(mm), Unit.MM));
              });
      load.upN().ifPresent(n -> row.add(wording.plain(n.value(), Unit.N)));
      line(row.toArray(String[]::new));
    }
  }

  private void expect(Moment moment) {
    line(
        signed(moment.newtonMetres().value(), Unit.NM),
        wording.plain(halfWidth(moment.newtonMetres()), Unit.NM));
  }

  /** By the rule of the method that made the pages. */
  private double halfWidth(Estimate of) {
    return method == 1 ? of.expandedByShares(Estimate.COVERAGE) : of.expanded(Estimate.COVERAGE);
  }

  private String signed(double value, Unit unit) {
    return wording.signed(value, unit);
  }

  /** Numbers that stand on one line, in any order. */
  private void line(String... numbers) {
    if (lines().map(PageNumbers::numbers).noneMatch(there -> holds(there, List.of(numbers)))) {
      add(ArchiveProblem.NOT_ON_PAGE, Argument.text(String.join(" ", numbers)));
    }
  }

  private void sum(Provenance file) {
    String start = file.sha512().substring(0, DIGITS);
    if (lines().noneMatch(line -> line.contains(start))) {
      add(ArchiveProblem.NOT_ON_PAGE, Argument.text(start));
    }
  }

  private Stream<String> lines() {
    return pages.stream().flatMap(List::stream);
  }

  private static List<String> numbers(String line) {
    return NUMBER.matcher(line).results().map(MatchResult::group).toList();
  }

  private static boolean holds(List<String> there, List<String> numbers) {
    List<String> left = new ArrayList<>(there);
    return numbers.stream().allMatch(left::remove);
  }
}
