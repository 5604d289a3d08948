package caryatid.chart.mark;

import java.util.List;

/**
 * The one visual language of all drawings. Each meaning has its own shape (solid, dashed, hatched,
 * ringed), so that colour only repeats what shape says; lightness alone keeps the parts apart in
 * grey print.
 */
public final class Style {
  /** Millimetres in a printer's point of 1/72 inch. */
  public static final double MM_PER_POINT = 25.4 / 72;

  private Style() {}

  /** Colours, as red, green and blue of sRGB in 24 bits. */
  public enum Ink {
    BLACK(0x000000),
    /** Load line. */
    BLUE(0x0b3d78),
    /** Interval of the load line. */
    PALE_BLUE(0xcfdff0),
    /** Targets. */
    BROWN(0x8a4b08),
    /** Second opinion, leaders, ticks. */
    GREY(0x666666),
    /** Outline of the body. */
    PALE_GREY(0xb8b8b8),
    /** Inside of the body. */
    MIST(0xf3f3f3),
    WHITE(0xffffff);

    private final int rgb;

    Ink(int rgb) {
      this.rgb = rgb;
    }

    /** The colour: red, green and blue, eight bits each. */
    public int rgb() {
      return rgb;
    }
  }

  /** Lines; each has its own width or dashes. */
  public enum Pen {
    LOAD_LINE(Ink.BLUE, 0.45),
    /** The load line through the strips. */
    MAIN_LINE(Ink.BLUE, 0.7),
    /** Another load line than the leg's. */
    OTHER_LINE(Ink.BLUE, 0.4, 2.4, 0.8, 0.5, 0.8),
    /** Where the load line ran before. */
    EARLIER(Ink.BLACK, 0.3),
    AXIS(Ink.BLACK, 0.2),
    INTERVAL_EDGE(Ink.BLUE, 0.12),
    MEASURED_FORCE(Ink.GREY, 0.3, 1.4, 1.0),
    TARGET(Ink.BROWN, 0.3),
    HATCH(Ink.BROWN, 0.15),
    LANDMARK(Ink.BLACK, 0.25),
    DIMENSION(Ink.BLACK, 0.18),
    LEADER(Ink.GREY, 0.1),
    ELLIPSE(Ink.BLACK, 0.2, 0.7, 0.5),
    TICK(Ink.GREY, 0.15),
    FLOOR(Ink.BLACK, 0.5),
    BODY(Ink.PALE_GREY, 0.2),
    TRACE(Ink.BLUE, 0.12),
    SECOND_TRACE(Ink.BLACK, 0.15, 0.7, 0.35),
    LEFT_OUT(Ink.PALE_GREY, 0.15);

    private final Ink ink;
    private final double widthMm;

    private final List<Double> dashesMm;

    Pen(Ink ink, double widthMm, Double... dashesMm) {
      this.ink = ink;
      this.widthMm = widthMm;
      this.dashesMm = List.of(dashesMm);
    }

    public Ink ink() {
      return ink;
    }

    public double widthMm() {
      return widthMm;
    }

    /** Lengths of dash and gap in turn, mm; empty for a solid line. */
    public List<Double> dashesMm() {
      return dashesMm;
    }
  }

  /** Kinds of text; none is smaller than 8 points. */
  public enum Lettering {
    HEADLINE(14, true),
    HEADING(9.5, true),
    TITLE(9, true),
    STRONG(8, true),
    PLAIN(8, false);

    private static final double ASCENT = 0.905;
    private static final double DESCENT = 0.212;
    private static final double LINE = 1.16;

    private final double points;
    private final boolean bold;

    Lettering(double points, boolean bold) {
      this.points = points;
      this.bold = bold;
    }

    public double points() {
      return points;
    }

    public boolean bold() {
      return bold;
    }

    /** Height above the base line, mm; proportions of Liberation Sans. */
    public double ascentMm() {
      return ASCENT * points * MM_PER_POINT;
    }

    /** Depth below the base line, mm. */
    public double descentMm() {
      return DESCENT * points * MM_PER_POINT;
    }

    /** From one line's base to the next, mm. */
    public double lineMm() {
      return LINE * points * MM_PER_POINT;
    }
  }
}
