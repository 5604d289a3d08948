package caryatid.recording.c3d;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateLayout.ExportOrigin;
import caryatid.recording.model.PlateLayout.Extent;
import caryatid.recording.model.PlateLayout.TrueOrigin;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * What a description states beside a file that states most of it itself: which plates, under which
 * names, from which zero. Where both state a place, they must agree.
 */
final class DescribedMotion {
  /** A place that is rounded or measured may differ by so much (common practice, no source). */
  private static final double SAME_PLACE_MM = 2;

  private static final Pattern COLUMN = Pattern.compile("(?:F|M|COP)[xyz] (\\d+)(?: \\(.*\\))?");
  private static final Pattern NAME = Pattern.compile("plate (\\d+)");

  private final Optional<PlateDescription> stated;

  DescribedMotion(Optional<PlateDescription> stated) {
    this.stated = stated;
  }

  private List<PlateLayout> plates() {
    return stated.map(PlateDescription::plates).orElse(List.of());
  }

  /** The numbers of the plates to read: those described, else all. */
  List<Integer> numbers(int all) throws C3dFault {
    List<Integer> numbers = new ArrayList<>();
    for (PlateLayout plate : plates()) {
      int number = number(plate).filter(n -> n >= 1 && n <= all).orElse(0);
      if (number == 0 || numbers.contains(number)) {
        throw new C3dFault(
            ImportProblem.MOTION_WHICH_PLATE, Argument.text(plate.name()), Argument.count(all));
      }
      numbers.add(number);
    }
    return numbers.isEmpty() ? IntStream.rangeClosed(1, all).boxed().toList() : numbers;
  }

  /** The plate of the file that a description means: by a column of it, else by its name. */
  private static Optional<Integer> number(PlateLayout plate) {
    for (String column : plate.columns().values()) {
      Matcher matcher = COLUMN.matcher(column);
      if (matcher.matches() && matcher.group(1).length() < 4) {
        return Optional.of(Integer.valueOf(matcher.group(1)));
      }
    }
    Matcher name = NAME.matcher(plate.name());
    return name.matches() && name.group(1).length() < 4
        ? Optional.of(Integer.valueOf(name.group(1)))
        : Optional.empty();
  }

  /** What is stated of a plate of the file. */
  Optional<PlateLayout> of(int number) {
    return plates().stream().filter(p -> number(p).equals(Optional.of(number))).findFirst();
  }

  /**
   * Where the laboratory's zero lies in the person's frame: as the stated zeros of the plates have
   * it, else at the person's zero.
   *
   * @param unshifted the person's frame with both zeros at one place
   */
  ExportOrigin zero(List<PlateSpec> plates, PersonFrame unshifted) throws C3dFault {
    Optional<ExportOrigin> zero = Optional.empty();
    for (PlateSpec plate : plates) {
      Optional<ExportOrigin> described = of(plate.number()).flatMap(PlateLayout::exportOrigin);
      if (described.isPresent()) {
        ExportOrigin measured = unshifted.place(plate.frame().centre());
        ExportOrigin shift =
            new ExportOrigin(
                described.get().rightMm() - measured.rightMm(),
                described.get().anteriorMm() - measured.anteriorMm());
        requireSame(plate, zero.orElse(shift).rightMm() - shift.rightMm());
        requireSame(plate, zero.orElse(shift).anteriorMm() - shift.anteriorMm());
        zero = Optional.of(zero.orElse(shift));
      }
    }
    return zero.orElse(new ExportOrigin(0, 0));
  }

  /** That edges and a zero-moment point that are stated are those of the file. */
  void requireAgreement(PlateSpec plate, PlateLayout file) throws C3dFault {
    Optional<PlateLayout> described = of(plate.number());
    Optional<Extent> size = described.flatMap(PlateLayout::size);
    if (size.isPresent() && file.size().isPresent()) {
      Extent one = size.get();
      Extent other = file.size().get();
      requireSame(plate, one.leftMm() - other.leftMm());
      requireSame(plate, one.rightMm() - other.rightMm());
      requireSame(plate, one.rearMm() - other.rearMm());
      requireSame(plate, one.frontMm() - other.frontMm());
    }
    Optional<TrueOrigin> origin = described.flatMap(PlateLayout::trueOrigin);
    if (origin.isPresent() && file.trueOrigin().isPresent()) {
      requireSame(plate, origin.get().xMm() - file.trueOrigin().get().xMm());
      requireSame(plate, origin.get().yMm() - file.trueOrigin().get().yMm());
      requireSame(plate, origin.get().zMm() - file.trueOrigin().get().zMm());
    }
  }

  private static void requireSame(PlateSpec plate, double apartMm) throws C3dFault {
    if (!(Math.abs(apartMm) <= SAME_PLACE_MM)) {
      throw new C3dFault(
          ImportProblem.MOTION_PLACE,
          Argument.text(PlateSpec.name(plate.number())),
          Argument.of(Math.abs(apartMm), Unit.MM));
    }
  }
}
