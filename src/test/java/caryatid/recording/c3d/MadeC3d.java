package caryatid.recording.c3d;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes C3D files, by the format's description on c3d.org: header, parameters, points and analog
 * samples, for the three processors, as integers or reals. Everything can be overridden to make the
 * faults that files have.
 */
public final class MadeC3d {
  /** Fourth byte of the parameter section. */
  public enum Made {
    INTEL(84),
    DEC(85),
    MIPS(86);

    private final int number;

    Made(int number) {
      this.number = number;
    }
  }

  private record Parameter(int type, int[] dimensions, double[] numbers, String text) {}

  private final Made processor;
  private final boolean real;
  private final Map<String, List<Parameter>> parameters = new LinkedHashMap<>();
  private final List<double[][]> frames = new ArrayList<>();
  private final List<double[][]> samples = new ArrayList<>();
  private double[] scale = {};
  private double[] offset = {};
  private double general = 1;
  private boolean unsigned;
  private int channels;
  private int perFrame;
  private int points;

  /** What the header says in place of the truth, by its word's place in bytes. */
  public final Map<Integer, Integer> header = new LinkedHashMap<>();

  public MadeC3d(Made processor, boolean real) {
    this.processor = processor;
    this.real = real;
  }

  public MadeC3d numbers(String name, int type, int[] dimensions, double... values) {
    add(name, new Parameter(type, dimensions, values, ""));
    return this;
  }

  public MadeC3d integers(String name, double... values) {
    return numbers(name, 2, values.length == 1 ? new int[0] : new int[] {values.length}, values);
  }

  public MadeC3d reals(String name, double... values) {
    return numbers(name, 4, values.length == 1 ? new int[0] : new int[] {values.length}, values);
  }

  public MadeC3d texts(String name, String... texts) {
    int width = Arrays.stream(texts).mapToInt(String::length).max().orElse(0);
    StringBuilder all = new StringBuilder();
    for (String text : texts) {
      all.append(text).append(" ".repeat(width - text.length()));
    }
    add(name, new Parameter(-1, new int[] {width, texts.length}, new double[0], all.toString()));
    return this;
  }

  private void add(String name, Parameter parameter) {
    parameters.computeIfAbsent(name, n -> new ArrayList<>()).add(parameter);
  }

  public MadeC3d without(String name) {
    parameters.remove(name);
    return this;
  }

  /** How channels are kept: raw = value / scale / general + offset. */
  public MadeC3d scaling(double[] scale, double[] offset, double general, boolean unsigned) {
    this.scale = scale.clone();
    this.offset = offset.clone();
    this.general = general;
    this.unsigned = unsigned;
    return this;
  }

  /**
   * The data.
   *
   * @param markers for each frame, for each point, x, y, z and residual
   * @param analog for each sample, one value a channel
   */
  public MadeC3d data(List<double[][]> markers, List<double[]> analog, int perFrame) {
    this.perFrame = perFrame;
    this.channels = analog.get(0).length;
    this.points = markers.get(0).length;
    for (int frame = 0; frame < markers.size(); frame++) {
      frames.add(markers.get(frame));
      samples.add(
          analog.subList(frame * perFrame, (frame + 1) * perFrame).toArray(new double[0][]));
    }
    return this;
  }

