package caryatid.usecase;

import caryatid.alignment.Result;
import caryatid.format.ArchiveProblem;
import caryatid.format.ResultDifference;
import caryatid.format.ResultJson;
import caryatid.format.ResultReading;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.report.GivenPages;
import caryatid.report.Report;
import caryatid.report.pdf.ReportReader;
import java.util.List;

/** Computes a report again from the files inside it. */
public final class Recheck {
  private Recheck() {}

  /**
   * Computes a report again. The method that made it must give the same result to the last digit;
   * what an older method found stands, if the files inside are those it was found in.
   *
   * @param name the report's name, for problems
   * @throws BadInput if the report is none, its result cannot be read, or a file inside it cannot
   *     be used although its own method took it
   */
  public static RecheckResult run(String name, byte[] pdf) throws BadInput {
    return run(name, pdf, Result.METHOD);
  }

  /** The same, by a program whose method has another number. */
  static RecheckResult run(String name, byte[] pdf, int method) throws BadInput {
    ReportReader.ReadReport report = ReportReader.open(name, pdf);
    ReportInputs inside = new ReportInputs(report.files());
    ResultReading file = ResultJson.open(inside.result());
    if (file instanceof ResultReading.Newer newer) {
      return new RecheckResult.Newer(newer.problem().in(name));
    }
    if (file instanceof ResultReading.Unreadable unreadable) {
      throw new BadInput(unreadable.problem());
    }
    Result kept = ((ResultReading.Read) file).result();
    if (kept.method() > method || report.layout() > Report.LAYOUT) {
      return new RecheckResult.Newer(Problem.at(Place.of(name), ArchiveProblem.NEWER_VERSION));
    }
    GivenPages pages = new GivenPages(name, pdf, report, kept);
    return kept.method() < method ? older(inside, pages, kept) : same(inside, pages, kept);
  }

  private static RecheckResult same(ReportInputs inside, GivenPages pages, Result kept)
      throws BadInput {
    List<ResultDifference> strangers = inside.strangers(kept);
    if (!strangers.isEmpty()) {
      return new RecheckResult.Altered(strangers, List.of());
    }
    Inputs inputs = inside.inputs(kept);
    Check.Checked checked = Check.withOpenQuestions(inputs);
    List<ResultDifference> differences = differences(kept, checked.result());
    List<Problem> altered =
        pages.altered(checked.recordings(), CheckPdf.attachments(inputs, checked));
    if (differences.isEmpty() && altered.isEmpty()) {
      return new RecheckResult.Reproduced(checked.result(), kept.program());
    }
    List<Integer> otherwise = differences.isEmpty() ? pages.printedOtherwise(altered) : List.of();
    return otherwise.isEmpty()
        ? new RecheckResult.Altered(differences, altered)
        : new RecheckResult.PagesDiffer(checked.result(), kept.program(), otherwise);
  }

  /** What differs in what was found, whatever program found it and by what method. */
  private static List<ResultDifference> differences(Result kept, Result now) {
    Result comparable = new Result(kept.method(), kept.program(), now.state(), now.earlier());
    return ResultDifference.between(ResultJson.write(kept), ResultJson.write(comparable));
  }

  private static RecheckResult older(ReportInputs inside, GivenPages pages, Result kept)
      throws BadInput {
    List<ResultDifference> strangers = inside.strangers(kept);
    List<Problem> altered = pages.altered();
    return strangers.isEmpty() && altered.isEmpty()
        ? new RecheckResult.Older(kept, today(inside, kept))
        : new RecheckResult.Altered(strangers, altered);
  }

  private static RecheckResult.Today today(ReportInputs inside, Result kept) {
    try {
      Result result = Check.withOpenQuestions(inside.inputs(kept)).result();
      List<ResultDifference> differences = differences(kept, result);
      return differences.isEmpty()
          ? new RecheckResult.Today.Same()
          : new RecheckResult.Today.Different(result, differences);
    } catch (BadInput e) {
      return new RecheckResult.Today.Refused(e.problems());
    }
  }
}
