package caryatid.report.picture;

import java.util.regex.Pattern;

/** Text inside XML and HTML. */
public final class XmlEscapes {
  /** XML 1.0 (fifth edition), section 2.2: what no document may contain, in whatever form. */
  private static final Pattern NOT_IN_XML =
      Pattern.compile("[^\t\n\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

  private XmlEscapes() {}

  /**
   * A text that may stand between tags or in an attribute in double quotes; characters that XML
   * excludes become replacement characters.
   */
  public static String escape(String words) {
    return NOT_IN_XML
        .matcher(words)
        .replaceAll("\uFFFD")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
