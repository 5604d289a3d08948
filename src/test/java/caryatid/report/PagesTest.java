package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Style.Lettering;
import caryatid.demo.Demo;
import caryatid.demo.EachLanguageAndPaper;
import caryatid.demo.PdfText;
import caryatid.demo.Worst;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.report.pages.Block;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.report.pages.Paper;
import caryatid.report.pdf.Attachments;
import caryatid.standing.StandRemark;
import caryatid.wording.Wording;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds how much room a report takes, in each language and on each paper. */
class PagesTest {

  @EachLanguageAndPaper
  void oneStandWithFourLandmarksTakesTwoPages(String language, Paper paper) throws IOException {
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    Demo demo = Demo.transfemoral(Side.LEFT).notes();
    assertThat(pages(demo, wording, paper)).isEqualTo(2);
  }

  @EachLanguageAndPaper
  void twoPagesAreEnoughForTheFullestStandOfFourLandmarks(String language, Paper paper)
      throws IOException {
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    assertThat(pages(Worst.stand(), wording, paper)).isEqualTo(2);
  }

  @Test
  void moreLandmarksGoOnToAFurtherPage() throws IOException {
    Demo demo = Demo.empty(Side.RIGHT).line(80, 60);
    for (int i = 0; i < 9; i++) {
      demo.landmark("point " + i, LandmarkKind.OTHER, 40, 80, 80 + 100 * i, 3)
          .target(Plane.SAGITTAL, "point " + i, 15, 10, 10)
          .target(Plane.FRONTAL, "point " + i, 0, 10, 10);
    }
    assertThat(pages(demo, Wording.in(Locale.ENGLISH), Paper.A4)).isGreaterThan(2);
    assertThat(PdfText.running(pdf(demo, Wording.in(Locale.ENGLISH), Paper.A4)))
        .contains("point 0", "point 8", "The wearer's comfort");
  }

  private static byte[] pdf(Demo demo, Wording wording, Paper paper) {
    return Report.pdf(demo.result(), List.of(demo.recording()), Attachments.NONE, wording, paper);
  }

  private static int pages(Demo demo, Wording wording, Paper paper) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(demo, wording, paper))) {
      return document.getNumberOfPages();
    }
  }

  @Test
  void aLegWithoutLandmarksHasNoEmptyFrame() throws IOException {
    Demo demo = Demo.transtibial(Side.RIGHT).bothSides();
    Wording english = Wording.in(Locale.ENGLISH);
    assertThat(PdfText.lines(pdf(demo, english, Paper.A4)))
        .contains("Right leg, sagittal plane", "knee centre, right")
        .doesNotContain("Left leg, sagittal plane");
  }

  @Test
  void weighsLessThanFourHundredKilobytes() {
    assertThat(pdf(Demo.transfemoral(Side.LEFT).notes(), Wording.in(Locale.ENGLISH), Paper.A4))
        .hasSizeLessThan(400_000);
  }

  @Test
  void importantRemarksStandOnPageOneAndNotesOnPageTwo() throws IOException {
    Demo demo =
        Demo.transtibial(Side.RIGHT)
            .remarks(
                Remark.of(StandRemark.SHARE_UNKNOWN),
                Remark.of(
                    StandRemark.SHORT_STRETCH, Argument.of(12, Unit.S), Argument.of(25, Unit.S)));
    Wording english = Wording.in(Locale.ENGLISH);
    List<List<Block>> pages = Report.content(demo.result(), List.of(), english, Paper.A4).pages();
    for (StandRemark topic : List.of(StandRemark.SHARE_UNKNOWN, StandRemark.SHORT_STRETCH)) {
      int page = topic.weight() == caryatid.remark.Weight.NOTE ? 1 : 0;
      String start = english.word(topic.code()).substring(0, 5);
      assertThat(pages.get(page).toString()).contains(start);
      assertThat(pages.get(1 - page).toString()).doesNotContain("words=" + start);
    }
  }

  @Test
  void allCautionsAreSaid() {
    Wording english = Wording.in(Locale.ENGLISH);
    String second =
        Report.content(Demo.transtibial(Side.RIGHT).result(), List.of(), english, Paper.A4)
            .pages()
            .get(1)
            .toString();
    assertThat(second)
        .contains(
            "Not a medical device. For licensed practitioners.",
            "maker's instructions and local rules come first",
            "Secure all fasteners to the stated torque after every change and before the wearer"
                + " stands or walks.",
            "Change nothing under load.",
            "between rails or with help at hand after every change",
            "Mind the plate's edge.",
            "Stop at pain or fatigue.",
            "Check the skin.",
            "Check a prosthetic knee's mode and battery.",
            "The wearer's comfort, skin and gait decide, not the plot.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void noHeadingOfATableIsBrokenInsideAWord(String language) {
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    Stream.of(Demo.transtibial(Side.RIGHT), Worst.stand())
        .map(Demo::result)
        .flatMap(result -> Report.content(result, List.of(), wording, Paper.A4).pages().stream())
        .flatMap(List::stream)
        .filter(Table.class::isInstance)
        .map(Table.class::cast)
        .forEach(PagesTest::assertWordsFit);
  }

  private static void assertWordsFit(Table table) {
    double parts = table.columns().stream().mapToDouble(TableColumn::parts).sum();
    for (TableColumn column : table.columns()) {
      double room = column.parts() / parts * (Paper.A4.widthMm() - 24) - 2;
      for (String word : column.heading().split(" ")) {
        assertThat(Fonts.widthMm(word, Lettering.STRONG)).as(word).isLessThanOrEqualTo(room);
      }
    }
  }
}
