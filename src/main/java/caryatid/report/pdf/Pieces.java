package caryatid.report.pdf;

import caryatid.report.pages.Block;
import caryatid.report.pages.Block.Figures;
import caryatid.report.pages.Paper;
import java.util.ArrayList;
import java.util.List;

/** Makes the blocks of a page into pieces of its height. */
public final class Pieces {
  private static final double ROUNDING_MM = 0.1;

  private final Paper paper;
  private final double widthMm;

  public Pieces(Paper paper) {
    this.paper = paper;
    this.widthMm = paper.textWidthMm();
  }

  /** Drawings get the height the other blocks leave, within limits. */
  List<Piece> of(List<Block> blocks) {
    double share = share(blocks, 0);
    List<Piece> pieces = new ArrayList<>();
    for (int i = blocks.size() - 1; i >= 0; i--) {
      List<Piece> of = new ArrayList<>(pieces(blocks.get(i), share));
      if (leadsOn(blocks, i)) {
        int last = of.size() - 1;
        of.set(last, of.get(last).needing(of.get(last).heightMm() + startMm(pieces)));
      }
      pieces.addAll(0, of);
    }
    return pieces;
  }

  /** Whether a block is nothing without the one below it: a heading, words above a drawing. */
  private static boolean leadsOn(List<Block> blocks, int at) {
    boolean aboveFigures = at + 1 < blocks.size() && blocks.get(at + 1) instanceof Figures;
    return blocks.get(at) instanceof Block.Heading
        || blocks.get(at) instanceof Block.Prose && aboveFigures;
  }

  /** How much of a page pieces need to start. */
  private static double startMm(List<Piece> pieces) {
    return pieces.stream()
        .filter(piece -> piece.heightMm() > 0)
        .findFirst()
        .map(Piece::neededMm)
        .orElse(0.0);
  }

  /**
   * How much of what a page's drawings would like beyond their least height there is room for, 0 to
   * 1.
   *
   * @param lessMm room to be left free for each row of drawings, mm
   */
  public double share(List<Block> blocks, double lessMm) {
    double others =
        blocks.stream()
            .filter(block -> !(block instanceof Figures))
            .flatMap(block -> fixed(block).stream())
            .mapToDouble(Piece::heightMm)
            .sum();
    List<Figures> rows =
        blocks.stream().filter(Figures.class::isInstance).map(Figures.class::cast).toList();
    double least = rows.stream().mapToDouble(Figures::leastMm).sum();
    double more = rows.stream().mapToDouble(f -> f.mostMm() - f.leastMm()).sum();
    double room = PdfLayout.roomMm(paper) - ROUNDING_MM - others - least;
    double free = room - rows.size() * (FactPieces.AROUND_FIGURE_MM + lessMm);
    return more > 0 ? Math.max(0, Math.min(1, free / more)) : 0;
  }

  /**
   * Whether a page has room for all blocks, drawings at their least height.
   *
   * @param moreMm room to be left beyond that, mm
   */
  public boolean fit(List<Block> blocks, double moreMm) {
    double heightMm = moreMm;
    for (Block block : blocks) {
      heightMm += leastMm(block);
    }
    return heightMm <= PdfLayout.roomMm(paper) - ROUNDING_MM;
  }

  /** What a block takes at the least; no drawing is planned for it. */
  private double leastMm(Block block) {
    return block instanceof Figures figures
        ? figures.leastMm() + FactPieces.AROUND_FIGURE_MM
        : fixed(block).stream().mapToDouble(Piece::heightMm).sum();
  }

  private List<Piece> pieces(Block block, double share) {
    if (block instanceof Figures figures) {
      double height = figures.heightMm(share);
      FactPieces form = new FactPieces(Paper.MARGIN_MM, widthMm);
      return List.of(form.figures(figures.plan().at(widthMm, height), height));
    }
    return fixed(block);
  }

  private List<Piece> fixed(Block block) {
    TextPieces text = new TextPieces(Paper.MARGIN_MM, widthMm);
    FactPieces form = new FactPieces(Paper.MARGIN_MM, widthMm);
    if (block instanceof Block.Title title) {
      return List.of(text.title(title.words()));
    } else if (block instanceof Block.Heading heading) {
      return List.of(text.heading(heading.words()));
    } else if (block instanceof Block.Prose prose) {
      return List.of(text.prose(prose.words(), prose.strong()));
    } else if (block instanceof Block.Points points) {
      return text.points(points);
    } else if (block instanceof Block.Facts facts) {
      return List.of(form.facts(facts));
    } else if (block instanceof Block.Table table) {
      return new TablePieces(table, Paper.MARGIN_MM, widthMm).pieces();
    }
    if (block instanceof Block.Photograph photograph) {
      return List.of(PhotographPiece.of(photograph, widthMm));
    }
    return form.blanks((Block.Blanks) block);
  }
}
