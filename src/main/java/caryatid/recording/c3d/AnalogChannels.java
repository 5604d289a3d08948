package caryatid.recording.c3d;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The channels in the units the file states: (raw - {@code OFFSET}) times {@code SCALE} times
 * {@code GEN_SCALE} (c3d.org, "The ANALOG group").
 */
final class AnalogChannels {
  private final C3dFile file;
  private final List<Double> scale;
  private final List<Double> offset;
  private final List<String> units;
  private final double general;
  private final boolean unsigned;

  AnalogChannels(C3dFile file) throws C3dFault {
    this.file = file;
    C3dParameters parameters = file.parameters();
    this.scale = parameters.longNumbers("ANALOG:SCALE");
    this.offset = parameters.longNumbers("ANALOG:OFFSET");
    this.units = parameters.longTexts("ANALOG:UNITS");
    this.general =
        parameters
            .number("ANALOG:GEN_SCALE")
            .orElseThrow(() -> C3dFault.damaged("ANALOG:GEN_SCALE"));
    this.unsigned =
        parameters.texts("ANALOG:FORMAT").stream()
            .findFirst()
            .map(text -> text.toUpperCase(Locale.ROOT).startsWith("UNSIGNED"))
            .orElse(false);
  }

  /** Whether a channel, counted from 1, is there. */
  boolean has(int number) {
    return number >= 1 && number <= file.layout().channels();
  }

  /** The unit of a channel, counted from 1; empty where the file does not say. */
  Optional<String> unit(int number) {
    return number <= units.size()
        ? Optional.of(units.get(number - 1)).filter(text -> !text.isEmpty())
        : Optional.empty();
  }

  /**
   * The samples of a channel, counted from 1; not finite where the file holds no number.
   *
   * @throws C3dFault if it has no scale or offset
   */
  double[] values(int number) throws C3dFault {
    double factor = listed(scale, number, "ANALOG:SCALE") * general;
    double zero = listed(offset, number, "ANALOG:OFFSET");
    double zeroAt = unsigned && zero < 0 ? zero + 65536 : zero;
    if (!Double.isFinite(factor) || factor == 0) {
      throw C3dFault.damaged("ANALOG:SCALE");
    }
    double[] values = new double[file.layout().samples()];
    for (int i = 0; i < values.length; i++) {
      values[i] = (raw(i, number - 1) - zeroAt) * factor;
    }
    return values;
  }

  private static double listed(List<Double> list, int number, String name) throws C3dFault {
    if (number > list.size()) {
      throw C3dFault.damaged(name);
    }
    return list.get(number - 1);
  }

  private double raw(int sample, int channel) throws C3dFault {
    int at = file.layout().sample(sample, channel);
    if (file.layout().real()) {
      return file.bytes().real(at);
    }
    return unsigned ? file.bytes().unsigned16(at) : file.bytes().signed16(at);
  }
}
