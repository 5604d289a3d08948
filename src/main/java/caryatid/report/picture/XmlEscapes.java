package caryatid.report.picture;

/** Text inside XML and HTML. */
public final class XmlEscapes {
  private XmlEscapes() {}

  /** A text that may stand between tags or in an attribute in double quotes. */
  public static String escape(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
