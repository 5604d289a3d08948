package caryatid.exchange;

import caryatid.entry.Entry;
import caryatid.format.JsonObjectWriter;
import caryatid.remark.Argument;
import java.io.IOException;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/** The record's report, the PDF in it. */
final class ReportDocument {
  /**
   * Systems, and readers of JSON, take texts of up to 20 million characters; base64 makes so many.
   */
  static final int MOST_MB = 15;

  private static final int MB = 1_000_000;
  private static final String TYPE = "DocumentReference";
  private static final String CODE = "fitting-record";

  private final ToldRecord told;
  private final byte[] pdf;

  ReportDocument(ToldRecord told, byte[] pdf) {
    this.told = told;
    this.pdf = pdf.clone();
  }

  BundledResource resource() {
    return BundledResource.once(TYPE, Fhir.IDENTIFIERS, identity(told), this::content);
  }

  /** The size of a report in MB, rounded up. */
  static int megabytes(int bytes) {
    return (bytes + MB - 1) / MB;
  }

  /** By what the report is referred to. */
  static String urn(ToldRecord told) {
    return BundledResource.urn(TYPE, identity(told));
  }

  /** Another state of the record and another language make another document. */
  private static String identity(ToldRecord told) {
    return told.identity(
        "report-" + told.record().headDigest().substring(0, 32) + "-" + told.language());
  }

  private void content(JsonObjectWriter out) throws IOException {
    List<Entry> entries = told.record().entries();
    String name =
        told.wording().fill("Exchange.document", Argument.text(told.record().code().text()));
    Fhir.words(out, told.language(), name);
    Fhir.object(out, "masterIdentifier", Fhir.identifier(Fhir.IDENTIFIERS, identity(told)));
    Fhir.objects(out, "identifier", List.of(Fhir.identifier(Fhir.IDENTIFIERS, identity(told))));
    out.text("status", "current");
    String type = told.wording().word("Exchange.code." + CODE);
    Fhir.object(out, "type", Fhir.concept(CODE, Optional.of(type)));
    Fhir.object(out, "subject", Fhir.reference(told.patient()));
    out.text("date", Fhir.time(entries.get(entries.size() - 1).at()));
    Fhir.objects(
        out, "author", entries.stream().map(Entry::by).distinct().map(Fhir::named).toList());
    out.text("description", name);
    Fhir.FhirPart attached =
        part -> Fhir.object(part, "attachment", each -> attachment(each, name));
    Fhir.objects(out, "content", List.of(attached));
  }

  private void attachment(JsonObjectWriter out, String name) throws IOException {
    out.text("contentType", "application/pdf")
        .text("language", told.language())
        .text("data", Base64.getEncoder().encodeToString(pdf))
        .whole("size", pdf.length)
        .text("title", name);
  }
}
