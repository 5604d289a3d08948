package caryatid.differential;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.util.diff.Delta;
import org.assertj.core.util.diff.DiffUtils;

/** Bytes as lines, to say where they differ. */
final class Lines {
  private Lines() {}

  static List<String> changed(byte[] was, byte[] is) {
    List<String> changed = new ArrayList<>();
    for (Delta<String> delta : DiffUtils.diff(of(was), of(is)).getDeltas()) {
      delta.getOriginal().getLines().forEach(line -> changed.add("-" + line));
      delta.getRevised().getLines().forEach(line -> changed.add("+" + line));
    }
    if (changed.isEmpty()) {
      changed.add("~ the same lines, but not the same bytes");
    }
    return changed;
  }

  private static List<String> of(byte[] bytes) {
    String text = new String(bytes, UTF_8);
    try {
      return (text.startsWith("%PDF") ? pages(bytes) : text).lines().toList();
    } catch (IOException e) {
      return List.of("cannot be read as a PDF: " + e.getMessage());
    }
  }

  private static String pages(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }
}
