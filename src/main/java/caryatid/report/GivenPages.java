package caryatid.report;

import caryatid.alignment.Result;
import caryatid.format.ArchiveProblem;
import caryatid.recording.model.Recording;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.report.pdf.Attachments;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.report.pdf.PageComparison;
import caryatid.report.pdf.ReportReader;
import caryatid.wording.Wording;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Whether the pages of a report show the result inside it.
 *
 * @param name the report's name, for messages
 * @param pdf the report
 * @param read what was read of it
 * @param kept the result inside
 */
@SuppressWarnings("ArrayRecordComponent") // carried through, never compared
public record GivenPages(String name, byte[] pdf, ReportReader.ReadReport read, Result kept) {

  /**
   * What was altered in a report whose method is today's. Its pages are printed again; where their
   * layout is an older one, the numbers they show are compared.
   *
   * @param recordings those inside, as today's method read them
   * @param needed the files that the result was found in, and the result
   */
  public List<Problem> altered(List<Recording> recordings, Attachments needed) {
    if (read.layout() != Report.LAYOUT) {
      return altered();
    }
    List<String> names = needed.files().stream().map(AttachedFile::name).toList();
    List<Problem> foreign =
        read.files().files().stream()
            .map(AttachedFile::name)
            .filter(inside -> !names.contains(inside))
            .map(inside -> problem(ArchiveProblem.FOREIGN_FILE, Argument.text(inside)))
            .toList();
    return foreign.isEmpty() ? compared(recordings, needed) : foreign;
  }

  private List<Problem> compared(List<Recording> recordings, Attachments needed) {
    byte[] printed = Report.pdf(kept, recordings, needed, wording(), read.paper());
    try {
      return PageComparison.between(name, pdf, printed);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The pages that another build may have printed: nothing but they differ from those printed now,
   * and they show every number of the result. None if something was altered for certain.
   *
   * @param differences what {@link #altered(List, Attachments)} found
   */
  public List<Integer> printedOtherwise(List<Problem> differences) {
    boolean ofPages = differences.stream().allMatch(GivenPages::isOfPages);
    return ofPages && altered().isEmpty()
        ? differences.stream().flatMapToInt(GivenPages::pages).boxed().toList()
        : List.of();
  }

  /** What is read aloud follows the words on the pages. */
  private static boolean isOfPages(Problem problem) {
    return pages(problem).findAny().isPresent()
        || problem.arguments().equals(List.of(Argument.text("StructTreeRoot")));
  }

  /** All of them where there is another number of pages. */
  private static IntStream pages(Problem problem) {
    if (problem.topic() != ArchiveProblem.OTHER_PAGE
        && problem.topic() != ArchiveProblem.OTHER_PAGES) {
      return IntStream.empty();
    }
    int number = (int) ((Argument.Quantity) problem.arguments().get(0)).value();
    return problem.topic() == ArchiveProblem.OTHER_PAGE
        ? IntStream.of(number)
        : IntStream.rangeClosed(1, number);
  }

  /** What was altered in a report that can no longer be printed again. */
  public List<Problem> altered() {
    if (read.layout() < Report.firstLayoutOf(kept.method())) {
      return List.of(
          problem(
              ArchiveProblem.NEVER_TOGETHER,
              Argument.count(read.layout()),
              Argument.count(kept.method())));
    }
    try {
      List<Problem> altered = new ArrayList<>(unnamed());
      altered.addAll(PageNumbers.missing(name, pdf, kept, wording()));
      return altered;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Sheets that no other sheet is based on; a result does not tell which there were. */
  private List<Problem> unnamed() {
    List<AttachedFile> files = read.files().files();
    return files.stream()
        .filter(file -> file.role() == AttachmentRole.OTHER_SHEET)
        .filter(file -> files.stream().noneMatch(other -> names(other, file.name())))
        .map(file -> problem(ArchiveProblem.FOREIGN_FILE, Argument.text(file.name())))
        .toList();
  }

  private static boolean names(AttachedFile sheet, String other) {
    boolean isSheet =
        sheet.role() == AttachmentRole.TRIAL_SHEET || sheet.role() == AttachmentRole.OTHER_SHEET;
    return isSheet && new String(sheet.bytes(), StandardCharsets.UTF_8).contains(other);
  }

  private Wording wording() {
    return Wording.in(read.language());
  }

  private Problem problem(ArchiveProblem what, Argument... arguments) {
    return Problem.at(Place.of(name), what, arguments);
  }
}
