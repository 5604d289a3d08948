package caryatid.report;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** A document's text as a screen reader says it: element by element through the tags. */
public final class ReadOut {
  private final Map<PDPage, Map<Integer, PDMarkedContent>> marked = new HashMap<>();
  private final StringBuilder said = new StringBuilder();

  private ReadOut() {}

  /** Each element's text on a line of its own; a figure is its alternative text. */
  public static String of(PDDocument document) throws IOException {
    ReadOut out = new ReadOut();
    for (PDPage page : document.getPages()) {
      PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
      extractor.processPage(page);
      Map<Integer, PDMarkedContent> byNumber = new HashMap<>();
      extractor.getMarkedContents().forEach(content -> byNumber.put(content.getMCID(), content));
      out.marked.put(page, byNumber);
    }
    out.read(document.getDocumentCatalog().getStructureTreeRoot());
    return out.said.toString();
  }

  private void read(PDStructureNode node) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element && element.getAlternateDescription() != null) {
        said.append(element.getAlternateDescription()).append('\n');
      } else if (kid instanceof PDStructureElement element) {
        read(element);
        said.append('\n');
      } else if (kid instanceof Integer number) {
        PDMarkedContent content = marked.get(((PDStructureElement) node).getPage()).get(number);
        said.append(text(content)).append(' ');
      }
    }
  }

  private static String text(PDMarkedContent content) {
    return content.getContents().stream()
        .filter(TextPosition.class::isInstance)
        .map(part -> ((TextPosition) part).getUnicode())
        .collect(Collectors.joining());
  }
}
