package caryatid.report.pdf;

import caryatid.format.ArchiveProblem;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.report.pages.Paper;
import caryatid.report.pdf.Attachments.AttachmentRole;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Takes out of a report what was put into it. */
public final class ReportReader {
  /** The first layout had no number in its document. */
  private static final int FIRST_LAYOUT = 1;

  private static final Pattern LAYOUT =
      Pattern.compile("<caryatid:layout>(\\d{1,9})</caryatid:layout>");

  private ReportReader() {}

  /**
   * A report that was read.
   *
   * @param files those inside, in the order in which they were put there
   * @param layout the number of its pages' layout
   * @param language that of its pages
   * @param paper its size
   */
  public record ReadReport(Attachments files, int layout, Locale language, Paper paper) {}

  /**
   * Reads a report.
   *
   * @param name the report's name, for messages
   * @throws BadInput if it is no PDF that can be read, or no report of this program: without a
   *     recording, a trial sheet and a result, or with other files inside
   */
  public static ReadReport open(String name, byte[] pdf) throws BadInput {
    ReadReport found;
    try (PDDocument document = PdfFile.load(pdf)) {
      found =
          new ReadReport(
              new Attachments(new FilesInside(name, document).read()),
              layout(document),
              language(document),
              paper(document));
    } catch (IOException e) {
      throw problem(name, ArchiveProblem.NOT_A_PDF, Argument.why(e));
    }
    if (found.files().files().isEmpty()) {
      throw new BadInput(Problem.at(Place.of(name), ArchiveProblem.NO_STAND_REPORT));
    }
    for (AttachmentRole needed :
        List.of(AttachmentRole.RECORDING, AttachmentRole.TRIAL_SHEET, AttachmentRole.RESULT)) {
      if (found.files().files().stream().noneMatch(file -> file.role() == needed)) {
        throw problem(name, ArchiveProblem.NOT_INSIDE, Argument.term(needed));
      }
    }
    return found;
  }

  /**
   * The files inside a report alone.
   *
   * @throws BadInput as {@link #open}
   */
  public static Attachments read(String name, byte[] pdf) throws BadInput {
    return open(name, pdf).files();
  }

  private static BadInput problem(String name, ArchiveProblem what, Argument said) {
    return new BadInput(Problem.at(Place.of(name), what, said));
  }

  private static int layout(PDDocument document) throws IOException {
    PDMetadata metadata = document.getDocumentCatalog().getMetadata();
    if (metadata == null) {
      return FIRST_LAYOUT;
    }
    try (InputStream xmp = metadata.createInputStream()) {
      Matcher number = LAYOUT.matcher(new String(xmp.readAllBytes(), StandardCharsets.UTF_8));
      return number.find() ? Integer.parseInt(number.group(1)) : FIRST_LAYOUT;
    }
  }

  private static Locale language(PDDocument document) {
    String tag = document.getDocumentCatalog().getLanguage();
    return Locale.forLanguageTag(Optional.ofNullable(tag).orElse("en"));
  }

  private static Paper paper(PDDocument document) {
    if (document.getNumberOfPages() == 0) {
      return Paper.A4;
    }
    PDRectangle page = document.getPage(0).getMediaBox();
    return Stream.of(Paper.values())
        .filter(paper -> Math.abs(PdfPen.points(paper.widthMm()) - page.getWidth()) < 1)
        .findFirst()
        .orElse(Paper.A4);
  }
}
