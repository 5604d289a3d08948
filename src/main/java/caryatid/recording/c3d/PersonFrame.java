package caryatid.recording.c3d;

import caryatid.geometry.Axes;
import caryatid.recording.model.MarkerTrack;
import caryatid.recording.model.PlateLayout.ExportOrigin;
import caryatid.recording.model.PlateLayout.Extent;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UsableMask;
import java.util.List;

/**
 * The person's frame in the laboratory.
 *
 * @param axes how the laboratory's axes lie in it
 * @param zero where the laboratory's zero lies in it
 * @param floorMm the plates' height along up, from the laboratory's zero
 */
record PersonFrame(Axes axes, ExportOrigin zero, double floorMm) {
  ExportOrigin place(LabVector lab) {
    return new ExportOrigin(
        lab.along(axes.right()) + zero.rightMm(), lab.along(axes.anterior()) + zero.anteriorMm());
  }

  /** The smallest rectangle along the person's directions that holds a plate. */
  Extent extent(PlateFrame plate) {
    List<ExportOrigin> corners = plate.corners().stream().map(this::place).toList();
    return new Extent(
        corners.stream().mapToDouble(ExportOrigin::rightMm).min().orElseThrow(),
        corners.stream().mapToDouble(ExportOrigin::rightMm).max().orElseThrow(),
        corners.stream().mapToDouble(ExportOrigin::anteriorMm).min().orElseThrow(),
        corners.stream().mapToDouble(ExportOrigin::anteriorMm).max().orElseThrow());
  }

  MarkerTrack track(LabMarker marker, double rateHz) {
    int frames = marker.axes().get(0).length;
    double[] right = new double[frames];
    double[] anterior = new double[frames];
    double[] up = new double[frames];
    for (int i = marker.seen().nextSetBit(0); i >= 0; i = marker.seen().nextSetBit(i + 1)) {
      LabVector at =
          new LabVector(marker.axes().get(0)[i], marker.axes().get(1)[i], marker.axes().get(2)[i]);
      right[i] = at.along(axes.right()) + zero.rightMm();
      anterior[i] = at.along(axes.anterior()) + zero.anteriorMm();
      up[i] = at.along(axes.up()) - floorMm;
    }
    return new MarkerTrack(
        marker.label(),
        marker.name().side(),
        marker.name().point(),
        rateHz,
        Samples.adopt(right),
        Samples.adopt(anterior),
        Samples.adopt(up),
        new UsableMask(marker.seen(), frames));
  }
}
