package caryatid.report;

import caryatid.report.Block.Figures;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Lays a report's blocks out on pages; what does not fit goes on to a further page. */
final class PdfLayout {
  static final double MARGIN_MM = 12;
  private static final double TOP_MM = 9;
  private static final double FOOTER_MM = 12.5;

  private final PdfPen pen;
  private final double widthMm;
  private double downMm = TOP_MM;

  PdfLayout(PdfPen pen) {
    this.pen = pen;
    this.widthMm = pen.paper().widthMm() - 2 * MARGIN_MM;
  }

  void lay(Content content) throws IOException {
    for (int page = 0; page < content.pages().size(); page++) {
      if (page > 0) {
        turnPage();
      }
      for (Piece piece : pieces(content.pages().get(page))) {
        place(piece);
      }
    }
  }

  private void place(Piece piece) throws IOException {
    if (downMm > TOP_MM && downMm + piece.neededMm() > bottomMm()) {
      turnPage();
      if (piece.above().isPresent()) {
        draw(piece.above().get());
      }
    }
    draw(piece);
  }

  private void draw(Piece piece) throws IOException {
    piece.way().draw(pen, downMm);
    downMm += piece.heightMm();
  }

  private void turnPage() throws IOException {
    pen.turnPage();
    downMm = TOP_MM;
  }

  private double bottomMm() {
    return pen.paper().heightMm() - FOOTER_MM;
  }

  /** Drawings get the height the other blocks leave, within limits. */
  private List<Piece> pieces(List<Block> blocks) {
    double others =
        blocks.stream()
            .filter(block -> !(block instanceof Figures))
            .flatMap(block -> fixed(block).stream())
            .mapToDouble(Piece::heightMm)
            .sum();
    long rows = Math.max(1, blocks.stream().filter(Figures.class::isInstance).count());
    double left = (bottomMm() - TOP_MM - others - 0.1) / rows - FormPieces.AROUND_FIGURE_MM;
    List<Piece> pieces = new ArrayList<>();
    for (int i = blocks.size() - 1; i >= 0; i--) {
      List<Piece> of = new ArrayList<>(pieces(blocks.get(i), left));
      if (blocks.get(i) instanceof Block.Heading) {
        of.set(0, of.get(0).needing(of.get(0).heightMm() + startMm(pieces)));
      }
      pieces.addAll(0, of);
    }
    return pieces;
  }

  /** How much of a page pieces need to start. */
  private static double startMm(List<Piece> pieces) {
    return pieces.stream()
        .filter(piece -> piece.heightMm() > 0)
        .findFirst()
        .map(Piece::neededMm)
        .orElse(0.0);
  }

  private List<Piece> pieces(Block block, double leftMm) {
    if (block instanceof Figures figures) {
      double height = Math.max(figures.leastMm(), Math.min(figures.mostMm(), leftMm));
      FormPieces form = new FormPieces(MARGIN_MM, widthMm);
      return List.of(form.figures(figures.plan().at(widthMm, height), height));
    }
    return fixed(block);
  }

  private List<Piece> fixed(Block block) {
    TextPieces text = new TextPieces(MARGIN_MM, widthMm);
    FormPieces form = new FormPieces(MARGIN_MM, widthMm);
    if (block instanceof Block.Title title) {
      return List.of(text.title(title.words()));
    } else if (block instanceof Block.Heading heading) {
      return List.of(text.heading(heading.words()));
    } else if (block instanceof Block.Prose prose) {
      return List.of(text.prose(prose.words(), prose.strong()));
    } else if (block instanceof Block.Points points) {
      return text.points(points);
    } else if (block instanceof Block.Facts facts) {
      return List.of(form.facts(facts.facts()));
    } else if (block instanceof Block.Table table) {
      return new TablePieces(table, MARGIN_MM, widthMm).pieces();
    }
    return form.blanks((Block.Blanks) block);
  }
}
