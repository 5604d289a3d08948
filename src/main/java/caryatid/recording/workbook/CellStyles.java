package caryatid.recording.workbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Which of a workbook's cell styles show a number as a date or a time. */
final class CellStyles {
  /** What a number is shown as. */
  enum ShownAs {
    NUMBER,
    DATE,
    TIME
  }

  /** The standard's own formats 14 to 22 and 45 to 47 (ISO/IEC 29500-1, numFmt). */
  private static final Map<Integer, ShownAs> STANDARD = new HashMap<>();

  static {
    for (int date = 14; date <= 17; date++) {
      STANDARD.put(date, ShownAs.DATE);
    }
    for (int time : new int[] {18, 19, 20, 21, 22, 45, 46, 47}) {
      STANDARD.put(time, ShownAs.TIME);
    }
  }

  /** What a format says literally: quoted, escaped, colours and places in brackets. */
  private static final Pattern LITERAL =
      Pattern.compile("(?i)\"[^\"]*\"|\\\\.|_.|\\*.|\\[(?!h+]|m+]|s+])[^\\]]*]");

  private static final Pattern TIME = Pattern.compile("(?i)[hs]|\\[m+]|AM/PM");
  private static final Pattern DATE = Pattern.compile("(?i)[ymd]");

  /** Styles at the most; the standard's programs allow 64,000. */
  private static final int MOST = 1 << 17;

  private final Map<Integer, ShownAs> formats = new HashMap<>(STANDARD);
  private final List<ShownAs> styles = new ArrayList<>();

  /** A workbook without styles. */
  CellStyles() {}

  /** The styles of a part. */
  static CellStyles of(XmlPart part) throws IOException {
    CellStyles styles = new CellStyles();
    boolean cells = false;
    while (part.next()) {
      if (part.starts("numFmt")) {
        styles.formats.put(number(part), shown(part.attribute("formatCode").orElse("")));
      } else if (part.starts("cellXfs") || part.ends("cellXfs")) {
        cells = part.starts("cellXfs");
      } else if (cells && part.starts("xf")) {
        styles.add(number(part));
      }
    }
    return styles;
  }

  private void add(int format) throws WorkbookFault {
    if (styles.size() > MOST) {
      throw WorkbookFault.damaged("cellXfs");
    }
    styles.add(formats.getOrDefault(format, ShownAs.NUMBER));
  }

  private static int number(XmlPart part) throws WorkbookFault {
    try {
      return Integer.parseInt(part.attribute("numFmtId").orElse("0"));
    } catch (NumberFormatException e) {
      throw WorkbookFault.damaged("numFmtId");
    }
  }

  private static ShownAs shown(String format) {
    String bare = LITERAL.matcher(format).replaceAll("").replaceAll("(?i)general", "");
    if (TIME.matcher(bare).find()) {
      return ShownAs.TIME;
    }
    return DATE.matcher(bare).find() ? ShownAs.DATE : ShownAs.NUMBER;
  }

  /** What a style, by its number in a cell's attribute, shows a number as. */
  ShownAs of(String style) throws WorkbookFault {
    if (style.isEmpty()) {
      return ShownAs.NUMBER;
    }
    try {
      int index = Integer.parseInt(style);
      return index < styles.size() ? styles.get(index) : ShownAs.NUMBER;
    } catch (NumberFormatException | IndexOutOfBoundsException e) {
      throw WorkbookFault.damaged("s=" + style);
    }
  }
}
