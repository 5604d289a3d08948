package caryatid.standing;

import caryatid.geometry.Side;
import caryatid.remark.Remark;
import caryatid.uncertainty.Estimate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one recording says about one stand.
 *
 * @param stretch the part used
 * @param rateHz sampling rate, Hz
 * @param loads the mean loads that are known: of each measured foot, and of the whole body where
 *     both feet were measured
 * @param sway of each of them, unfiltered and then, where the rate allows it, low-passed
 * @param placements where the whole body's sway lies among other people's, where that compares
 * @param share what fraction of the whole load a side bears, 0 to 1, where it can be known
 * @param remarks on quality
 */
public record Standing(
    QuietStretch stretch,
    double rateHz,
    List<MeanLoad> loads,
    List<Sway> sway,
    List<PercentileRank> placements,
    Map<Side, Estimate> share,
    List<Remark> remarks) {
  public Standing {
    loads = List.copyOf(loads);
    sway = List.copyOf(sway);
    placements = List.copyOf(placements);
    share = Map.copyOf(share);
    remarks = List.copyOf(remarks);
  }

  /** The mean load of a foot or of the whole body, where it is known. */
  public Optional<MeanLoad> load(LoadLineOwner of) {
    return loads.stream().filter(l -> l.of() == of).findFirst();
  }
}
