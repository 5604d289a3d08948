package caryatid.chart.mark;

import java.util.List;
import java.util.Optional;

/**
 * A planned drawing: its marks and their places in millimetres on paper, before anything paints it.
 *
 * @param name short and unique within a report, for files: letters, digits, hyphens
 * @param widthMm width, mm
 * @param heightMm height, mm
 * @param alternative what the drawing says, for who cannot see it
 * @param parts from back to front, which is also the order in which they are read
 */
public record Drawing(
    String name, double widthMm, double heightMm, String alternative, List<Part> parts) {
  public Drawing {
    parts = List.copyOf(parts);
  }

  /**
   * Marks that mean one thing together.
   *
   * @param says what they mean, with the numbers; empty for mere background
   * @param marks from back to front
   */
  public record Part(Optional<String> says, List<Mark> marks) {
    public Part {
      marks = List.copyOf(marks);
    }

    public static Part saying(String says, List<? extends Mark> marks) {
      return new Part(Optional.of(says), List.copyOf(marks));
    }

    public static Part background(List<? extends Mark> marks) {
      return new Part(Optional.empty(), List.copyOf(marks));
    }
  }

  /** The drawing's paper. */
  public Box paper() {
    return new Box(0, 0, widthMm, heightMm);
  }

  /** All texts. */
  public List<Mark.Text> texts() {
    return parts.stream()
        .flatMap(part -> part.marks().stream())
        .filter(Mark.Text.class::isInstance)
        .map(Mark.Text.class::cast)
        .toList();
  }
}
