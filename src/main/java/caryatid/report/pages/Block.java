package caryatid.report.pages;

import caryatid.chart.mark.Drawing;
import java.util.List;
import java.util.Optional;

/**
 * A piece of a report, as words and drawings; pages of every kind are made from the same pieces.
 */
public sealed interface Block {

  /** The report's title; one a report. */
  record Title(String words) implements Block {}

  /** What a part is about. */
  record Heading(String words) implements Block {}

  /** Running text. */
  record Prose(String words, boolean strong) implements Block {}

  /**
   * Points of a list, one below the other.
   *
   * @param columns in how many columns, the first one filled first
   */
  record Points(int columns, List<Bullet> points) implements Block {
    public Points {
      points = List.copyOf(points);
    }

    public Points(List<Bullet> points) {
      this(1, points);
    }
  }

  /**
   * One point.
   *
   * @param lead set in strong letters before the words; may be empty
   */
  record Bullet(String lead, String words) {}

  /** Short facts, label and value, in columns. */
  record Facts(int columns, List<Fact> facts) implements Block {
    public Facts {
      facts = List.copyOf(facts);
    }

    public Facts(List<Fact> facts) {
      this(2, facts);
    }
  }

  /** A label and its value. */
  record Fact(String label, String value) {}

  /** A table; each row has a cell for each column. What stands in a cell may be in lines. */
  record Table(List<TableColumn> columns, List<List<String>> rows) implements Block {
    public Table {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /**
   * A column of a table.
   *
   * @param parts of the table's width, in parts of all columns' sum
   * @param numbers whether it holds numbers, set flush right
   * @param strong whether it is the most important column of the table
   */
  record TableColumn(String heading, double parts, boolean numbers, boolean strong) {
    public TableColumn(String heading, double parts, boolean numbers) {
      this(heading, parts, numbers, false);
    }
  }

  /**
   * Drawings side by side, planned for the room there is.
   *
   * @param leastMm least height, mm
   * @param mostMm largest height, mm
   */
  record Figures(Picture plan, double leastMm, double mostMm) implements Block {
    /** The height with a share, 0 to 1, of the way from the least to the largest, mm. */
    public double heightMm(double share) {
      return leastMm + share * (mostMm - leastMm);
    }
  }

  /** Plans drawings for a room. */
  @FunctionalInterface
  interface Picture {
    /**
     * @param widthMm of all drawings together
     * @param heightMm of each
     */
    List<Drawing> at(double widthMm, double heightMm);
  }

  /**
   * A photograph.
   *
   * @param caption stands below it, and says what it is where it cannot be seen
   * @param jpegOrPng its bytes
   */
  record Photograph(String caption, byte[] jpegOrPng) implements Block {
    public Photograph {
      jpegOrPng = jpegOrPng.clone();
    }

    @Override
    public byte[] jpegOrPng() {
      return jpegOrPng.clone();
    }
  }

  /** Lines to fill in by hand, where the sheet has not filled them in. */
  record Blanks(int columns, List<Blank> blanks) implements Block {
    public Blanks {
      blanks = List.copyOf(blanks);
    }
  }

  /** A line: what goes there, and what the sheet says. */
  record Blank(String label, Optional<String> filled) {}
}
