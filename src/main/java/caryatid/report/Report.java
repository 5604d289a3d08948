package caryatid.report;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.recording.model.Recording;
import caryatid.report.pages.Block;
import caryatid.report.pages.FirstPage;
import caryatid.report.pages.Paper;
import caryatid.report.pages.PrintableBlocks;
import caryatid.report.pages.ReportContent;
import caryatid.report.pages.SecondPage;
import caryatid.report.pdf.Attachments;
import caryatid.report.pdf.PdfFrame;
import caryatid.report.pdf.PdfFrame.DocumentOrigin;
import caryatid.report.pdf.Pieces;
import caryatid.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** The report to be attached to a fitting record. */
public final class Report {
  /**
   * The number of the page's layout: raised with every change after which the same result gives
   * other words or another arrangement.
   */
  public static final int LAYOUT = 2;

  /** Room that page two's drawings should have beyond their least height, mm. */
  private static final double DRAWINGS_MM = 15;

  /** Room that page one's strips should keep beyond their least height, mm. */
  private static final double STRIPS_MM = 5;

  private Report() {}

  /** The layout of the version that brought a method: no older one shows its results. */
  public static int firstLayoutOf(int method) {
    return method == 1 ? 1 : 2;
  }

  /**
   * A result as a PDF. The same input gives the same bytes; the document is dated with the stand's
   * time.
   *
   * @param result what was found
   * @param recordings those of its stands, in their order; empty when they are not at hand
   * @param attachments kept inside
   */
  public static byte[] pdf(
      Result result,
      List<Recording> recordings,
      Attachments attachments,
      Wording wording,
      Paper paper) {
    OffsetDateTime at = result.state().trial().at();
    return PdfFrame.pdf(
        PrintableBlocks.printable(content(result, recordings, wording, paper), wording),
        new DocumentOrigin(result.program(), OptionalInt.of(LAYOUT), at),
        attachments,
        wording,
        paper);
  }

  /** A result as one self-contained HTML page (UTF-8) of the same content and drawings. */
  public static byte[] html(Result result, List<Recording> recordings, Wording wording) {
    String page = Html.of(content(result, recordings, wording, Paper.A4), wording.locale());
    return page.getBytes(StandardCharsets.UTF_8);
  }

  static ReportContent content(
      Result result, List<Recording> recordings, Wording wording, Paper paper) {
    AlignmentState state = result.state();
    FirstPage first = new FirstPage(state, result.before(), wording);
    SecondPage second = new SecondPage(result, recordings, LAYOUT, wording);
    List<Block> withNotes = second.blocks(true);
    boolean notesFirst = notesFirst(first, withNotes, paper);
    List<List<Block>> pages =
        Stream.of(
                first.blocks(notesFirst),
                notesFirst ? second.blocks(false) : withNotes,
                second.further())
            .filter(blocks -> !blocks.isEmpty())
            .toList();
    return new ReportContent(first.title(), pages);
  }

  /**
   * Notes stand on page one if it has more room, or page two has too little on this paper for
   * drawings that can be read.
   *
   * @param second page two with notes
   */
  private static boolean notesFirst(FirstPage first, List<Block> second, Paper paper) {
    Pieces pieces = new Pieces(paper);
    return first.hasMoreRoom()
        || !pieces.fit(second, DRAWINGS_MM) && pieces.fit(first.blocks(true), STRIPS_MM);
  }
}
