package caryatid.exchange;

import caryatid.format.Json;
import caryatid.sheet.yaml.InputValue;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Finds its way in resources that were read. */
final class FhirTree {
  private FhirTree() {}

  /**
   * A resource of a type.
   *
   * @throws IOException if the bytes are none
   */
  static InputValue read(byte[] json, String type) throws IOException {
    InputValue read = Json.read(json, type);
    if (!text(read, "resourceType").equals(Optional.of(type))) {
      throw new IOException("no " + type);
    }
    return read;
  }

  /** What lies at the end of a way of names. */
  static Optional<InputValue> at(InputValue from, String... names) {
    Optional<InputValue> here = Optional.of(from);
    for (String name : names) {
      here =
          here.filter(InputValue.Group.class::isInstance)
              .map(group -> ((InputValue.Group) group).members().get(name));
    }
    return here;
  }

  static Optional<String> text(InputValue from, String... names) {
    return at(from, names)
        .filter(InputValue.Single.class::isInstance)
        .map(single -> ((InputValue.Single) single).text());
  }

  static List<InputValue> items(InputValue from, String name) {
    return at(from, name)
        .filter(InputValue.Several.class::isInstance)
        .map(several -> ((InputValue.Several) several).items())
        .orElse(List.of());
  }
}
