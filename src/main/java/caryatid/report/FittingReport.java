package caryatid.report;

import caryatid.remark.Argument;
import caryatid.remark.TimeText;
import caryatid.report.pages.AdviceSection;
import caryatid.report.pages.Block;
import caryatid.report.pages.OffsetHistory;
import caryatid.report.pages.Paper;
import caryatid.report.pages.PrintableBlocks;
import caryatid.report.pages.RecordClosing;
import caryatid.report.pages.RecordFirstPage;
import caryatid.report.pages.RecordReportData;
import caryatid.report.pages.RecordTimeline;
import caryatid.report.pages.ReportContent;
import caryatid.report.pdf.Attachments;
import caryatid.report.pdf.PdfFrame;
import caryatid.report.pdf.PdfFrame.DocumentOrigin;
import caryatid.views.RecordView;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** The report of a fitting record. */
public final class FittingReport {
  private FittingReport() {}

  /**
   * A record as a PDF (PDF/A-3, level A). The same record gives the same bytes; the document is
   * dated with the newest entry's time.
   *
   * @param program name and version of the program
   */
  public static byte[] pdf(RecordReportData data, String program, Wording wording, Paper paper) {
    return PdfFrame.pdf(
        content(data, program, wording, paper),
        new DocumentOrigin(program, OptionalInt.empty(), newest(data.view())),
        Attachments.NONE,
        wording,
        paper);
  }

  static ReportContent content(
      RecordReportData data, String program, Wording wording, Paper paper) {
    String title = wording.fill("FittingReport.TITLE", Argument.text(data.view().code().text()));
    double widthMm = paper.textWidthMm();
    List<Block> blocks = new ArrayList<>(new RecordFirstPage(data.view(), wording).blocks(title));
    blocks.addAll(new OffsetHistory(data, wording).blocks());
    blocks.addAll(AdviceSection.blocks(data, wording));
    blocks.addAll(new RecordTimeline(data, wording, widthMm).blocks());
    blocks.addAll(photographs(data, wording));
    blocks.addAll(new RecordClosing(data.view(), program, wording).blocks());
    return PrintableBlocks.printable(new ReportContent(title, List.of(blocks)), wording);
  }

  private static List<Block> photographs(RecordReportData data, Wording wording) {
    List<Block> blocks = new ArrayList<>();
    if (!data.photographs().isEmpty()) {
      blocks.add(new Block.Heading(wording.word("FittingReport.PHOTOGRAPHS")));
    }
    for (RecordReportData.Photographed each : data.photographs()) {
      String caption =
          wording.fill(
              "FittingReport.PHOTOGRAPH",
              Argument.count(each.entry().number()),
              Argument.text(TimeText.of(each.entry().at())),
              Argument.text(each.name()));
      blocks.add(new Block.Photograph(caption, each.bytes()));
    }
    return blocks;
  }

  private static OffsetDateTime newest(RecordView view) {
    return view.timeline().get(view.timeline().size() - 1).entry().at();
  }
}
