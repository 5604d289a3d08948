package caryatid.format;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.entry.form.Vocabulary;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The JSON Schema of an entry, built from the forms. */
final class EntrySchema {
  private static final String TIME =
      "^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(:\\d{2}(\\.\\d{1,9})?)?(Z|[+-]\\d{2}:\\d{2})$";

  /** Days that no month has are refused by the reader alone. */
  private static final String DAY = "^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$";

  private EntrySchema() {}

  static ObjectNode build() {
    ObjectNode schema = object(EntryHeader.FORM);
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("title", "Entry of a fitting record, form 2");
    root.put(
        "description",
        "One entry.json. What a field may hold is said once, in the program's forms.");
    root.setAll(schema);
    ObjectNode properties = (ObjectNode) root.get("properties");
    properties.putObject(EntryHeader.VERSION).put("const", EntryHeader.CURRENT);
    ((ObjectNode) properties.get("at")).put("pattern", TIME);
    ((ObjectNode) properties.get("as-of")).put("pattern", TIME);
    ((ObjectNode) properties.get("by")).put("pattern", "^[\\p{L}\\p{N}]{1,10}$");
    properties.putObject("content");
    ((ArrayNode) root.get("required")).add("content");
    root.putObject("dependentRequired").putArray("corrects").add("because");
    ((ObjectNode) root.get("dependentRequired")).putArray("because").add("corrects");
    ((ObjectNode) root.get("dependentRequired")).putArray("as-of").add("corrects");
    fileNames(properties);
    ArrayNode kinds = root.putArray("allOf");
    for (EntryKind kind : EntryKind.values()) {
      ObjectNode rule = kinds.addObject();
      rule.putObject("if").putObject("properties").putObject("kind").put("const", kind.key());
      rule.putObject("then").putObject("properties").set("content", object(EntryForms.of(kind)));
    }
    return root;
  }

  private static void fileNames(ObjectNode properties) {
    ObjectNode file = (ObjectNode) properties.get("files").get("items").get("properties");
    ObjectNode name = file.putObject("name");
    name.put("type", "string");
    name.put("pattern", "^[A-Za-z0-9_-]([A-Za-z0-9._-]{0,98}[A-Za-z0-9_-])?$");
    name.putObject("not").put("const", Entry.FILE);
  }

  private static ObjectNode object(Form form) {
    ObjectNode object = JsonNodeFactory.instance.objectNode();
    object.put("type", "object");
    object.put("additionalProperties", false);
    ArrayNode required = object.putArray("required");
    ObjectNode properties = object.putObject("properties");
    for (Field field : form.fields()) {
      properties.set(field.key(), type(field.type()));
      if (field.required()) {
        required.add(field.key());
      }
    }
    return object;
  }

  /** A term's code, a person's words, or both. */
  private static void name(ObjectNode node, Vocabulary vocabulary) {
    node.put("type", "object").put("additionalProperties", false).put("minProperties", 1);
    ObjectNode members = node.putObject("properties");
    vocabulary.codes().forEach(members.putObject("code").putArray("enum")::add);
    members.putObject("text").put("type", "string").put("pattern", "\\S");
  }

  private static ObjectNode type(FieldType type) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    if (type instanceof FieldType.Number number) {
      node.put("type", number.whole() ? "integer" : "number");
      node.put("minimum", number.lowest()).put("maximum", number.highest());
    } else if (type instanceof FieldType.YesNo) {
      node.put("type", "boolean");
    } else if (type instanceof FieldType.Computed computed) {
      computed.choice().words().forEach(node.putArray("enum")::add);
    } else if (type instanceof FieldType.Day) {
      node.put("type", "string").put("pattern", DAY);
    } else if (type instanceof FieldType.Choice choice) {
      choice.words().forEach(node.putArray("enum")::add);
    } else if (type instanceof FieldType.Rows rows) {
      node.put("type", "array").put("minItems", 1);
      node.set("items", object(rows.form()));
    } else if (type instanceof FieldType.Name name) {
      name(node, name.vocabulary());
    } else {
      node.put("type", "string").put("pattern", "\\S");
    }
    return node;
  }
}
