package caryatid.report.pdf;

import caryatid.format.ArchiveProblem;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/**
 * The files inside a report. Viewers list those in the tree of names, the program reads the
 * associated ones: they must be the same.
 */
final class FilesInside {
  private static final Set<AttachmentRole> SEVERAL =
      EnumSet.of(AttachmentRole.RECORDING, AttachmentRole.OTHER_SHEET);

  private final String report;
  private final PDDocument document;

  FilesInside(String report, PDDocument document) {
    this.report = report;
    this.document = document;
  }

  /**
   * The files, in the order in which they are associated.
   *
   * @throws BadInput if there is one that is no part of a report, or one that another stands for
   */
  List<AttachedFile> read() throws IOException, BadInput {
    COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
    Set<COSDictionary> named = named(catalog);
    List<AttachedFile> files = new ArrayList<>();
    COSArray associated = catalog.getCOSArray(COSName.AF);
    for (int i = 0; associated != null && i < associated.size(); i++) {
      if (associated.getObject(i) instanceof COSDictionary dictionary) {
        AttachedFile file = file(new PDComplexFileSpecification(dictionary));
        boolean second = files.stream().anyMatch(f -> f.role() == file.role());
        if (!named.remove(dictionary) || second && !SEVERAL.contains(file.role())) {
          throw foreign(file.name());
        }
        files.add(file);
      }
    }
    for (COSDictionary left : named) {
      throw foreign(new PDComplexFileSpecification(left).getFileUnicode());
    }
    return files;
  }

  private AttachedFile file(PDComplexFileSpecification file) throws IOException, BadInput {
    Optional<AttachmentRole> role = role(file.getFileDescription());
    PDEmbeddedFile embedded = file.getEmbeddedFile();
    PDEmbeddedFile shown = file.getEmbeddedFileUnicode();
    String name = String.valueOf(file.getFileUnicode());
    if (role.isEmpty() || embedded == null || shown == null || !name.equals(file.getFile())) {
      throw foreign(name);
    }
    byte[] bytes = embedded.toByteArray();
    if (embedded.getCOSObject() != shown.getCOSObject()
        && !Arrays.equals(bytes, shown.toByteArray())) {
      throw foreign(name);
    }
    return new AttachedFile(role.get(), name, bytes);
  }

  private BadInput foreign(String name) {
    return new BadInput(
        Problem.at(
            Place.of(report), ArchiveProblem.FOREIGN_FILE, Argument.text(String.valueOf(name))));
  }

  private static Optional<AttachmentRole> role(String description) {
    return Stream.of(AttachmentRole.values())
        .filter(role -> role.lastPart().equals(description))
        .findFirst();
  }

  /** What the tree of names holds (ISO 32000-1, 7.9.6), by identity. */
  private static Set<COSDictionary> named(COSDictionary catalog) {
    Set<COSDictionary> found = Collections.newSetFromMap(new IdentityHashMap<>());
    Set<COSBase> nodes = Collections.newSetFromMap(new IdentityHashMap<>());
    List<COSBase> open = new ArrayList<>();
    COSDictionary names = catalog.getCOSDictionary(COSName.NAMES);
    if (names != null && names.getDictionaryObject(COSName.EMBEDDED_FILES) != null) {
      open.add(names.getDictionaryObject(COSName.EMBEDDED_FILES));
    }
    while (!open.isEmpty()) {
      if (open.remove(open.size() - 1) instanceof COSDictionary node && nodes.add(node)) {
        each(node.getCOSArray(COSName.KIDS), open);
        List<COSBase> files = new ArrayList<>();
        each(node.getCOSArray(COSName.NAMES), files);
        files.stream()
            .filter(COSDictionary.class::isInstance)
            .forEach(file -> found.add((COSDictionary) file));
      }
    }
    return found;
  }

  private static void each(COSArray array, List<COSBase> into) {
    for (int i = 0; array != null && i < array.size(); i++) {
      into.add(array.getObject(i));
    }
  }
}
