package caryatid.web.page;

import java.util.regex.Pattern;

/** Writes HTML; all text and all attributes are escaped. */
public final class Markup {
  /** XML 1.0 (fifth edition), section 2.2: what no document may contain. */
  private static final Pattern NOT_ALLOWED =
      Pattern.compile("[^\t\n\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

  private final StringBuilder out = new StringBuilder();

  /**
   * Begins an element.
   *
   * @param attributes names and values in turn; one without a name is left out, one with an empty
   *     value stands for itself
   */
  public Markup open(String element, String... attributes) {
    out.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      attribute(attributes[i], attributes[i + 1]);
    }
    out.append('>');
    return this;
  }

  private void attribute(String name, String value) {
    if (!name.isEmpty()) {
      out.append(' ').append(name);
      if (!value.isEmpty() || name.equals("value") || name.equals("alt")) {
        out.append("=\"").append(escape(value)).append('"');
      }
    }
  }

  public Markup close(String element) {
    out.append("</").append(element).append(">\n");
    return this;
  }

  public Markup text(String words) {
    out.append(escape(words));
    return this;
  }

  /** An element with nothing but words in it. */
  public Markup element(String element, String words, String... attributes) {
    return open(element, attributes).text(words).close(element);
  }

  /** Markup that was made by the program, such as a drawing; it is not escaped. */
  public Markup drawing(String svg) {
    out.append(svg);
    return this;
  }

  public Markup add(Markup other) {
    out.append(other.out);
    return this;
  }

  private static String escape(String words) {
    return NOT_ALLOWED
        .matcher(words)
        .replaceAll("\uFFFD")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
