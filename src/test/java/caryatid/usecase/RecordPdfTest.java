package caryatid.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import caryatid.demo.DemoRecord;
import caryatid.demo.EachLanguageAndPaper;
import caryatid.demo.PdfText;
import caryatid.entry.EntryKind;
import caryatid.report.pages.Paper;
import caryatid.wording.Wording;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

class RecordPdfTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final double LEAST_POINTS = 8;

  /** The canvas of a drawing is a whole number of points wide and scales by the rest. */
  private static final double ROUNDING = 0.02;

  @TempDir private Path folder;

  private byte[] pdf(DemoRecord record, Wording wording, Paper paper) throws Exception {
    return RecordPdf.pdf(record.open(), record.damage(), wording, paper);
  }

  private byte[] pdf(DemoRecord record) throws Exception {
    return pdf(record, ENGLISH, Paper.A4);
  }

  @Test
  void theSameRecordGivesTheSameBytes() throws Exception {
    DemoRecord record = new DemoRecord(folder).story();
    assertThat(pdf(record)).isEqualTo(pdf(record));
  }

  @Test
  void itTellsWhereTheFittingStandsWhatIsOpenWhoDidWhatAndWhatWasSuperseded() throws Exception {
    DemoRecord record = new DemoRecord(folder).story();
    assertThat(PdfText.running(pdf(record)))
        .containsSubsequence(
            "Fitting record DEMO-7",
            "Take care: Entry 4 sets the alignment but does not say that fasteners",
            "Where the load line runs now, against every target",
            "sagittal knee centre, right −4.0 posterior",
            "3, demo shoe",
            "Settings now",
            "foot forward of the reference line 8 mm",
            "What is open",
            "Accepted as it is",
            "toe-out: the wearer prefers it (entry 6, AB)",
            record.read().headDigest().substring(0, 64),
            record.read().headDigest().substring(64),
            "Offsets from stand to stand",
            "Changes between the stands",
            "a 3 → 7 foot forward of the reference line: 0 → 8 mm line moved",
            "Timeline",
            "2026-03-04",
            "Entry 3, 08:40 demo shoe",
            "Entry 5, 09:10 superseded by entry 7",
            "5 09:10 AB static alignment; superseded by entry 7",
            "Supersedes entry 5: written down wrong",
            "Who did what",
            "AB 2026-03-04 08:10 +01:00",
            "Not a medical device. For licensed practitioners.",
            "The wearer's comfort, skin and gait decide, not the plot.");
  }

  /** Validation by an independent program against ISO 19005-3 level A and ISO 14289-1. */
  @ParameterizedTest
  @EnumSource(names = {"PDFA_3_A", "PDFUA_1"})
  void followsTheStandardsForArchivesAndForAccess(PDFAFlavour flavour) throws Exception {
    byte[] pdf = pdf(new DemoRecord(folder).story(), Wording.in(Locale.GERMAN), Paper.LETTER);
    VeraGreenfieldFoundryProvider.initialise();
    try (PDFAParser parser =
        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour)) {
      ValidationResult found =
          Foundries.defaultInstance().createValidator(flavour, false).validate(parser);
      assertThat(
              found.getTestAssertions().stream()
                  .map(Object::toString)
                  .collect(Collectors.joining("\n")))
          .isEmpty();
      assertThat(found.isCompliant()).isTrue();
    }
  }

  @Test
  void everyFontIsEmbedded() throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf(new DemoRecord(folder).story()))) {
      for (var page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
        }
      }
    }
  }

  @EachLanguageAndPaper
  void wordsAreLargeEnoughOnThePageAndApart(String language, Paper paper) throws Exception {
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    assertReadable(pdf(new DemoRecord(folder).story(), wording, paper), paper);
  }

  @ParameterizedTest
  @CsvSource({"A4, 1", "LETTER, 2", "A4, 7", "A4, 30"})
  void soAreThoseOfAnyNumberOfStands(Paper paper, int stands) throws Exception {
    DemoRecord record = new DemoRecord(folder).stands(stands);
    assertReadable(pdf(record, ENGLISH, paper), paper);
  }

  @Test
  void soAreThoseOfARecordWithoutAStand() throws Exception {
    byte[] pdf = pdf(new DemoRecord(folder));
    assertReadable(pdf, Paper.A4);
    assertThat(PdfText.running(pdf))
        .contains(
            "No stand in this record has been compared with a target yet.",
            "No setting is in this record yet.",
            "No open items.",
            "Nothing was noted as accepted.");
  }

  private static void assertReadable(byte[] pdf, Paper paper) throws IOException {
    List<PrintedWords.Word> words = PrintedWords.of(pdf);
    assertThat(words).hasSizeGreaterThan(100);
    double width = paper.widthMm() / 25.4 * 72;
    double height = paper.heightMm() / 25.4 * 72;
    for (int i = 0; i < words.size(); i++) {
      PrintedWords.Word word = words.get(i);
      assertThat(word.size()).as(word.toString()).isGreaterThanOrEqualTo(LEAST_POINTS - ROUNDING);
      assertThat(word.left() >= 0 && word.right() <= width).as(word.toString()).isTrue();
      assertThat(word.top() >= 0 && word.bottom() <= height).as(word.toString()).isTrue();
      for (int j = i + 1; j < words.size(); j++) {
        if (word.overlaps(words.get(j))) {
          fail(word + " overlaps " + words.get(j));
        }
      }
    }
  }

  @Test
  void wordsOfAnyKindAndLengthArePrintedOrReplaced() throws Exception {
    DemoRecord record = new DemoRecord(folder);
    record.note("line one\nline two\ttab \u0007bell \ud83d\ude00 \u4f60\u597d \u202Eback");
    record.note("seam ".repeat(4000) + "end");
    record.note("x".repeat(5000) + " last");
    byte[] pdf = pdf(record);
    assertReadable(pdf, Paper.A4);
    assertThat(PdfText.running(pdf))
        .contains("line one line two tab bell \u25a1 \u25a1\u25a1 back", "seam end", " last")
        .contains("x".repeat(50));
    assertThat(PdfText.running(pdf).split("seam", -1)).hasSize(4001);
  }

  @Test
  void aResultThatIsHurtIsToldAndItsStandHasNoDrawing() throws Exception {
    DemoRecord record = new DemoRecord(folder).stand(40).stand(60);
    Path result = folder.resolve("records/DEMO-7/v3/content/0003-stand/result.json");
    Files.writeString(result, Files.readString(result).replaceFirst("60", "61"));
    assertThat(PdfText.running(pdf(record)))
        .contains(
            "This record is damaged. Only the undamaged parts are shown.",
            "Take care: DEMO-7/v3/content/0003-stand/result.json: is not what was added",
            "no drawing: no result of this stand can be read",
            "Entry 2, 08:30")
        .doesNotContain("Entry 3, 08:50", "What a signature vouches for", "Signature");
  }

  @Test
  void anUnsettledOwnSettingAndAShoeWithoutAStandAreOpen() throws Exception {
    DemoRecord record = new DemoRecord(folder).stand(60);
    record.add(
        EntryKind.OWN_SETTING,
        DemoRecord.answers("what", "ankle to the heel", "attempts", 3, "succeeded", 1));
    record.add(
        EntryKind.FOOTWEAR,
        DemoRecord.rows("shoes", DemoRecord.answers("shoe", "boot", "heel-height-mm", 20)));
    assertThat(PdfText.running(pdf(record)))
        .contains(
            "The wearer succeeded in 1 of 3 attempts at ankle to the heel (entry 3).",
            "No stand is named for the shoe \"boot\" (entry 4).");
  }

  @Test
  void anAlignmentChangedAfterTheLastStandAsksForAnother() throws Exception {
    DemoRecord record = new DemoRecord(folder).stand(60).bench(4);
    assertThat(PdfText.running(pdf(record)))
        .contains(
            "Take care: The alignment was changed (entry 3) after the last stand (entry 2). Let the"
                + " wearer stand again before relying on these numbers.");
    assertThat(PdfText.running(pdf(record.stand(61)))).doesNotContain("after the last stand");
  }
}
