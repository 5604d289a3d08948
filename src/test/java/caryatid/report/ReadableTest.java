package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.demo.Demo;
import caryatid.demo.Worst;
import caryatid.format.ResultJson;
import caryatid.loadline.Finding;
import caryatid.remark.BadInput;
import caryatid.report.pages.Paper;
import caryatid.report.pdf.Attachments;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.report.pdf.ReportReader;
import caryatid.wording.Wording;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A report can be read without this program: its text gives every number of the table of findings
 * once and in order, by the tags and by where it stands, and its files come out as they went in.
 */
class ReadableTest {
  private static final Path REPORTS = Path.of("reports");
  private static final Path SAMPLES = Path.of("sample-recordings");
  private static final Pattern NUMBER = Pattern.compile("[+−]?\\d+[.,]\\d");

  static Stream<Path> allSamples() throws IOException {
    try (Stream<Path> files = Files.list(REPORTS)) {
      return files.filter(file -> file.toString().endsWith(".pdf")).sorted().toList().stream();
    }
  }

  /** Those of stands; the report of a fitting record has no single table of findings. */
  static Stream<Path> sampleReports() throws IOException {
    return allSamples().filter(file -> !file.toString().endsWith("-record.pdf"));
  }

  @ParameterizedTest
  @MethodSource("sampleReports")
  void theTextOfASampleGivesEveryNumberOnceAndInOrder(Path report) throws IOException, BadInput {
    byte[] pdf = Files.readAllBytes(report);
    Wording english = Wording.in(Locale.ENGLISH);
    assertNumbers(pdf, ResultJson.read(only(pdf, AttachmentRole.RESULT).bytes()), english);
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void soDoesTheFullestReportInEveryLanguage(String language) throws IOException {
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    Demo demo = Worst.stand();
    byte[] pdf =
        Report.pdf(
            demo.result(), List.of(demo.recording()), Attachments.NONE, wording, Paper.LETTER);
    assertNumbers(pdf, demo.result(), wording);
  }

  private static void assertNumbers(byte[] pdf, Result result, Wording wording) throws IOException {
    List<String> expected = expected(result.state(), wording);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper byPlace = new PDFTextStripper();
      byPlace.setSortByPosition(true);
      byPlace.setStartPage(2);
      byPlace.setEndPage(2);
      for (String text : List.of(ReadOut.of(document), byPlace.getText(document))) {
        assertThat(numbers(table(text, wording))).isEqualTo(expected);
      }
    }
  }

  /** From the heading's last word to what follows the table. */
  private static String table(String text, Wording wording) {
    int heading = text.indexOf(wording.word("Findings.SOURCE"));
    String sources = wording.word("Findings.SOURCES").replace("{0}.", "").strip();
    return text.substring(heading, text.indexOf(sources, heading + 1));
  }

  private static List<String> numbers(String text) {
    return NUMBER.matcher(text).results().map(found -> found.group()).toList();
  }

  private static List<String> expected(AlignmentState state, Wording wording) {
    String mark = wording.plain(0.5, caryatid.remark.Unit.MM).substring(1, 2);
    List<String> numbers = new ArrayList<>();
    for (Finding finding : state.findings()) {
      numbers.add(signed(finding.offset().mm().value()));
      numbers.add(plain(finding.offset().mm().expanded(0.95)));
      numbers.add(signed(finding.target().recommendedMm()));
      numbers.add(signed(finding.target().lowestMm()));
      numbers.add(signed(finding.target().highestMm()));
      numbers.add(plain(100 * finding.probabilityWithin()));
      if (Double.isFinite(finding.offset().mm().degreesOfFreedom())) {
        numbers.add(plain(finding.offset().mm().degreesOfFreedom()));
      }
      state.offsets().stream()
          .filter(o -> o.offset().equals(finding.offset()))
          .findFirst()
          .ifPresent(o -> numbers.add(plain(o.smallestDifferenceMm())));
    }
    return numbers.stream().map(number -> number.replace(".", mark)).toList();
  }

  private static String plain(double mm) {
    return new BigDecimal(mm).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }

  private static String signed(double mm) {
    String plain = plain(mm);
    boolean zero = plain.matches("-?0\\.0");
    return zero ? "0.0" : plain.startsWith("-") ? "−" + plain.substring(1) : "+" + plain;
  }

  @ParameterizedTest
  @MethodSource("sampleReports")
  void theFilesInsideASampleAreThoseItWasMadeFrom(Path report) throws IOException, BadInput {
    String folder = report.getFileName().toString().split("-")[0];
    List<AttachedFile> files = ReportReader.read("report", Files.readAllBytes(report)).files();
    assertThat(files)
        .extracting(AttachedFile::role)
        .contains(AttachmentRole.RECORDING, AttachmentRole.TRIAL_SHEET);
    for (AttachedFile file : files) {
      if (file.role() != AttachmentRole.RESULT) {
        Path source = SAMPLES.resolve(folder).resolve(file.name());
        assertThat(file.bytes()).as(file.name()).isEqualTo(Files.readAllBytes(source));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("allSamples")
  void aSampleKeepsTheStandards(Path report) throws Exception {
    Standards.assertKept(Files.readAllBytes(report));
  }

  /** Without its attachments a report stays small enough for any record. */
  @ParameterizedTest
  @MethodSource("sampleReports")
  void aSampleWeighsLessThanFourHundredKilobytesBesideItsFiles(Path report)
      throws IOException, BadInput {
    byte[] pdf = Files.readAllBytes(report);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      document.getDocumentCatalog().getNames().setEmbeddedFiles(null);
      document.getDocumentCatalog().getCOSObject().removeItem(org.apache.pdfbox.cos.COSName.AF);
      java.io.ByteArrayOutputStream bare = new java.io.ByteArrayOutputStream();
      document.save(bare);
      assertThat(bare.size()).isLessThan(400_000);
    }
  }

  private static AttachedFile only(byte[] pdf, AttachmentRole role) throws BadInput {
    return ReportReader.read("report", pdf).files().stream()
        .filter(file -> file.role() == role)
        .findFirst()
        .orElseThrow();
  }
}
