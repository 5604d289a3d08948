package caryatid.report.pages;

import caryatid.chart.mark.PrintableText;
import caryatid.report.pages.Block.Blank;
import caryatid.report.pages.Block.Blanks;
import caryatid.report.pages.Block.Bullet;
import caryatid.report.pages.Block.Fact;
import caryatid.report.pages.Block.Facts;
import caryatid.report.pages.Block.Points;
import caryatid.report.pages.Block.Prose;
import caryatid.report.pages.Block.Table;
import java.util.List;
import java.util.stream.Collectors;

/** Blocks in which text that people typed is freed of characters that cannot be printed. */
public final class PrintableBlocks {
  private PrintableBlocks() {}

  public static List<Block> printable(List<Block> blocks) {
    return blocks.stream().map(PrintableBlocks::printable).toList();
  }

  private static Block printable(Block block) {
    if (block instanceof Table table) {
      return new Table(table.columns(), table.rows().stream().map(PrintableBlocks::cells).toList());
    } else if (block instanceof Points points) {
      return new Points(
          points.columns(), points.points().stream().map(PrintableBlocks::point).toList());
    } else if (block instanceof Facts facts) {
      return new Facts(facts.columns(), facts.facts().stream().map(PrintableBlocks::fact).toList());
    } else if (block instanceof Blanks blanks) {
      return new Blanks(
          blanks.columns(), blanks.blanks().stream().map(PrintableBlocks::blank).toList());
    } else if (block instanceof Prose prose) {
      return new Prose(PrintableText.of(prose.words()), prose.strong());
    }
    return block;
  }

  private static List<String> cells(List<String> cells) {
    return cells.stream()
        .map(cell -> cell.lines().map(PrintableText::of).collect(Collectors.joining("\n")))
        .toList();
  }

  private static Bullet point(Bullet point) {
    return new Bullet(PrintableText.of(point.lead()), PrintableText.of(point.words()));
  }

  private static Fact fact(Fact fact) {
    return new Fact(PrintableText.of(fact.label()), PrintableText.of(fact.value()));
  }

  private static Blank blank(Blank blank) {
    return new Blank(PrintableText.of(blank.label()), blank.filled().map(PrintableText::of));
  }
}
