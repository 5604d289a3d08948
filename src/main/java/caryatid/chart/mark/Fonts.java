package caryatid.chart.mark;

import static java.util.stream.Collectors.joining;

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
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * The letters of all drawings: Liberation Sans, and DejaVu Sans for signs that it lacks, such as
 * sub- and superscripts. Both are brought along, so that no font need be installed and widths are
 * the same everywhere.
 */
public final class Fonts {
  /** Widths are taken at a large size, where no rounding to pixels is left. */
  private static final float LARGE = 1000;

  public static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
  private static final Graphics2D SCRATCH =
      new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
  private static final Map<FontFile, Font> LOADED = new ConcurrentHashMap<>();

  /** Codes below this are of letters and signs that reports have often. */
  private static final int COMMON = 0x2600;

  private Fonts() {}

  /** A letter of a font: whether it has it, and the width at a size of 1000. */
  private record KnownLetter(boolean there, double width) {}

  /** The files of the fonts (TrueType). */
  public enum FontFile {
    REGULAR("/liberation/LiberationSans-Regular.ttf"),
    BOLD("/liberation/LiberationSans-Bold.ttf"),
    SIGNS("/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf"),
    BOLD_SIGNS("/net/sf/jasperreports/fonts/dejavu/DejaVuSans-Bold.ttf");

    private final String path;

    /** What is known of the common letters, because the drawings ask for the same ones often. */
    private final AtomicReferenceArray<KnownLetter> letters = new AtomicReferenceArray<>(COMMON);

    FontFile(String path) {
      this.path = path;
    }

    private static FontFile of(Lettering lettering, boolean sign) {
      if (sign) {
        return lettering.bold() ? BOLD_SIGNS : SIGNS;
      }
      return lettering.bold() ? BOLD : REGULAR;
    }

    /** The font's bytes; the caller closes the stream. */
    public InputStream open() {
      InputStream stream = Fonts.class.getResourceAsStream(path);
      if (stream == null) {
        throw new IllegalStateException("not on the class path: " + path);
      }
      return stream;
    }

    private KnownLetter letter(int code) {
      KnownLetter known = code < COMMON ? letters.get(code) : null;
      if (known == null) {
        double width = font().getStringBounds(Character.toString(code), EXACT).getWidth();
        known = new KnownLetter(font().canDisplay(code), width);
        if (code < COMMON) {
          letters.set(code, known);
        }
      }
      return known;
    }

    /** The font, at a size of 1000. */
    public Font font() {
      return LOADED.computeIfAbsent(this, Fonts::load);
    }
  }

  /** Letters of a line that are written with one font. */
  public record TextRun(String words, FontFile file) {
    /** Width, mm. */
    public double widthMm(Lettering lettering) {
      double atLarge = 0;
      for (int i = 0; i < words.length(); i += Character.charCount(words.codePointAt(i))) {
        atLarge += file.letter(words.codePointAt(i)).width();
      }
      return atLarge / LARGE * lettering.points() * Style.MM_PER_POINT;
    }
  }

  private static Font load(FontFile file) {
    try (InputStream stream = file.open()) {
      return Font.createFont(Font.TRUETYPE_FONT, stream).deriveFont(LARGE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException(e);
    }
  }

  public static Font font(Lettering lettering) {
    return FontFile.of(lettering, false).font();
  }

  /** Whether one of the fonts has a letter. */
  static boolean has(int letter) {
    return FontFile.REGULAR.letter(letter).there()
        || Character.getType(letter) != Character.NON_SPACING_MARK
            && FontFile.SIGNS.letter(letter).there();
  }

  /** A line of text by the fonts it is written with; one run for letters of {@link #font} alone. */
  public static List<TextRun> runs(String words, Lettering lettering) {
    List<TextRun> runs = new ArrayList<>();
    int from = 0;
    for (int to = 1; to <= words.length(); to++) {
      boolean sign = isSign(words.charAt(from), lettering);
      if (to == words.length() || sign != isSign(words.charAt(to), lettering)) {
        runs.add(new TextRun(words.substring(from, to), FontFile.of(lettering, sign)));
        from = to;
      }
    }
    return runs;
  }

  private static boolean isSign(char letter, Lettering lettering) {
    return !FontFile.of(lettering, false).letter(letter).there();
  }

  /** Measures of a font that is large enough for whole units to be exact. */
  public static FontMetrics metrics(Font font) {
    return SCRATCH.getFontMetrics(font);
  }

  /** Width of a line of text, mm. */
  public static double widthMm(String words, Lettering lettering) {
    double widthMm = 0;
    for (TextRun run : runs(words, lettering)) {
      widthMm += run.widthMm(lettering);
    }
    return widthMm;
  }

  /** A text in lines no wider than a room, broken at blanks, and inside words that are wider. */
  public static List<String> wrap(String words, Lettering lettering, double roomMm) {
    return wrap(words, lettering, roomMm, 0);
  }

  /** The same, the first line starting so far in, where something else stands, mm. */
  public static List<String> wrap(
      String words, Lettering lettering, double roomMm, double firstInMm) {
    List<String> lines = new ArrayList<>();
    double blankMm = widthMm(" ", lettering);
    StringBuilder line = new StringBuilder();
    double lineMm = 0;
    for (String word : narrow(words, lettering, roomMm - firstInMm).split(" ")) {
      double wordMm = widthMm(word, lettering);
      double room = lines.isEmpty() ? roomMm - firstInMm : roomMm;
      if (line.length() == 0) {
        lineMm = wordMm;
      } else if (lineMm + blankMm + wordMm > room) {
        lines.add(line.toString());
        line.setLength(0);
        lineMm = wordMm;
      } else {
        line.append(' ');
        lineMm += blankMm + wordMm;
      }
      line.append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** Puts blanks into words that are wider than a room. */
  private static String narrow(String words, Lettering lettering, double roomMm) {
    if (widthMm(words, lettering) <= roomMm) {
      return words;
    }
    return Arrays.stream(words.split(" ", -1))
        .map(word -> widthMm(word, lettering) > roomMm ? cut(word, lettering, roomMm) : word)
        .collect(joining(" "));
  }

  private static String cut(String word, Lettering lettering, double roomMm) {
    StringBuilder cut = new StringBuilder();
    String part = "";
    for (int i = 0; i < word.length(); i++) {
      char letter = word.charAt(i);
      if (!part.isEmpty() && widthMm(part + letter, lettering) > roomMm) {
        cut.append(' ');
        part = "";
      }
      part = part + letter;
      cut.append(letter);
    }
    return cut.toString();
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
