package caryatid.report.pdf;

import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** What makes a PDF last: PDF/A-3 (ISO 19005-3), level A, and PDF/UA-1 (ISO 14289-1). */
final class PdfArchive {
  private static final float PDF_VERSION = 1.7f;

  private final PDDocument document;
  private final String title;
  private final Locale language;
  private final OffsetDateTime at;

  /**
   * @param at the time the document is dated: that of the stand, so that its bytes repeat
   */
  PdfArchive(PDDocument document, String title, Locale language, OffsetDateTime at) {
    this.document = document;
    this.title = title;
    this.language = language;
    this.at = at;
  }

  /**
   * Says what the document is.
   *
   * @param layout number of the page's layout, where it has one
   */
  void describe(String program, OptionalInt layout) throws IOException {
    document.setVersion(PDF_VERSION);
    document.setDocumentId(at.toEpochSecond());
    PDDocumentInformation information = document.getDocumentInformation();
    information.setTitle(title);
    information.setCreator(program);
    information.setProducer(PdfMetadata.PRODUCER);
    information.setCreationDate(calendar());
    information.setModificationDate(calendar());
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setLanguage(language.toLanguageTag());
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    catalog.setViewerPreferences(preferences);
    markAsTagged(catalog);
    metadata(catalog, program, layout);
    colours(catalog);
  }

  private static void markAsTagged(PDDocumentCatalog catalog) {
    PDMarkInfo mark = new PDMarkInfo();
    mark.setMarked(true);
    catalog.setMarkInfo(mark);
  }

  private void metadata(PDDocumentCatalog catalog, String program, OptionalInt layout)
      throws IOException {
    String xmp = PdfMetadata.of(title, language.toLanguageTag(), program, layout, at);
    PDMetadata metadata =
        new PDMetadata(document, new ByteArrayInputStream(xmp.getBytes(StandardCharsets.UTF_8)));
    catalog.setMetadata(metadata);
  }

  private void colours(PDDocumentCatalog catalog) throws IOException {
    byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
    intent.setInfo("sRGB IEC61966-2.1");
    intent.setOutputCondition("sRGB IEC61966-2.1");
    intent.setOutputConditionIdentifier("sRGB IEC61966-2.1");
    catalog.addOutputIntent(intent);
  }

  private Calendar calendar() {
    return GregorianCalendar.from(at.toZonedDateTime());
  }

  void attach(Attachments attachments) throws IOException {
    Map<String, PDComplexFileSpecification> byName = new LinkedHashMap<>();
    COSArray associated = new COSArray();
    for (AttachedFile file : attachments.files()) {
      PDComplexFileSpecification specification = specification(file);
      byName.put(unused(file.name(), byName.keySet()), specification);
      associated.add(specification);
    }
    if (byName.isEmpty()) {
      return;
    }
    PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
    tree.setNames(byName);
    PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
    names.setEmbeddedFiles(tree);
    document.getDocumentCatalog().setNames(names);
    document.getDocumentCatalog().getCOSObject().setItem(COSName.AF, associated);
  }

  /** Files from several folders may share a name; viewers show the name of the file itself. */
  private static String unused(String name, Set<String> used) {
    String unused = name;
    for (int i = 2; used.contains(unused); i++) {
      unused = i + "-" + name;
    }
    return unused;
  }

  private PDComplexFileSpecification specification(AttachedFile file) throws IOException {
    PDEmbeddedFile embedded = new PDEmbeddedFile(document);
    Packed.put(file.bytes(), embedded.getCOSObject());
    embedded.setSubtype(type(file));
    embedded.setSize(file.bytes().length);
    embedded.setModDate(calendar());
    PDComplexFileSpecification specification = new PDComplexFileSpecification();
    specification.setFile(file.name());
    specification.setFileUnicode(file.name());
    specification.setFileDescription(file.role().lastPart());
    specification.setEmbeddedFile(embedded);
    specification.setEmbeddedFileUnicode(embedded);
    specification
        .getCOSObject()
        .setName(COSName.AF_RELATIONSHIP, file.role() == AttachmentRole.RESULT ? "Data" : "Source");
    return specification;
  }

  private static String type(AttachedFile file) {
    if (file.role() == AttachmentRole.RESULT || file.role() == AttachmentRole.EARLIER_STATES) {
      return "application/json";
    }
    return file.role() == AttachmentRole.RECORDING ? "text/plain" : "application/yaml";
  }
}
