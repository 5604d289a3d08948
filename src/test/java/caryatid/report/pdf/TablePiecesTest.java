package caryatid.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.report.ReadOut;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.report.pages.Paper;
import caryatid.report.pages.ReportContent;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class TablePiecesTest {

  @Test
  void aTableThatGoesOnRepeatsItsHeadingForTheEyeAlone() throws IOException {
    List<List<String>> rows = IntStream.range(0, 120).mapToObj(i -> List.of("row " + i)).toList();
    Table table = new Table(List.of(new TableColumn("What stands above", 1, false)), rows);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      StructureTags tags = new StructureTags(document);
      try (PdfPen pen = new PdfPen(document, new PdfFonts(document), tags, Paper.A4)) {
        new PdfLayout(pen).lay(new ReportContent("Rows", List.of(List.of(table))));
      }
      tags.finish();
      document.save(bytes);
    }
    try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        assertThat(textOf(document, page)).startsWith("What stands above");
      }
      assertThat(document.getNumberOfPages()).isEqualTo(2);
      assertThat(ReadOut.of(document)).containsOnlyOnce("What stands above").contains("row 119");
    }
  }

  private static String textOf(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(document);
  }
}