  /** The file. */
  public byte[] bytes() {
    byte[] section = parameterSection(2);
    int blocks = section.length / 512;
    int dataBlock = 2 + blocks;
    List<Parameter> starts = parameters.get("POINT:DATA_START");
    if (starts == null) {
      integers("POINT:DATA_START", dataBlock);
      section = parameterSection(2);
      dataBlock = 2 + section.length / 512;
      parameters.remove("POINT:DATA_START");
      integers("POINT:DATA_START", dataBlock);
      section = parameterSection(2);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(header(dataBlock));
    out.writeBytes(section);
    for (int frame = 0; frame < frames.size(); frame++) {
      writePoints(out, frames.get(frame));
      for (double[] sample : samples.get(frame)) {
        writeSample(out, sample);
      }
    }
    while (out.size() % 512 != 0) {
      out.write(0);
    }
    return out.toByteArray();
  }

  private byte[] header(int dataBlock) {
    byte[] header = new byte[512];
    header[0] = 2;
    header[1] = 0x50;
    word(header, 2, points);
    word(header, 4, channels * perFrame);
    word(header, 6, 1);
    word(header, 8, Math.min(65535, frames.size()));
    real(header, 12, pointScale());
    word(header, 16, dataBlock);
    word(header, 18, perFrame);
    real(header, 20, frameHz());
    this.header.forEach((at, value) -> word(header, at, value));
    return header;
  }

  private double pointScale() {
    return first("POINT:SCALE", real ? -1 : 0.1);
  }

  private double frameHz() {
    return first("POINT:RATE", 100);
  }

  private double first(String name, double otherwise) {
    List<Parameter> found = parameters.get(name);
    return found == null ? otherwise : found.get(0).numbers[0];
  }

  private void writePoints(ByteArrayOutputStream out, double[][] markers) {
    for (double[] marker : markers) {
      for (int i = 0; i < 4; i++) {
        double value = real || i == 3 ? marker[i] : Math.rint(marker[i] / pointScale());
        write(out, value);
      }
    }
  }

  private void writeSample(ByteArrayOutputStream out, double[] sample) {
    for (int i = 0; i < sample.length; i++) {
      double raw = sample[i] / (scale[i] * general) + offset[i];
      write(out, real ? raw : Math.rint(raw));
    }
  }

  private void write(ByteArrayOutputStream out, double value) {
    byte[] bytes = new byte[real ? 4 : 2];
    if (real) {
      real(bytes, 0, value);
    } else {
      double least = unsigned ? 0 : -32768;
      if (value < Math.min(-1, least) || value > (unsigned ? 65535 : 32767)) {
        throw new IllegalArgumentException("no integer: " + value);
      }
      word(bytes, 0, (int) value);
    }
    out.writeBytes(bytes);
  }

  private byte[] parameterSection(int fromBlock) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {1, 0x50, 0, (byte) processor.number});
    Map<String, Integer> groups = new LinkedHashMap<>();
    parameters.forEach((name, all) -> all.forEach(p -> writeParameter(out, groups, name, p)));
    // Groups stand behind their parameters, which the format allows.
    groups.forEach(
        (name, number) -> {
          out.write(name.length());
          out.write(-number);
          out.writeBytes(name.getBytes(ISO_8859_1));
          word(out, 3);
          out.write(0);
        });
    out.write(0);
    out.write(0);
    while (out.size() % 512 != 0) {
      out.write(0);
    }
    byte[] section = out.toByteArray();
    section[2] = (byte) (section.length / 512);
    if (fromBlock != 2) {
      throw new IllegalStateException();
    }
    return section;
  }

  private void writeParameter(
      ByteArrayOutputStream out, Map<String, Integer> groups, String name, Parameter parameter) {
    String group = name.substring(0, name.indexOf(':'));
    String own = name.substring(name.indexOf(':') + 1);
    int number = groups.computeIfAbsent(group, g -> groups.size() + 1);
    byte[] data = data(parameter);
    out.write(own.length());
    out.write(number);
    out.writeBytes(own.getBytes(ISO_8859_1));
    word(out, 2 + 2 + parameter.dimensions.length + data.length + 1);
    out.write(parameter.type);
    out.write(parameter.dimensions.length);
    for (int dimension : parameter.dimensions) {
      out.write(dimension);
    }
    out.writeBytes(data);
    out.write(0);
  }

  private byte[] data(Parameter parameter) {
    if (parameter.type == -1) {
      return parameter.text.getBytes(ISO_8859_1);
    }
    byte[] data = new byte[parameter.numbers.length * parameter.type];
    for (int i = 0; i < parameter.numbers.length; i++) {
      double value = parameter.numbers[i];
      switch (parameter.type) {
        case 1 -> data[i] = (byte) value;
        case 2 -> word(data, 2 * i, (int) value);
        default -> real(data, 4 * i, value);
      }
    }
    return data;
  }

  private void word(ByteArrayOutputStream out, int value) {
    byte[] bytes = new byte[2];
    word(bytes, 0, value);
    out.writeBytes(bytes);
  }

  private void word(byte[] bytes, int at, int value) {
    boolean big = processor == Made.MIPS;
    bytes[at] = (byte) (big ? value >> 8 : value);
    bytes[at + 1] = (byte) (big ? value : value >> 8);
  }

  /** A real number; in DEC's format it is four times the same IEEE bits, its words swapped. */
  private void real(byte[] bytes, int at, double value) {
    float kept = (float) (processor == Made.DEC ? value * 4 : value);
    int bits = Float.floatToIntBits(kept);
    if (processor == Made.INTEL) {
      word(bytes, at, bits & 0xffff);
      word(bytes, at + 2, bits >>> 16);
    } else {
      word(bytes, at, bits >>> 16);
      word(bytes, at + 2, bits & 0xffff);
    }
  }
}
