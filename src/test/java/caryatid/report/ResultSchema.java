package caryatid.report;

import caryatid.alignment.Result;
import caryatid.remark.Topic;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** The JSON Schema of a result, derived from the records themselves. */
final class ResultSchema {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private final Map<String, ObjectNode> definitions = new TreeMap<>();

  static ObjectNode build() {
    ResultSchema schema = new ResultSchema();
    ObjectNode root = NODES.objectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("title", "A result of Caryatid, version " + Result.VERSION);
    root.setAll(schema.of(Result.class));
    ObjectNode version = NODES.objectNode().put("const", Result.VERSION);
    ((ObjectNode) schema.definitions.get("result").path("properties")).set("version", version);
    ObjectNode all = root.putObject("$defs");
    schema.definitions.forEach(all::set);
    return root;
  }

  private ObjectNode of(Type type) {
    if (type instanceof ParameterizedType generic) {
      return ofGeneric(generic);
    }
    Class<?> plain = (Class<?>) type;
    if (plain.isSealed()) {
      ArrayNode forms = NODES.arrayNode();
      List.of(plain.getPermittedSubclasses()).forEach(form -> forms.add(of(form)));
      return NODES.objectNode().set("oneOf", forms);
    }
    return plain.isRecord() ? reference(plain) : simple(plain);
  }

  private ObjectNode ofGeneric(ParameterizedType generic) {
    Type[] of = generic.getActualTypeArguments();
    if (generic.getRawType() == Optional.class) {
      return of(of[0]);
    }
    if (generic.getRawType() == List.class) {
      return NODES.objectNode().put("type", "array").set("items", of(of[0]));
    }
    ObjectNode map = NODES.objectNode().put("type", "object");
    map.set("propertyNames", of(of[0]));
    return map.set("additionalProperties", of(of[1]));
  }

  private ObjectNode simple(Class<?> type) {
    ObjectNode node = NODES.objectNode();
    if (type == double.class || type == OptionalDouble.class) {
      return node.put("type", "number");
    } else if (type == int.class || type == long.class) {
      return node.put("type", "integer");
    } else if (type == boolean.class) {
      return node.put("type", "boolean");
    }
    node.put("type", "string");
    if (type == OffsetDateTime.class) {
      node.put(
          "pattern",
          "^\\d{4,}-\\d\\d-\\d\\dT\\d\\d:\\d\\d(:\\d\\d(\\.\\d+)?)?(Z|[+-]\\d\\d:\\d\\d)$");
    } else if (type == Topic.class) {
      node.put("pattern", "^[A-Za-z]+\\.[A-Z][A-Z0-9_]*$");
    } else if (type.isEnum()) {
      ArrayNode words = node.putArray("enum");
      for (Object constant : type.getEnumConstants()) {
        words.add(Spelling.of((Enum<?>) constant));
      }
    }
    return node;
  }

  private ObjectNode reference(Class<?> type) {
    String name = Spelling.ofName(type.getSimpleName());
    if (!definitions.containsKey(name)) {
      definitions.put(name, NODES.objectNode());
      definitions.put(name, object(type));
    }
    return NODES.objectNode().put("$ref", "#/$defs/" + name);
  }

  private ObjectNode object(Class<?> type) {
    ObjectNode object = NODES.objectNode().put("type", "object");
    ObjectNode properties = object.putObject("properties");
    ArrayNode required = object.putArray("required");
    if (Forms.isChoice(type)) {
      JsonNode kind = NODES.objectNode().put("const", Spelling.ofName(type.getSimpleName()));
      properties.set(Forms.KIND, kind);
      required.add(Forms.KIND);
    }
    for (RecordComponent component : type.getRecordComponents()) {
      String key = Spelling.ofName(component.getName());
      properties.set(key, of(component.getGenericType()));
      if (!Forms.mayBeLeftOut(component)) {
        required.add(key);
      }
    }
    return object.put("additionalProperties", false);
  }
}
