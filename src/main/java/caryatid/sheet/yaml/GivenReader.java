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
public final class GivenReader {
  private final Nodes nodes;

  private GivenReader(String file) {
    this.nodes = new Nodes(file);
  }

  /**
   * Reads a file.
   *
   * @throws BadInput if it is no plain YAML, a key stands twice or a value is missing; each problem
   *     with its line and column
   */
  public static Given.Group read(NamedBytes yaml) throws BadInput {
    GivenReader reader = new GivenReader(yaml.name());
    Given.Group group = reader.group(YamlTree.of(yaml));
    reader.nodes.troubles().raise();
    return group;
  }

  private Given.Group group(MappingNode node) {
    Map<String, Given> members = new LinkedHashMap<>();
    nodes
        .values(node)
        .forEach((key, value) -> any(key, value.node()).ifPresent(v -> members.put(key, v)));
    return new Given.Group(members, nodes.place(node));
  }

  private Optional<Given> any(String key, Node node) {
    if (node instanceof MappingNode mapping) {
      return Optional.of(group(mapping));
    }
    if (node instanceof SequenceNode list) {
      List<Given> items = new ArrayList<>();
      list.getValue().forEach(item -> any(key, item).ifPresent(items::add));
      return Optional.of(new Given.Several(items, nodes.place(node)));
    }
    return nodes.single(key, node, GivenReader::single);
  }

  private static Optional<Given> single(Written written) {
    Given.Kind kind = written.plain() ? Given.Kind.ANY : Given.Kind.WORDS;
    return Optional.of(new Given.Single(written.text(), kind, written.place()));
  }
}
