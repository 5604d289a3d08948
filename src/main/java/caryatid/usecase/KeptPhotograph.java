package caryatid.usecase;

import caryatid.entry.KeptFile.Role;
import caryatid.fitting.Addition.Attached;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.report.picture.PhotographProblem;
import caryatid.report.picture.Photographs;
import java.util.List;
import java.util.Optional;

/** What an entry keeps of a photograph: the picture alone, and its original where that is meant. */
public final class KeptPhotograph {
  private KeptPhotograph() {}

  /** What becomes of a photograph's own file, which may tell place, time and serial number. */
  public enum Original {
    KEEP,
    DROP
  }

  /**
   * The files to keep.
   *
   * @throws BadInput if it is no photograph, or nobody said what becomes of the original
   */
  public static List<Attached> files(NamedBytes photograph, Optional<Original> original)
      throws BadInput {
    if (original.isEmpty()) {
      Place place = Place.of(photograph.name());
      throw new BadInput(Problem.at(place, PhotographProblem.ORIGINAL));
    }
    Attached plain = new Attached(Role.PHOTOGRAPH, Photographs.plain(photograph));
    return original.get() == Original.KEEP
        ? List.of(plain, new Attached(Role.OTHER, photograph))
        : List.of(plain);
  }
}
