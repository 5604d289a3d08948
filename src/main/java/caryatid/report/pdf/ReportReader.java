package caryatid.report.pdf;

import caryatid.format.ArchiveProblem;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.Role;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;

/** Takes the files that are kept inside a report out of it again. */
public final class ReportReader {
  private ReportReader() {}

  /** Whether bytes are a PDF at all (ISO 32000-1, 7.5.2). */
  public static boolean isPdf(byte[] bytes) {
    return bytes.length > 4
        && bytes[0] == '%'
        && bytes[1] == 'P'
        && bytes[2] == 'D'
        && bytes[3] == 'F';
  }

  /**
   * The files inside a report, in the order in which they were put there.
   *
   * @param name the report's name, for what is said of it
   * @throws BadInput if it is no PDF that can be read, or no report of this program: without a
   *     recording, a trial sheet and a result
   */
  public static Attachments read(String name, byte[] pdf) throws BadInput {
    Attachments found;
    try (PDDocument document = Loader.loadPDF(pdf)) {
      found = new Attachments(files(document));
    } catch (IOException e) {
      throw problem(name, Argument.text(String.valueOf(e.getMessage())));
    }
    for (Role needed : List.of(Role.RECORDING, Role.TRIAL_SHEET, Role.RESULT)) {
      if (found.files().stream().noneMatch(file -> file.role() == needed)) {
        throw new BadInput(
            Problem.at(Place.of(name), ArchiveProblem.NOT_INSIDE, Argument.term(needed)));
      }
    }
    return found;
  }

  private static BadInput problem(String name, Argument said) {
    return new BadInput(Problem.at(Place.of(name), ArchiveProblem.NOT_A_PDF, said));
  }

  private static List<AttachedFile> files(PDDocument document) throws IOException {
    COSArray associated = document.getDocumentCatalog().getCOSObject().getCOSArray(COSName.AF);
    List<AttachedFile> files = new ArrayList<>();
    for (int i = 0; associated != null && i < associated.size(); i++) {
      if (associated.getObject(i) instanceof COSDictionary dictionary) {
        PDComplexFileSpecification file = new PDComplexFileSpecification(dictionary);
        Optional<Role> role = role(file.getFileDescription());
        if (role.isPresent() && file.getEmbeddedFile() != null) {
          files.add(
              new AttachedFile(
                  role.get(), file.getFileUnicode(), file.getEmbeddedFile().toByteArray()));
        }
      }
    }
    return files;
  }

  private static Optional<Role> role(String description) {
    return Stream.of(Role.values()).filter(role -> role.lastPart().equals(description)).findFirst();
  }
}
