package caryatid.blackbox;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/** Changes a PDF and the files inside it, as anyone could with a PDF tool. */
final class FilesInside {
  private FilesInside() {}

  /**
   * Changes the text of the file that has this description.
   *
   * @return the file's new bytes
   */
  static byte[] change(Path pdf, String description, UnaryOperator<String> change)
      throws IOException {
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
      PDComplexFileSpecification file = file(document, description);
      String before = new String(file.getEmbeddedFile().toByteArray(), UTF_8);
      String now = change.apply(before);
      if (now.equals(before)) {
        throw new IllegalArgumentException(description + " has nothing of what was to be changed");
      }
      byte[] bytes = now.getBytes(UTF_8);
      PDEmbeddedFile embedded = new PDEmbeddedFile(document, new ByteArrayInputStream(bytes));
      file.setEmbeddedFile(embedded);
      file.setEmbeddedFileUnicode(embedded);
      document.save(pdf.toFile());
      return bytes;
    }
  }

  /** Writes a line at the foot of the last page, as if it had been printed there. */
  static void print(Path pdf, String line) throws IOException {
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
      PDPage last = document.getPage(document.getNumberOfPages() - 1);
      try (PDPageContentStream out =
          new PDPageContentStream(
              document, last, PDPageContentStream.AppendMode.APPEND, true, true)) {
        out.beginText();
        out.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 6);
        out.newLineAtOffset(40, 12);
        out.showText(line);
        out.endText();
      }
      document.save(pdf.toFile());
    }
  }

  private static PDComplexFileSpecification file(PDDocument document, String description) {
    COSArray associated = document.getDocumentCatalog().getCOSObject().getCOSArray(COSName.AF);
    for (int i = 0; i < associated.size(); i++) {
      PDComplexFileSpecification file =
          new PDComplexFileSpecification((COSDictionary) associated.getObject(i));
      if (description.equals(file.getFileDescription())) {
        return file;
      }
    }
    throw new IllegalArgumentException("no " + description + " inside");
  }
}
