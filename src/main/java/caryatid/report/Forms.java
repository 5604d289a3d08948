package caryatid.report;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What writer, reader and schema must agree on about how records become JSON. */
final class Forms {
  /** The key that tells which form of a choice an object holds. */
  static final String KIND = "kind";

  private Forms() {}

  /** Whether a record is one of several forms, so that its object needs a {@link #KIND}. */
  static boolean isChoice(Class<?> type) {
    return Stream.of(type.getInterfaces()).anyMatch(Class::isSealed);
  }

  /** Whether a component may be left out: what is optional, and infinite degrees of freedom. */
  static boolean mayBeLeftOut(RecordComponent component) {
    Class<?> type = component.getType();
    return type == Optional.class || type == OptionalDouble.class || mayBeInfinite(component);
  }

  /** JSON has no infinity; degrees of freedom that are infinite are left out. */
  static boolean mayBeInfinite(RecordComponent component) {
    return component.getName().equals("degreesOfFreedom");
  }

  static boolean leftOut(RecordComponent component, Object value) {
    return mayBeInfinite(component) && value.equals(Double.POSITIVE_INFINITY);
  }

  static Object get(RecordComponent component, Record held) {
    try {
      return component.getAccessor().invoke(held);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalArgumentException("not open: " + component, e);
    }
  }
}
