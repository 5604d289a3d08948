package caryatid.usecase;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where each word of a PDF is printed, as PDFBox finds it. */
final class PrintedWords extends PDFTextStripper {
  /** Printed letters may touch: advance widths are rounded to a thousandth of the size. */
  private static final double TOUCH = 0.3;

  /** Of the letters' height; ascenders and descenders of neighbouring lines share a little. */
  private static final double ASCENT = 0.74;

  private final List<Word> words = new ArrayList<>();

  private PrintedWords() throws IOException {}

  /** A word; points from the page's left and top edge. */
  record Word(
      int page, String text, double left, double top, double right, double bottom, double size) {
    boolean overlaps(Word other) {
      return page == other.page
          && left + TOUCH < other.right
          && other.left + TOUCH < right
          && top + TOUCH < other.bottom
          && other.top + TOUCH < bottom;
    }
  }

  static List<Word> of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PrintedWords printed = new PrintedWords();
      printed.getText(document);
      return printed.words;
    }
  }

  @Override
  protected void writeString(String text, List<TextPosition> positions) {
    List<TextPosition> word = new ArrayList<>();
    for (TextPosition position : positions) {
      if (position.getUnicode().isBlank()) {
        add(word);
        word.clear();
      } else {
        word.add(position);
      }
    }
    add(word);
  }

  private void add(List<TextPosition> letters) {
    if (letters.isEmpty()) {
      return;
    }
    TextPosition first = letters.get(0);
    TextPosition last = letters.get(letters.size() - 1);
    double size = first.getYScale();
    StringBuilder text = new StringBuilder();
    letters.forEach(letter -> text.append(letter.getUnicode()));
    words.add(
        new Word(
            getCurrentPageNo(),
            text.toString(),
            first.getXDirAdj(),
            first.getYDirAdj() - ASCENT * size,
            last.getXDirAdj() + last.getWidthDirAdj(),
            first.getYDirAdj(),
            size));
  }
}
