package caryatid.recording.c3d;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Decides where the samples are, by the parameters and by the header. Where the two differ, the
 * parameters count if the file is as long as they say, else the header if it is; otherwise the file
 * is refused.
 */
final class DataLayoutFinder {
  /**
   * A count that stands for more than its two bytes can say (c3d.org, "Reading the frame count").
   */
  private static final int FULL = 65535;

  /** How far two ways to write a rate may differ, as a part of it (common practice, no source). */
  private static final double SAME_RATE = 0.001;

  private final C3dBytes bytes;
  private final C3dParameters parameters;
  private StageMessages messages;

  DataLayoutFinder(C3dBytes bytes, C3dParameters parameters, String file) {
    this.bytes = bytes;
    this.parameters = parameters;
    this.messages = StageMessages.none(file);
  }

  StageMessages messages() {
    return messages;
  }

  DataLayout find() throws C3dFault {
    DataLayout header = byHeader();
    DataLayout stated = byParameters(header);
    DataLayout chosen = stated;
    if (!alike(stated, header)) {
      chosen = chosen(stated, header);
    }
    if (!alike(stated, header) || !sameRate(stated, header)) {
      messages = messages.withRemark(RecordingRemark.MOTION_HEADER);
    }
    if (chosen.frames() <= 0 || chosen.perFrame() <= 0 || chosen.channels() <= 0) {
      throw new C3dFault(ImportProblem.MOTION_FILE);
    }
    long there = (bytes.size() - chosen.start()) / Math.max(1, chosen.frameBytes());
    if (chosen.frames() > there) {
      throw new C3dFault(
          ImportProblem.MOTION_CUT, Argument.count(chosen.frames()), Argument.count(there));
    }
    if (spare(chosen) >= chosen.frameBytes() + C3dBytes.BLOCK) {
      messages =
          messages.withRemark(
              RecordingRemark.MOTION_MORE, Argument.count(chosen.frames()), Argument.count(there));
    }
    return chosen;
  }

  private static boolean alike(DataLayout one, DataLayout other) {
    return one.start() == other.start()
        && one.points() == other.points()
        && one.channels() == other.channels()
        && one.perFrame() == other.perFrame()
        && one.real() == other.real();
  }

  /** Rates that are written alike; a header may leave its own out. */
  private static boolean sameRate(DataLayout stated, DataLayout header) {
    return header.frameHz() == 0
        || Math.abs(stated.frameHz() - header.frameHz()) <= SAME_RATE * header.frameHz();
  }

  private DataLayout chosen(DataLayout stated, DataLayout header) throws C3dFault {
    if (snug(stated)) {
      return stated;
    }
    if (snug(header)) {
      return header;
    }
    throw new C3dFault(ImportProblem.MOTION_LAYOUT);
  }

  /** Whether a file is as long as a layout says, but for the rest of its last block. */
  private boolean snug(DataLayout layout) {
    long spare = spare(layout);
    return layout.frames() > 0 && spare >= 0 && spare < 2L * C3dBytes.BLOCK;
  }

  private long spare(DataLayout layout) {
    return bytes.size() - layout.start() - layout.frames() * layout.frameBytes();
  }

  /**
   * The header's first words: points, samples a frame, first and last frame, scale, block, rate.
   */
  private DataLayout byHeader() throws C3dFault {
    int perFrame = bytes.unsigned16(18);
    int all = bytes.unsigned16(4);
    int channels = perFrame > 0 && all % perFrame == 0 ? all / perFrame : 0;
    double rate = bytes.real(20);
    return new DataLayout(
        start(bytes.unsigned16(16)),
        bytes.unsigned16(2),
        channels,
        Math.max(1, perFrame),
        frames(bytes.unsigned16(8) - bytes.unsigned16(6) + 1),
        bytes.real(12) < 0,
        rate > 0 && Double.isFinite(rate) ? rate : 0);
  }

  private DataLayout byParameters(DataLayout header) throws C3dFault {
    double frameHz = positive("POINT:RATE", header.frameHz());
    double analogHz = positive("ANALOG:RATE", frameHz * header.perFrame());
    OptionalDouble scale = parameters.number("POINT:SCALE");
    return new DataLayout(
        start(count("POINT:DATA_START", header.start() / C3dBytes.BLOCK + 1)),
        count("POINT:USED", header.points()),
        count("ANALOG:USED", header.channels()),
        perFrame(analogHz, frameHz, header.perFrame()),
        header.frames(),
        scale.isPresent() ? scale.getAsDouble() < 0 : header.real(),
        frameHz);
  }

  private static int perFrame(double analogHz, double frameHz, int stated) throws C3dFault {
    if (frameHz <= 0) {
      return stated;
    }
    double ratio = analogHz / frameHz;
    long whole = Math.round(ratio);
    if (whole < 1 || whole > FULL || Math.abs(ratio - whole) > 1e-3 * whole) {
      throw C3dFault.damaged("ANALOG:RATE");
    }
    return (int) whole;
  }

  private int start(int block) throws C3dFault {
    long start = (block - 1L) * C3dBytes.BLOCK;
    if (start < C3dBytes.BLOCK || start > bytes.size()) {
      throw C3dFault.damaged("POINT:DATA_START");
    }
    return (int) start;
  }

  private double positive(String name, double otherwise) throws C3dFault {
    OptionalDouble stated = parameters.number(name);
    if (stated.isPresent() && !Double.isFinite(stated.getAsDouble())) {
      throw C3dFault.damaged(name);
    }
    return stated.isPresent() && stated.getAsDouble() > 0 ? stated.getAsDouble() : otherwise;
  }

  private int count(String name, int otherwise) throws C3dFault {
    OptionalDouble stated = parameters.count(name);
    return stated.isPresent() ? whole(name, stated.getAsDouble()) : otherwise;
  }

  private static int whole(String name, double count) throws C3dFault {
    if (!(count >= 0 && count <= Integer.MAX_VALUE) || count != Math.rint(count)) {
      throw C3dFault.damaged(name);
    }
    return (int) count;
  }

  /**
   * How many frames: {@code POINT:FRAMES}, unless that is full or cannot hold the count that stands
   * in {@code TRIAL} or {@code POINT:LONG_FRAMES}; without it the header's.
   */
  private int frames(int header) throws C3dFault {
    int longest = Math.max(trial(), count("POINT:LONG_FRAMES", 0));
    int stated = count("POINT:FRAMES", 0);
    boolean full = stated == FULL || (longest > FULL && longest % (FULL + 1) == stated);
    if (full && longest > FULL) {
      return longest;
    }
    return stated > 0 ? stated : longest > 0 ? longest : header;
  }

  /** The count by the first and the last frame, each in two words, the lower one first. */
  private int trial() throws C3dFault {
    List<Double> first = parameters.numbers("TRIAL:ACTUAL_START_FIELD");
    List<Double> last = parameters.numbers("TRIAL:ACTUAL_END_FIELD");
    if (first.isEmpty() || last.isEmpty()) {
      return 0;
    }
    double frames = words(last) - words(first) + 1;
    return frames >= 1 && frames <= Integer.MAX_VALUE && frames == Math.rint(frames)
        ? (int) frames
        : 0;
  }

  private static double words(List<Double> words) {
    double low = words.get(0) < 0 ? words.get(0) + 65536 : words.get(0);
    double high = words.size() < 2 ? 0 : words.get(1) < 0 ? words.get(1) + 65536 : words.get(1);
    return low + 65536 * high;
  }
}
