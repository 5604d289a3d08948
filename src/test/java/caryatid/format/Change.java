package caryatid.format;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random changes to JSON: a value replaced, a member removed, renamed or added. */
final class Change {
  private Change() {}

  static void somewhere(ObjectNode root, Random random) {
    List<ObjectNode> objects = new ArrayList<>();
    collect(root, objects);
    ObjectNode object = objects.get(random.nextInt(objects.size()));
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    String name = names.get(random.nextInt(names.size()));
    switch (random.nextInt(4)) {
      case 0 -> object.remove(name);
      case 1 -> object.put(name + "x", 1);
      default -> replace(object, name, random);
    }
  }

  private static void replace(ObjectNode object, String name, Random random) {
    switch (random.nextInt(9)) {
      case 0 -> object.put(name, "text");
      case 1 -> object.put(name, "");
      case 2 -> object.put(name, 3);
      case 3 -> object.put(name, -5000.5);
      case 4 -> object.put(name, 2.5);
      case 5 -> object.put(name, true);
      case 6 -> object.putNull(name);
      case 7 -> object.putArray(name);
      default -> object.putObject(name);
    }
  }

  private static void collect(JsonNode node, List<ObjectNode> objects) {
    if (node instanceof ObjectNode object && !object.isEmpty()) {
      objects.add(object);
    }
    if (node instanceof ObjectNode || node instanceof ArrayNode) {
      node.forEach(child -> collect(child, objects));
    }
  }
}
