package caryatid.report.pdf;

import caryatid.format.ArchiveProblem;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A report's pages against the same result printed again. */
public final class PageComparison {
  /** Compared elsewhere: metadata and colours, which depend on the Java; files; the pages. */
  private static final Set<COSName> ELSEWHERE =
      Set.of(COSName.METADATA, COSName.OUTPUT_INTENTS, COSName.NAMES, COSName.AF, COSName.PAGES);

  private PageComparison() {}

  /**
   * What differs between a report and the same one printed again: in the number of pages, in what
   * stands on a page, in its letters and drawings, in anything laid over it, in what is read aloud,
   * and in what opening the document does. How its bytes are packed does not matter.
   *
   * @param name the report's name, for messages
   * @return a problem for each page and each other part that differs; none if all is the same
   * @throws IOException if one of the two is no PDF
   */
  public static List<Problem> between(String name, byte[] given, byte[] printed)
      throws IOException {
    List<Problem> found = new ArrayList<>();
    try (PDDocument one = PdfFile.load(given);
        PDDocument other = PdfFile.load(printed)) {
      SameObjects same = new SameObjects();
      int pages = one.getNumberOfPages();
      int expected = other.getNumberOfPages();
      if (pages != expected) {
        found.add(
            Problem.at(
                Place.of(name),
                ArchiveProblem.OTHER_PAGES,
                Argument.count(pages),
                Argument.count(expected)));
        return found;
      }
      for (int i = 0; i < pages; i++) {
        if (!same.are(one.getPage(i).getCOSObject(), other.getPage(i).getCOSObject())) {
          found.add(Problem.at(Place.of(name), ArchiveProblem.OTHER_PAGE, Argument.count(i + 1)));
        }
      }
      parts(one, other, same)
          .forEach(
              part ->
                  found.add(
                      Problem.at(Place.of(name), ArchiveProblem.OTHER_PART, Argument.text(part))));
    }
    return found;
  }

  private static Set<String> parts(PDDocument one, PDDocument other, SameObjects same) {
    COSDictionary given = one.getDocumentCatalog().getCOSObject();
    COSDictionary printed = other.getDocumentCatalog().getCOSObject();
    Set<String> parts = new TreeSet<>();
    Set<COSName> names = new java.util.HashSet<>(given.keySet());
    names.addAll(printed.keySet());
    for (COSName key : names) {
      boolean differs =
          ELSEWHERE.contains(key)
              ? given.containsKey(key) != printed.containsKey(key)
              : !same.are(given.getDictionaryObject(key), printed.getDictionaryObject(key));
      if (differs) {
        parts.add(key.getName());
      }
    }
    return parts;
  }
}
