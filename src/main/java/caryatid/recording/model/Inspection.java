package caryatid.recording.model;

import caryatid.remark.Problem;
import caryatid.remark.Remark;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was understood of an export, what is open, and what is wrong with it.
 *
 * @param understood what was understood and from where, in the order of reading
 * @param questions what neither the file nor the description states; each says the line to add
 * @param problems what is wrong with the file or contradicts the description
 * @param remarks as a result on this recording would carry them
 * @param plates the plates that carry somebody
 * @param rateHz sampling rate, Hz, where it is known
 * @param draft a description of all that is known
 * @param sampled what was read; empty while there are questions or problems
 */
public record Inspection(
    List<UnderstoodFact> understood,
    List<Problem> questions,
    List<Problem> problems,
    List<Remark> remarks,
    List<PlateView> plates,
    OptionalDouble rateHz,
    PlateDescription draft,
    Optional<Sampled> sampled) {
  public Inspection {
    understood = List.copyOf(understood);
    questions = List.copyOf(questions);
    problems = List.copyOf(problems);
    remarks = List.copyOf(remarks);
    plates = List.copyOf(plates);
  }

  /** Whether the recording can be used as it is. */
  public boolean complete() {
    return questions.isEmpty() && problems.isEmpty();
  }

  /**
   * How a plate was loaded.
   *
   * @param plate its name
   * @param vertical mean vertical force in each of up to 60 equal pieces of the recording, positive
   *     when loaded, in the export's unit of force
   * @param unit that unit, where it is known
   * @param loaded the stretches in which it carried somebody
   * @param massKg mean force over these stretches as the mass it would weigh, kg, at standard
   *     gravity; empty where the unit is unknown
   */
  public record PlateView(
      String plate,
      List<Double> vertical,
      Optional<ForceUnit> unit,
      List<Loaded> loaded,
      OptionalDouble massKg) {
    public PlateView {
      vertical = List.copyOf(vertical);
      loaded = List.copyOf(loaded);
    }
  }

  /**
   * A stretch in which a plate is loaded.
   *
   * @param fromRow first row of the table, from 1
   * @param toRow last row
   */
  public record Loaded(int fromRow, int toRow) {}
}
