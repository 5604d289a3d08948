package caryatid.recording.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * A part of a workbook, element by element. A document type is refused, so there are no entities.
 */
final class XmlPart implements AutoCloseable {
  /** The longest text of a cell, characters (ISO/IEC 29500: 32,767). */
  private static final int LONGEST_TEXT = 1 << 16;

  private final String name;
  private final InputStream bytes;
  private final XMLStreamReader xml;

  XmlPart(String name, InputStream bytes) throws IOException {
    this.name = name;
    this.bytes = bytes;
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    try {
      this.xml = factory.createXMLStreamReader(bytes);
    } catch (XMLStreamException e) {
      throw failed(e);
    }
  }

  /** Goes to the next start or end of an element; false at the part's end. */
  boolean next() throws IOException {
    try {
      while (xml.hasNext()) {
        int event = xml.next();
        if (event == XMLStreamConstants.DTD) {
          throw WorkbookFault.damaged(name);
        }
        if (event == XMLStreamConstants.START_ELEMENT || event == XMLStreamConstants.END_ELEMENT) {
          return true;
        }
      }
      return false;
    } catch (XMLStreamException e) {
      throw failed(e);
    }
  }

  /** Whether an element of this name starts here. */
  boolean starts(String element) {
    return xml.isStartElement() && xml.getLocalName().equals(element);
  }

  /** Whether an element of this name ends here. */
  boolean ends(String element) {
    return xml.isEndElement() && xml.getLocalName().equals(element);
  }

  /** An attribute of the element that starts here, whatever its namespace; at an end, none. */
  Optional<String> attribute(String attribute) {
    int count = xml.isStartElement() ? xml.getAttributeCount() : 0;
    for (int i = 0; i < count; i++) {
      if (xml.getAttributeLocalName(i).equals(attribute)) {
        return Optional.of(xml.getAttributeValue(i));
      }
    }
    return Optional.empty();
  }

  /** Whether an attribute is there and true. */
  boolean flag(String attribute) {
    return attribute(attribute).filter(v -> v.equals("1") || v.equals("true")).isPresent();
  }

  /** The text of the element that starts here, to its end; it has no elements in it. */
  String text() throws IOException {
    StringBuilder text = new StringBuilder();
    try {
      for (int event = xml.next(); event != XMLStreamConstants.END_ELEMENT; event = xml.next()) {
        if (event == XMLStreamConstants.START_ELEMENT
            || text.length() + (xml.hasText() ? xml.getTextLength() : 0) > LONGEST_TEXT) {
          throw WorkbookFault.damaged(name);
        }
        if (event == XMLStreamConstants.CHARACTERS
            || event == XMLStreamConstants.CDATA
            || event == XMLStreamConstants.SPACE) {
          text.append(xml.getText());
        }
      }
      return text.toString();
    } catch (XMLStreamException e) {
      throw failed(e);
    }
  }

  /** The parser wraps what the stream below it threw. */
  private IOException failed(XMLStreamException failure) {
    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof WorkbookFault fault) {
        return fault;
      }
      if (cause instanceof XMLStreamException stream
          && stream.getNestedException() instanceof WorkbookFault fault) {
        return fault;
      }
    }
    return WorkbookFault.damaged(name);
  }

  @Override
  public void close() throws IOException {
    bytes.close();
  }
}
