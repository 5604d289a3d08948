package caryatid.loadline;

import caryatid.remark.Remark;
import java.util.List;

/**
 * Where the load lines of one stand run.
 *
 * @param offsets of every line past every landmark, in the planes where it was marked; of this
 *     stand, without what differs from stand to stand
 * @param moments about knees and ankles where force was recorded
 * @param remarks what doubts them
 */
public record LoadLineResult(List<Offset> offsets, List<Moment> moments, List<Remark> remarks) {
  public LoadLineResult {
    offsets = List.copyOf(offsets);
    moments = List.copyOf(moments);
    remarks = List.copyOf(remarks);
  }
}
