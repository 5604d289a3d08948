package caryatid.recording.c3d;

import caryatid.recording.model.ImportProblem;
import caryatid.remark.Argument;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The parameters of a file by group and name, {@code POINT:RATE}. */
final class C3dParameters {
  private final C3dBytes bytes;
  private final Map<String, C3dParameter> byName;
  private final Set<String> twice;

  /**
   * @param twice the names that stand there more than once, with different values
   */
  C3dParameters(C3dBytes bytes, Map<String, C3dParameter> byName, Set<String> twice) {
    this.bytes = bytes;
    this.byName = Map.copyOf(byName);
    this.twice = Set.copyOf(twice);
  }

  private Optional<C3dParameter> find(String name) throws C3dFault {
    if (twice.contains(name)) {
      throw new C3dFault(ImportProblem.MOTION_TWICE, Argument.text(name));
    }
    return Optional.ofNullable(byName.get(name));
  }

  /** The numbers of a parameter; none where it is missing or text. */
  List<Double> numbers(String name) throws C3dFault {
    Optional<C3dParameter> found = find(name).filter(p -> p.type() > 0);
    List<Double> numbers = new ArrayList<>();
    if (found.isPresent()) {
      C3dParameter parameter = found.get();
      for (int i = 0; i < parameter.count(); i++) {
        numbers.add(number(parameter, parameter.at() + i * parameter.width()));
      }
    }
    return numbers;
  }

  private double number(C3dParameter parameter, int at) throws C3dFault {
    return switch (parameter.type()) {
      case 1 -> bytes.unsigned8(at);
      case 2 -> bytes.signed16(at);
      default -> bytes.real(at);
    };
  }

  /** The first number of a parameter. */
  OptionalDouble number(String name) throws C3dFault {
    List<Double> numbers = numbers(name);
    return numbers.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(numbers.get(0));
  }

  /** A count: integers are written without a sign, whatever the format says. */
  OptionalDouble count(String name) throws C3dFault {
    OptionalDouble number = number(name);
    boolean integer = find(name).filter(p -> p.type() == 2).isPresent();
    return number.isPresent() && integer && number.getAsDouble() < 0
        ? OptionalDouble.of(number.getAsDouble() + 65536)
        : number;
  }

  /** The texts of a parameter; none where it is missing or holds numbers. */
  List<String> texts(String name) throws C3dFault {
    Optional<C3dParameter> found = find(name).filter(p -> p.type() == -1);
    List<String> texts = new ArrayList<>();
    if (found.isPresent()) {
      C3dParameter parameter = found.get();
      int length = parameter.dimensions().isEmpty() ? 1 : parameter.dimensions().get(0);
      for (int i = 0; length > 0 && i + length <= parameter.count(); i += length) {
        texts.add(bytes.text(parameter.at() + i, length));
      }
    }
    return texts;
  }

  /** A list of numbers that goes on in {@code NAME2} and so on beyond 255. */
  List<Double> longNumbers(String name) throws C3dFault {
    List<Double> all = new ArrayList<>(numbers(name));
    for (String next : sequels(name)) {
      all.addAll(numbers(next));
    }
    return all;
  }

  /** A list of texts that goes on likewise. */
  List<String> longTexts(String name) throws C3dFault {
    List<String> all = new ArrayList<>(texts(name));
    for (String next : sequels(name)) {
      all.addAll(texts(next));
    }
    return all;
  }

  private List<String> sequels(String name) {
    List<String> sequels = new ArrayList<>();
    for (int i = 2; byName.containsKey(name + i); i++) {
      sequels.add(name + i);
    }
    return sequels;
  }

  /** The dimensions of a parameter; none where it is missing. */
  List<Integer> dimensions(String name) throws C3dFault {
    return find(name).map(C3dParameter::dimensions).orElse(List.of());
  }

  /** Collects parameters while their groups' names are not all known yet. */
  static final class Collected {
    private record Located(int group, String name, C3dParameter parameter) {}

    private final C3dBytes bytes;
    private final Map<Integer, String> groups = new HashMap<>();
    private final List<Located> entries = new ArrayList<>();

    Collected(C3dBytes bytes) {
      this.bytes = bytes;
    }

    void group(int number, String name) {
      groups.putIfAbsent(number, name);
    }

    void parameter(int group, String name, C3dParameter parameter) {
      entries.add(new Located(group, name, parameter));
    }

    C3dParameters named() throws C3dFault {
      Map<String, C3dParameter> byName = new HashMap<>();
      Set<String> twice = new HashSet<>();
      for (Located entry : entries) {
        String name =
            (groups.getOrDefault(entry.group, "") + ":" + entry.name).toUpperCase(Locale.ROOT);
        C3dParameter before = byName.putIfAbsent(name, entry.parameter);
        if (before != null && !before.same(entry.parameter, bytes)) {
          twice.add(name);
        }
      }
      return new C3dParameters(bytes, byName, twice);
    }
  }
}
