package caryatid.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.DemoRecord;
import caryatid.report.pages.Paper;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordWithoutStandsTest {
  @TempDir private Path folder;

  @Test
  void itsReportDoesNotExplainDrawingsThatAreNotThere() throws Exception {
    DemoRecord record = new DemoRecord(folder);
    byte[] pdf =
        RecordPdf.pdf(record.open(), record.damage(), Wording.in(Locale.ENGLISH), Paper.A4);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document);
      assertThat(text)
          .contains("No stand in this record has been compared with a target yet.", "Timeline")
          .doesNotContain("Offsets from stand to stand", "Each column", "small drawing");
    }
  }

  @Test
  void theTimelinesHeadsAreNotBrokenWithinAWord() throws Exception {
    DemoRecord record = new DemoRecord(folder);
    for (String language : new String[] {"en", "de", "fr", "es"}) {
      Wording wording = Wording.in(Locale.forLanguageTag(language));
      byte[] pdf = RecordPdf.pdf(record.open(), record.damage(), wording, Paper.A4);
      assertThat(PrintedWords.of(pdf))
          .extracting(PrintedWords.Word::text)
          .contains(wording.word("FittingReport.NUMBER"));
    }
  }
}
