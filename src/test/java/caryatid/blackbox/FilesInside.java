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
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** Changes a file inside a PDF, as anyone could with a PDF tool. */
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
      file.setEmbeddedFile(new PDEmbeddedFile(document, new ByteArrayInputStream(bytes)));
      document.save(pdf.toFile());
      return bytes;
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
