package caryatid.sheet.yaml;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Reads a YAML file of any form, as strictly as a trial sheet is read, and leaves its meaning open.
 */
public final class InputValueReader {
  private final Nodes nodes;

  private InputValueReader(String file) {
    this.nodes = new Nodes(file);
  }

  /**
   * Reads a file.
   *
   * @throws BadInput if it is no plain YAML, a key stands twice or a value is missing; each problem
   *     with its line and column
   */
  public static InputValue.Group read(NamedBytes yaml) throws BadInput {
    InputValueReader reader = new InputValueReader(yaml.name());
    InputValue.Group group = reader.group(YamlTree.of(yaml));
    reader.nodes.troubles().raise();
    return group;
  }

  private InputValue.Group group(MappingNode node) {
    Map<String, InputValue> members = new LinkedHashMap<>();
    nodes
        .values(node)
        .forEach((key, value) -> any(key, value.node()).ifPresent(v -> members.put(key, v)));
    return new InputValue.Group(members, nodes.place(node));
  }

  private Optional<InputValue> any(String key, Node node) {
    if (node instanceof MappingNode mapping) {
      return Optional.of(group(mapping));
    }
    if (node instanceof SequenceNode list) {
      List<InputValue> items = new ArrayList<>();
      list.getValue().forEach(item -> any(key, item).ifPresent(items::add));
      return Optional.of(new InputValue.Several(items, nodes.place(node)));
    }
    return nodes.single(key, node, InputValueReader::single);
  }

  private static Optional<InputValue> single(YamlScalar written) {
    InputValue.Kind kind = written.plain() ? InputValue.Kind.ANY : InputValue.Kind.WORDS;
    return Optional.of(new InputValue.Single(written.text(), kind, written.place()));
  }
}
