package caryatid.report.pages;

import java.util.List;

/**
 * What a report says, page by page.
 *
 * @param title of the document
 * @param pages the blocks of each page
 */
public record ReportContent(String title, List<List<Block>> pages) {
  public ReportContent {
    pages = pages.stream().map(List::copyOf).toList();
  }
}
