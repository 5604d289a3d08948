package caryatid.chart.mark;

import caryatid.chart.mark.Style.Lettering;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The letters of all drawings: Liberation Sans, brought along, so that no font need be installed
 * and widths are the same everywhere.
 */
public final class Fonts {
  /** Widths are taken at a large size, where no rounding to pixels is left. */
  private static final float LARGE = 1000;

  public static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
  private static final Graphics2D SCRATCH =
      new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
  private static final Font REGULAR = load("Regular");
  private static final Font BOLD = load("Bold");

  private Fonts() {}

  /** The font's file (TrueType); the caller closes the stream. */
  public static InputStream open(boolean bold) {
    return open(bold ? "Bold" : "Regular");
  }

  private static InputStream open(String weight) {
    String file = "/liberation/LiberationSans-" + weight + ".ttf";
    InputStream stream = Fonts.class.getResourceAsStream(file);
    if (stream == null) {
      throw new IllegalStateException("not on the class path: " + file);
    }
    return stream;
  }

  private static Font load(String weight) {
    try (InputStream stream = open(weight)) {
      return Font.createFont(Font.TRUETYPE_FONT, stream).deriveFont(LARGE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException(e);
    }
  }

  public static Font font(Lettering lettering) {
    return lettering.bold() ? BOLD : REGULAR;
  }

  /** Measures of a font that is large enough for whole units to be exact. */
  public static FontMetrics metrics(Font font) {
    return SCRATCH.getFontMetrics(font);
  }

  /** Width of a line of text, mm. */
  public static double widthMm(String words, Lettering lettering) {
    double atLarge = font(lettering).getStringBounds(words, EXACT).getWidth();
    return atLarge / LARGE * lettering.points() * Style.MM_PER_POINT;
  }

  /** A text in lines no wider than a room, broken at blanks, and inside words that are wider. */
  public static List<String> wrap(String words, Lettering lettering, double roomMm) {
    return wrap(words, lettering, roomMm, 0);
  }

  /** The same, the first line starting so far in, where something else stands, mm. */
  public static List<String> wrap(
      String words, Lettering lettering, double roomMm, double firstInMm) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : narrow(words, lettering, roomMm - firstInMm).split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      double room = lines.isEmpty() ? roomMm - firstInMm : roomMm;
      if (!line.isEmpty() && widthMm(longer, lettering) > room) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  /** Puts blanks into words that are wider than a room. */
  private static String narrow(String words, Lettering lettering, double roomMm) {
    StringBuilder narrow = new StringBuilder();
    String part = "";
    for (int i = 0; i < words.length(); i++) {
      char letter = words.charAt(i);
      if (letter == ' ') {
        part = "";
      } else if (!part.isEmpty() && widthMm(part + letter, lettering) > roomMm) {
        narrow.append(' ');
        part = "" + letter;
      } else {
        part = part + letter;
      }
      narrow.append(letter);
    }
    return narrow.toString();
  }

  /** As much of a text as fits a width, with an ellipsis where something was cut. */
  public static String fit(String words, Lettering lettering, double roomMm) {
    if (widthMm(words, lettering) <= roomMm) {
      return words;
    }
    int length = words.length();
    while (length > 0 && widthMm(words.substring(0, length) + "…", lettering) > roomMm) {
      length--;
    }
    return words.substring(0, length).stripTrailing() + "…";
  }
}
