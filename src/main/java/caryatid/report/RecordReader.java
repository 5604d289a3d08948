package caryatid.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Iterator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads an object as one of the program's records; every key must be known and none may lack. */
final class RecordReader {
  private RecordReader() {}

  static Object read(Class<?> type, JsonNode node, String at) {
    if (!node.isObject()) {
      throw ValueReader.unexpected(at, "object", node);
    }
    Class<?> form = type.isSealed() ? form(type, node, at) : type;
    RecordComponent[] components = form.getRecordComponents();
    refuseUnknown(components, form, node, at);
    Object[] values = Stream.of(components).map(component -> value(component, node, at)).toArray();
    return build(form, components, values, at);
  }

  private static Class<?> form(Class<?> choice, JsonNode node, String at) {
    JsonNode kind = node.path(Forms.KIND);
    return Stream.of(choice.getPermittedSubclasses())
        .filter(form -> Spelling.ofName(form.getSimpleName()).equals(kind.textValue()))
        .findFirst()
        .orElseThrow(() -> ValueReader.unexpected(at + "." + Forms.KIND, "known word", kind));
  }

  private static void refuseUnknown(
      RecordComponent[] components, Class<?> form, JsonNode node, String at) {
    Set<String> known =
        Stream.of(components).map(c -> Spelling.ofName(c.getName())).collect(Collectors.toSet());
    if (Forms.isChoice(form)) {
      known.add(Forms.KIND);
    }
    for (Iterator<String> keys = node.fieldNames(); keys.hasNext(); ) {
      String key = keys.next();
      if (!known.contains(key)) {
        throw new Misread(Archived.UNKNOWN_KEY, at, key);
      }
    }
  }

  private static Object value(RecordComponent component, JsonNode node, String at) {
    String key = Spelling.ofName(component.getName());
    if (node.has(key)) {
      return ValueReader.read(component.getGenericType(), node.get(key), at + "." + key);
    }
    if (!Forms.mayBeLeftOut(component)) {
      throw new Misread(Archived.MISSING_KEY, at, key);
    }
    if (Forms.mayBeInfinite(component)) {
      return Double.POSITIVE_INFINITY;
    }
    return component.getType() == Optional.class ? Optional.empty() : OptionalDouble.empty();
  }

  private static Object build(
      Class<?> form, RecordComponent[] components, Object[] values, String at) {
    try {
      Class<?>[] types =
          Stream.of(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
      Constructor<?> canonical = form.getDeclaredConstructor(types);
      return canonical.newInstance(values);
    } catch (InvocationTargetException e) {
      throw new Misread(Archived.OUT_OF_RANGE, at, String.valueOf(e.getCause().getMessage()));
    } catch (ReflectiveOperationException e) {
      throw new IllegalArgumentException("not open: " + form, e);
    }
  }
}
