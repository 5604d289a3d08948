package caryatid.report.pdf;

import caryatid.report.picture.XmlEscapes;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.OptionalInt;

/** A document's metadata (XMP, ISO 16684-1), with the declarations PDF/A asks for. */
final class PdfMetadata {
  static final String PRODUCER = "Apache PDFBox";

  private static final String PACKET =
      """
      <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
      <x:xmpmeta xmlns:x="adobe:ns:meta/">
       <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
         <dc:format>application/pdf</dc:format>
         <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%1$s</rdf:li></rdf:Alt></dc:title>
         <dc:language><rdf:Bag><rdf:li>%2$s</rdf:li></rdf:Bag></dc:language>
        </rdf:Description>
        <rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
         <xmp:CreatorTool>%3$s</xmp:CreatorTool>
         <xmp:CreateDate>%4$s</xmp:CreateDate>
         <xmp:ModifyDate>%4$s</xmp:ModifyDate>
        </rdf:Description>
        <rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
         <pdf:Producer>%5$s</pdf:Producer>
        </rdf:Description>
        <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
         <pdfaid:part>3</pdfaid:part>
         <pdfaid:conformance>A</pdfaid:conformance>
        </rdf:Description>
        <rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
         <pdfuaid:part>1</pdfuaid:part>
        </rdf:Description>
        %6$s<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
          xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
          xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
         <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
          <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
          <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
          <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
          <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
           <pdfaProperty:name>part</pdfaProperty:name>
           <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
           <pdfaProperty:category>internal</pdfaProperty:category>
           <pdfaProperty:description>Part of ISO 14289 to which the document conforms</pdfaProperty:description>
          </rdf:li></rdf:Seq></pdfaSchema:property>
         </rdf:li>%7$s</rdf:Bag></pdfaExtension:schemas>
        </rdf:Description>
       </rdf:RDF>
      </x:xmpmeta>
      <?xpacket end="w"?>
      """;

  private static final String LAYOUT =
      """
      <rdf:Description rdf:about="" xmlns:caryatid="urn:caryatid:page:">
         <caryatid:layout>%1$d</caryatid:layout>
        </rdf:Description>
      """;

  private static final String LAYOUT_SCHEMA =
      """
      <rdf:li rdf:parseType="Resource">
          <pdfaSchema:schema>Page of a load line report</pdfaSchema:schema>
          <pdfaSchema:namespaceURI>urn:caryatid:page:</pdfaSchema:namespaceURI>
          <pdfaSchema:prefix>caryatid</pdfaSchema:prefix>
          <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
           <pdfaProperty:name>layout</pdfaProperty:name>
           <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
           <pdfaProperty:category>internal</pdfaProperty:category>
           <pdfaProperty:description>Number of the page's layout</pdfaProperty:description>
          </rdf:li></rdf:Seq></pdfaSchema:property>
         </rdf:li>\
      """;

  private PdfMetadata() {}

  static String of(
      String title, String language, String program, OptionalInt layout, OffsetDateTime at) {
    String time = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at.withNano(0));
    return PACKET.formatted(
        XmlEscapes.escape(title),
        XmlEscapes.escape(language),
        XmlEscapes.escape(program),
        time,
        PRODUCER,
        layout.isPresent() ? LAYOUT.formatted(layout.getAsInt()) : "",
        layout.isPresent() ? LAYOUT_SCHEMA : "");
  }
}
