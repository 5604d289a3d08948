package caryatid.report;

import caryatid.chart.mark.Drawing;
import caryatid.report.pages.Block;
import caryatid.report.pages.Block.Figures;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.report.pages.Paper;
import caryatid.report.pages.ReportContent;
import caryatid.report.pdf.Pieces;
import caryatid.report.picture.Svg;
import caryatid.report.picture.SvgTooltips;
import caryatid.report.picture.XmlEscapes;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** A report as one page for a browser that asks nothing of any other place. */
final class Html {
  private static final double WIDTH_MM = 186;

  /** More parts than any drawing has. */
  private static final int MOST_PARTS = 40;

  /** A browser sets text a little wider apart than the PDF has it. */
  private static final double SLACK_MM = 28;

  private final StringBuilder out = new StringBuilder();

  /** How much of what they would like the page at hand, printed, leaves its drawings. */
  private double share;

  private Html() {}

  static String of(ReportContent content, Locale language) {
    Html html = new Html();
    html.head(content.title(), language);
    for (List<Block> page : content.pages()) {
      html.out.append("<section class=\"page\">\n");
      html.share = new Pieces(Paper.A4).share(page, SLACK_MM);
      page.forEach(html::block);
      html.out.append("</section>\n");
    }
    html.out.append("</main>\n</body>\n</html>\n");
    return html.out.toString();
  }

  private void head(String title, Locale language) {
    out.append("<!DOCTYPE html>\n<html lang=\"%s\">\n<head>\n".formatted(language.toLanguageTag()))
        .append("<meta charset=\"utf-8\">\n<link rel=\"icon\" href=\"data:,\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
        .append("<title>%s</title>\n".formatted(XmlEscapes.escape(title)))
        .append(
            "<style>\n%s</style>\n</head>\n<body>\n<main>\n"
                .formatted(style() + SvgTooltips.style(MOST_PARTS)));
  }

  private static String style() {
    try (InputStream file = Html.class.getResourceAsStream("report.css")) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void block(Block block) {
    if (block instanceof Block.Title title) {
      element("h1", title.words());
    } else if (block instanceof Block.Heading heading) {
      element("h2", heading.words());
    } else if (block instanceof Block.Prose prose) {
      String start = prose.strong() ? "<p class=\"strong\">" : "<p>";
      out.append(start).append(XmlEscapes.escape(prose.words())).append("</p>\n");
    } else if (block instanceof Block.Points points) {
      points(points);
    } else if (block instanceof Block.Facts facts) {
      facts(facts);
    } else if (block instanceof Table table) {
      table(table);
    } else if (block instanceof Figures figures) {
      figures(figures);
    } else if (block instanceof Block.Blanks blanks) {
      blanks(blanks);
    }
  }

  private void element(String name, String words) {
    out.append("<%1$s>%2$s</%1$s>\n".formatted(name, XmlEscapes.escape(words)));
  }

  private void points(Block.Points points) {
    out.append("<ul class=\"columns-%d\">\n".formatted(points.columns()));
    for (Block.Bullet point : points.points()) {
      String lead =
          point.lead().isEmpty() ? "" : "<b>" + XmlEscapes.escape(point.lead()) + ":</b> ";
      out.append("<li>%s%s</li>\n".formatted(lead, XmlEscapes.escape(point.words())));
    }
    out.append("</ul>\n");
  }

  private void facts(Block.Facts facts) {
    out.append("<dl class=\"columns-%d\">\n".formatted(facts.columns()));
    for (Block.Fact fact : facts.facts()) {
      out.append("<div>");
      out.append("<dt>%s</dt>".formatted(XmlEscapes.escape(fact.label())));
      out.append("<dd>%s</dd></div>\n".formatted(XmlEscapes.escape(fact.value())));
    }
    out.append("</dl>\n");
  }

  private void table(Table table) {
    out.append("<table>\n<thead><tr>");
    for (TableColumn column : table.columns()) {
      out.append(
          "<th scope=\"col\"%s>%s</th>"
              .formatted(align(column), XmlEscapes.escape(column.heading())));
    }
    out.append("</tr></thead>\n<tbody>\n");
    for (List<String> row : table.rows()) {
      out.append("<tr>");
      for (int i = 0; i < row.size(); i++) {
        out.append(
            "<td%s>%s</td>".formatted(look(table.columns().get(i)), XmlEscapes.escape(row.get(i))));
      }
      out.append("</tr>\n");
    }
    out.append("</tbody></table>\n");
  }

  private static String look(TableColumn column) {
    return column.strong() ? " class=\"strong\"" : align(column);
  }

  private static String align(TableColumn column) {
    return column.numbers() ? " class=\"number\"" : "";
  }

  private void figures(Figures figures) {
    out.append("<div class=\"figures\">\n");
    for (Drawing drawing : figures.plan().at(WIDTH_MM, figures.heightMm(share))) {
      out.append("<figure>\n").append(Svg.inside(drawing)).append("</figure>\n");
    }
    out.append("</div>\n");
  }

  private void blanks(Block.Blanks blanks) {
    out.append("<div class=\"blanks columns-%d\">\n".formatted(blanks.columns()));
    for (Block.Blank blank : blanks.blanks()) {
      out.append("<p><span class=\"label\">%s</span> ".formatted(XmlEscapes.escape(blank.label())));
      String filled = blank.filled().map(XmlEscapes::escape).orElse("");
      out.append(
          "<span class=\"%s\">%s</span></p>\n"
              .formatted(filled.isEmpty() ? "line" : "filled", filled));
    }
    out.append("</div>\n");
  }
}
