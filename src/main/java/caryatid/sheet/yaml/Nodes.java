package caryatid.sheet.yaml;

import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Topic;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Turns the YAML library's nodes into sections, lists and single values, noting what does not fit.
 */
final class Nodes {
  private static final String MERGE = "<<";

  private final String file;
  private final ProblemList troubles = new ProblemList();

  Nodes(String file) {
    this.file = file;
  }

  /** A key's value and where the key stands. */
  record NodeValue(Place keyPlace, Node node) {}

  ProblemList troubles() {
    return troubles;
  }

  Place place(Node node) {
    return ProblemList.at(file, node.getStartMark().orElseThrow());
  }

  Section root(MappingNode node) {
    return open(node, Place.of(file));
  }

  Optional<Section> section(String key, Node node) {
    return node instanceof MappingNode mapping
        ? Optional.of(open(mapping, place(node)))
        : refuse(node, nothing(node) ? YamlProblem.NO_VALUE : YamlProblem.NOT_A_SECTION, key);
  }

  List<Node> items(String key, Node node) {
    if (node instanceof SequenceNode list) {
      return list.getValue();
    }
    refuse(node, nothing(node) ? YamlProblem.NO_VALUE : YamlProblem.NOT_A_LIST, key);
    return List.of();
  }

  List<Node> oneOrSeveral(String key, Node node) {
    return node instanceof SequenceNode ? items(key, node) : List.of(node);
  }

  <T> Optional<T> single(String key, Node node, ValueParser<T> form) {
    if (!(node instanceof ScalarNode scalar)) {
      return refuse(node, YamlProblem.NOT_A_SINGLE_VALUE, key);
    }
    return nothing(scalar)
        ? refuse(node, YamlProblem.NO_VALUE, key)
        : form.read(
            new YamlScalar(key, scalar.getValue(), scalar.isPlain(), place(node), troubles));
  }

  private static boolean nothing(Node node) {
    return node instanceof ScalarNode scalar
        && (scalar.getValue().isBlank()
            || (scalar.isPlain() && List.of("~", "null").contains(scalar.getValue())));
  }

  private Section open(MappingNode node, Place where) {
    int before = troubles.count();
    return new Section(this, where, before, values(node));
  }

  Map<String, NodeValue> values(MappingNode node) {
    Map<String, NodeValue> values = new LinkedHashMap<>();
    NodeTuple before = null;
    for (NodeTuple pair : node.getValue()) {
      Optional<String> decimals = decimals(node, pair);
      Optional<String> number = Optional.ofNullable(before).flatMap(Nodes::digits);
      if (decimals.isPresent() && number.isPresent()) {
        refuse(
            before.getValueNode(),
            YamlProblem.DECIMAL_COMMA,
            ((ScalarNode) before.getKeyNode()).getValue(),
            number.get() + "," + decimals.get(),
            number.get() + "." + decimals.get());
      } else if (!(pair.getKeyNode() instanceof ScalarNode key)) {
        refuse(pair.getKeyNode(), YamlProblem.NOT_YAML);
      } else if (key.getValue().equals(MERGE)) {
        refuse(key, YamlProblem.MERGE_KEY);
      } else {
        put(values, key, pair.getValueNode());
      }
      before = pair;
    }
    return values;
  }

  /** A key of digits alone without a value, within braces: what a decimal comma leaves behind. */
  private static Optional<String> decimals(MappingNode node, NodeTuple pair) {
    return node.getFlowStyle() == FlowStyle.FLOW
            && pair.getKeyNode() instanceof ScalarNode key
            && key.isPlain()
            && key.getValue().matches("\\d+")
            && nothing(pair.getValueNode())
        ? Optional.of(key.getValue())
        : Optional.empty();
  }

  /** A value of digits alone, perhaps with a sign. */
  private static Optional<String> digits(NodeTuple pair) {
    return pair.getKeyNode() instanceof ScalarNode
            && pair.getValueNode() instanceof ScalarNode value
            && value.isPlain()
            && value.getValue().matches("[-+]?\\d+")
        ? Optional.of(value.getValue())
        : Optional.empty();
  }

  private void put(Map<String, NodeValue> values, ScalarNode key, Node node) {
    NodeValue earlier = values.putIfAbsent(key.getValue(), new NodeValue(place(key), node));
    if (earlier != null) {
      String line = Integer.toString(earlier.keyPlace().line().orElseThrow());
      refuse(key, YamlProblem.KEY_TWICE, key.getValue(), line);
    }
  }

  private <T> Optional<T> refuse(Node node, Topic topic, String... arguments) {
    Argument[] texts = List.of(arguments).stream().map(Argument::text).toArray(Argument[]::new);
    troubles.add(Problem.at(place(node), topic, texts));
    return Optional.empty();
  }
}
