package caryatid.altered;

import caryatid.remark.BadInput;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.report.pdf.ReportReader;
import java.awt.Color;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdfwriter.ContentStreamWriter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationText;

/**
 * A way to alter a report.
 *
 * @param name what was done
 * @param named what the program's message must contain
 * @param change does it to the open document
 */
public record Alteration(String name, String named, Change change) {

  /** Changes a document. */
  @FunctionalInterface
  public interface Change {
    void in(PDDocument document) throws IOException;
  }

  /** The report, altered. */
  public byte[] of(byte[] pdf) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      change.in(document);
      document.save(out);
    }
    return out.toByteArray();
  }

  /** Those that any layout must notice. */
  public static List<Alteration> ofAnyLayout() {
    return List.of(
        new Alteration("first page removed", "page", document -> document.removePage(0)),
        new Alteration(
            "last page removed",
            "page",
            document -> document.removePage(document.getNumberOfPages() - 1)),
        new Alteration("page added", "page", document -> document.addPage(new PDPage())),
        new Alteration(
            "findings painted over", "", document -> over(document, 0, 0, 400, 600, 300)),
        new Alteration(
            "all of page one painted over", "", document -> over(document, 0, 0, 0, 600, 850)),
        new Alteration("a picture over page one", "", Alteration::picture),
        new Alteration("a note on page one", "page 1", document -> note(document, 0)),
        new Alteration(
            "a note on the last page",
            "page ",
            document -> note(document, document.getNumberOfPages() - 1)),
        new Alteration("a foreign file in the tree", "extra.txt", Alteration::foreign),
        new Alteration("a file's other bytes for viewers", "", Alteration::otherForViewers),
        new Alteration("a file not in the tree", "", Alteration::notInTree),
        new Alteration("numbers replaced in place", "", Alteration::digits));
  }

  /** Those that only a page printed again shows. */
  public static List<Alteration> ofTodaysLayout() {
    return List.of(
        new Alteration("a word written beside", "page 1", document -> word(document, 0, 20)),
        new Alteration(
            "a word on the last page",
            "page ",
            document -> word(document, document.getNumberOfPages() - 1, 800)),
        new Alteration(
            "a small corner painted over", "page 1", document -> over(document, 0, 590, 830, 4, 4)),
        new Alteration("a page turned", "page 1", document -> document.getPage(0).setRotation(180)),
        new Alteration(
            "a page cut",
            "page 1",
            document -> document.getPage(0).setCropBox(new PDRectangle(100, 100))),
        new Alteration(
            "a script at opening",
            "OpenAction",
            document -> document.getDocumentCatalog().setOpenAction(new PDActionJavaScript("1"))),
        new Alteration(
            "a form",
            "AcroForm",
            document ->
                document
                    .getDocumentCatalog()
                    .getCOSObject()
                    .setItem(COSName.ACRO_FORM, new COSDictionary())),
        new Alteration("letters exchanged", "page 1", Alteration::letters),
        new Alteration(
            "another language claimed",
            "page 1",
            document -> document.getDocumentCatalog().setLanguage("fr")),
        new Alteration("pages exchanged", "page 1", Alteration::exchanged),
        new Alteration(
            "what is read aloud",
            "StructTreeRoot",
            document ->
                document
                    .getDocumentCatalog()
                    .getStructureTreeRoot()
                    .getCOSObject()
                    .setString("Alt", "met")),
        new Alteration(
            "an older layout claimed",
            "layout 1",
            document -> document.getDocumentCatalog().setMetadata(null)));
  }

  /**
   * Those of the files inside.
   *
   * @param donor another report of the same layout
   */
  public static List<Alteration> ofFiles(Path donor) {
    return List.of(
        new Alteration(
            "all files inside exchanged",
            "",
            document -> attach(document, inside(Files.readAllBytes(donor)))),
        new Alteration(
            "a number of the result changed",
            "",
            document -> rewritten(document, AttachmentRole.RESULT, "(\\W1)9(\\.\\d{6,})", "$18$2")),
        new Alteration(
            "a sample of the recording changed",
            "",
            document ->
                rewritten(document, AttachmentRole.RECORDING, "(\\n[^\\n]*?\\d)1(\\d)", "$12$2")),
        new Alteration(
            "a landmark of the sheet changed",
            "",
            document -> rewritten(document, AttachmentRole.TRIAL_SHEET, "up-mm: 5", "up-mm: 4")),
        new Alteration(
            "a sheet nobody asked for",
            "other.yaml",
            document ->
                added(
                    document,
                    new AttachedFile(AttachmentRole.OTHER_SHEET, "other.yaml", new byte[9]))),
        new Alteration(
            "a second result",
            "second.json",
            document ->
                added(
                    document,
                    new AttachedFile(AttachmentRole.RESULT, "second.json", new byte[9]))));
  }

  private static List<AttachedFile> inside(byte[] pdf) throws IOException {
    try {
      return ReportReader.read("report", pdf).files();
    } catch (BadInput e) {
      throw new IOException(e);
    }
  }

  private static List<AttachedFile> inside(PDDocument document) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return inside(out.toByteArray());
  }

  private static void attach(PDDocument document, List<AttachedFile> files) throws IOException {
    Map<String, PDComplexFileSpecification> tree = new TreeMap<>();
    COSArray associated = new COSArray();
    for (AttachedFile file : files) {
      PDEmbeddedFile bytes = new PDEmbeddedFile(document, new ByteArrayInputStream(file.bytes()));
      PDComplexFileSpecification one = new PDComplexFileSpecification();
      one.setFile(file.name());
      one.setFileUnicode(file.name());
      one.setFileDescription(file.role().lastPart());
      one.setEmbeddedFile(bytes);
      one.setEmbeddedFileUnicode(bytes);
      tree.put(file.name(), one);
      associated.add(one);
    }
    document.getDocumentCatalog().getNames().getEmbeddedFiles().setNames(tree);
    document.getDocumentCatalog().getCOSObject().setItem(COSName.AF, associated);
  }

  private static void added(PDDocument document, AttachedFile file) throws IOException {
    List<AttachedFile> files = new ArrayList<>(inside(document));
    files.add(file);
    attach(document, files);
  }

  private static void rewritten(PDDocument document, AttachmentRole role, String from, String to)
      throws IOException {
    List<AttachedFile> files = new ArrayList<>();
    for (AttachedFile file : inside(document)) {
      String text = new String(file.bytes(), StandardCharsets.UTF_8);
      String now = file.role() == role ? text.replaceFirst(from, to) : text;
      if (file.role() == role && now.equals(text)) {
        throw new IOException("nothing to change in " + file.name());
      }
      byte[] bytes = now.equals(text) ? file.bytes() : now.getBytes(StandardCharsets.UTF_8);
      files.add(new AttachedFile(file.role(), file.name(), bytes));
    }
    attach(document, files);
  }

  private static void over(
      PDDocument document, int page, float left, float low, float width, float height)
      throws IOException {
    try (PDPageContentStream stream = appended(document, page)) {
      stream.setNonStrokingColor(Color.WHITE);
      stream.addRect(left, low, width, height);
      stream.fill();
    }
  }

  private static void picture(PDDocument document) throws IOException {
    java.awt.image.BufferedImage image =
        new java.awt.image.BufferedImage(4, 4, java.awt.image.BufferedImage.TYPE_INT_RGB);
    try (PDPageContentStream stream = appended(document, 0)) {
      stream.drawImage(LosslessFactory.createFromImage(document, image), 0, 0, 600, 850);
    }
  }

  private static void word(PDDocument document, int page, float up) throws IOException {
    try (PDPageContentStream stream = appended(document, page)) {
      stream.beginText();
      stream.setFont(new PDType1Font(FontName.HELVETICA), 8);
      stream.newLineAtOffset(20, up);
      stream.showText("tolerance met");
      stream.endText();
    }
  }

  private static PDPageContentStream appended(PDDocument document, int page) throws IOException {
    return new PDPageContentStream(document, document.getPage(page), AppendMode.APPEND, true, true);
  }

  private static void note(PDDocument document, int page) throws IOException {
    PDAnnotationText note = new PDAnnotationText();
    note.setContents("met");
    note.setRectangle(new PDRectangle(10, 10, 100, 100));
    document.getPage(page).setAnnotations(List.of(note));
  }

  private static void foreign(PDDocument document) throws IOException {
    PDEmbeddedFilesNameTreeNode tree = document.getDocumentCatalog().getNames().getEmbeddedFiles();
    Map<String, PDComplexFileSpecification> files = new TreeMap<>(tree.getNames());
    PDComplexFileSpecification more = new PDComplexFileSpecification();
    more.setFile("extra.txt");
    more.setFileUnicode("extra.txt");
    more.setEmbeddedFile(bytes(document, "more"));
    files.put("extra.txt", more);
    tree.setNames(files);
  }

  private static void notInTree(PDDocument document) throws IOException {
    PDEmbeddedFilesNameTreeNode tree = document.getDocumentCatalog().getNames().getEmbeddedFiles();
    Map<String, PDComplexFileSpecification> files = new TreeMap<>(tree.getNames());
    files.remove(files.keySet().iterator().next());
    tree.setNames(files);
  }

  private static void otherForViewers(PDDocument document) throws IOException {
    COSArray associated = document.getDocumentCatalog().getCOSObject().getCOSArray(COSName.AF);
    COSDictionary file = (COSDictionary) associated.getObject(0);
    file.getCOSDictionary(COSName.EF).setItem(COSName.UF, bytes(document, "shown").getCOSObject());
  }

  private static PDEmbeddedFile bytes(PDDocument document, String text) throws IOException {
    return new PDEmbeddedFile(
        document, new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** Writes 6 for each 5 on page one, 7 for each 6, and so on. */
  private static void digits(PDDocument document) throws IOException {
    PDPage page = document.getPage(0);
    Map<Integer, Integer> next = nextDigits(page);
    byte[] stream;
    try (InputStream in = page.getContents()) {
      stream = in.readAllBytes();
    }
    List<Object> tokens = new PDFStreamParser(stream).parse();
    tokens.replaceAll(token -> token instanceof COSString text ? replaced(text, next) : token);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new ContentStreamWriter(out).writeTokens(tokens);
    page.setContents(new PDStream(document, new ByteArrayInputStream(out.toByteArray())));
  }

  /** The letters embedded by their codes: that of each digit, and that of the next. */
  private static Map<Integer, Integer> nextDigits(PDPage page) throws IOException {
    Map<Integer, Integer> codes = new TreeMap<>();
    for (COSName name : page.getResources().getFontNames()) {
      for (int code = 0; code < 5000; code++) {
        String letter = page.getResources().getFont(name).toUnicode(code);
        if (letter != null && letter.matches("[0-9]")) {
          codes.put(letter.charAt(0) - '0', code);
        }
      }
    }
    Map<Integer, Integer> next = new TreeMap<>();
    codes.forEach((digit, code) -> next.put(code, codes.getOrDefault(digit + 1, code)));
    return next;
  }

  private static COSString replaced(COSString text, Map<Integer, Integer> next) {
    byte[] letters = text.getBytes().clone();
    for (int i = 0; i + 1 < letters.length; i += 2) {
      int code = (letters[i] & 0xFF) << 8 | letters[i + 1] & 0xFF;
      int now = next.getOrDefault(code, code);
      letters[i] = (byte) (now >> 8);
      letters[i + 1] = (byte) now;
    }
    return new COSString(letters);
  }

  /** The letters' file of a font changed. */
  private static void letters(PDDocument document) throws IOException {
    for (COSName name : document.getPage(0).getResources().getFontNames()) {
      document
          .getPage(0)
          .getResources()
          .getFont(name)
          .getCOSObject()
          .setItem(COSName.TO_UNICODE, bytes(document, "no map").getCOSObject());
    }
  }

  private static void exchanged(PDDocument document) {
    PDPage last = document.getPage(document.getNumberOfPages() - 1);
    document.removePage(last);
    document.getPages().insertBefore(last, document.getPage(0));
  }
}
