package caryatid.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.report.pages.Block.Bullet;
import caryatid.report.pages.Block.Photograph;
import caryatid.report.pages.Block.Points;
import caryatid.report.pages.Block.Prose;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What happens to letters that cannot be printed, and that it is said. */
class PrintableBlocksTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final Block REPLACED =
      new Prose(
          "Some letters cannot be printed here: an empty box (□) stands for each. The record, the"
              + " files inside a report and the page as HTML keep them as typed.",
          false);

  private static ReportContent content(Block... last) {
    return new ReportContent("title", List.of(List.of(new Prose("first", false)), List.of(last)));
  }

  private static List<List<Block>> printed(Block... last) {
    return PrintableBlocks.printable(content(last), ENGLISH).pages();
  }

  @Test
  void oneLetterIsEnoughForTheSentenceAtTheEnd() {
    assertThat(printed(new Prose("a \u6f22", false), new Prose("b", false)))
        .containsExactly(
            List.of(new Prose("first", false)),
            List.of(new Prose("a □", false), new Prose("b", false), REPLACED));
    assertThat(printed(new Points(List.of(new Bullet("b", "\u6f22")))).get(1)).contains(REPLACED);
  }

  @Test
  void whatIsPrintedAsTypedNeedsNoSentence() {
    assertThat(printed(new Prose("Ärger, ćwiczyć", false)))
        .containsExactly(
            List.of(new Prose("first", false)), List.of(new Prose("Ärger, ćwiczyć", false)));
  }

  @Test
  void aPhotographKeepsItsBytesAndHasAPrintableCaption() {
    byte[] bytes = {1, 2, 3};
    Photograph printed = (Photograph) printed(new Photograph("a \u6f22", bytes)).get(1).get(0);
    assertThat(printed.caption()).isEqualTo("a □");
    assertThat(printed.jpegOrPng()).containsExactly(1, 2, 3);
    bytes[0] = 9;
    printed.jpegOrPng()[0] = 9;
    assertThat(printed.jpegOrPng()).containsExactly(1, 2, 3);
  }
}
