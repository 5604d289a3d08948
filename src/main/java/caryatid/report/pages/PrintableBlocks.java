package caryatid.report.pages;

import caryatid.chart.mark.PrintableText;
import caryatid.report.pages.Block.Blank;
import caryatid.report.pages.Block.Blanks;
import caryatid.report.pages.Block.Bullet;
import caryatid.report.pages.Block.Fact;
import caryatid.report.pages.Block.Facts;
import caryatid.report.pages.Block.Heading;
import caryatid.report.pages.Block.Points;
import caryatid.report.pages.Block.Prose;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.Title;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Blocks in which text that people typed is freed of characters that cannot be printed. */
public final class PrintableBlocks {
  private boolean complete = true;

  private PrintableBlocks() {}

  /**
   * A report's content as it can be printed. Where a letter is replaced, a sentence at the end says
   * so; the record, the files inside a report and the page as HTML keep every letter.
   */
  public static ReportContent printable(ReportContent content, Wording wording) {
    PrintableBlocks printable = new PrintableBlocks();
    List<List<Block>> pages = new ArrayList<>();
    content.pages().forEach(page -> pages.add(page.stream().map(printable::block).toList()));
    if (!printable.complete) {
      int last = pages.size() - 1;
      List<Block> blocks = new ArrayList<>(pages.get(last));
      blocks.add(new Prose(wording.word("PrintableBlocks.REPLACED"), false));
      pages.set(last, blocks);
    }
    return new ReportContent(PrintableText.of(content.title()), pages);
  }

  private Block block(Block block) {
    if (block instanceof Table table) {
      return new Table(table.columns(), table.rows().stream().map(this::cells).toList());
    } else if (block instanceof Points points) {
      return new Points(points.columns(), points.points().stream().map(this::point).toList());
    } else if (block instanceof Facts facts) {
      return new Facts(facts.columns(), facts.facts().stream().map(this::fact).toList());
    } else if (block instanceof Blanks blanks) {
      return new Blanks(blanks.columns(), blanks.blanks().stream().map(this::blank).toList());
    } else if (block instanceof Prose prose) {
      return new Prose(words(prose.words()), prose.strong());
    } else if (block instanceof Title title) {
      return new Title(words(title.words()));
    } else if (block instanceof Heading heading) {
      return new Heading(words(heading.words()));
    } else if (block instanceof Block.Photograph photograph) {
      return new Block.Photograph(words(photograph.caption()), photograph.jpegOrPng());
    }
    return block;
  }

  private String words(String words) {
    complete &= PrintableText.isComplete(words);
    return PrintableText.of(words);
  }

  private List<String> cells(List<String> cells) {
    return cells.stream()
        .map(cell -> cell.lines().map(this::words).collect(Collectors.joining("\n")))
        .toList();
  }

  private Bullet point(Bullet point) {
    return new Bullet(words(point.lead()), words(point.words()));
  }

  private Fact fact(Fact fact) {
    return new Fact(words(fact.label()), words(fact.value()));
  }

  private Blank blank(Blank blank) {
    return new Blank(words(blank.label()), blank.filled().map(this::words));
  }
}
