package caryatid.format;

import caryatid.alignment.Result;
import caryatid.remark.Topic;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Results put together at random from whatever their records may hold: every constant, every form
 * of a choice, what is optional there or not. They make no sense, but must survive being written.
 */
public final class AnyResult {
  private final Random random;

  public AnyResult(long seed) {
    this.random = new Random(seed);
  }

  public Result next() {
    return (Result) of(Result.class, "result");
  }

  private Object of(Type type, String name) {
    if (type instanceof ParameterizedType generic) {
      return ofGeneric((Class<?>) generic.getRawType(), generic.getActualTypeArguments());
    }
    Class<?> plain = (Class<?>) type;
    if (plain == Topic.class) {
      return one(Topics.CODES.constants());
    } else if (plain.isSealed()) {
      return of(one(List.of(plain.getPermittedSubclasses())), name);
    } else if (plain.isEnum()) {
      return one(List.of(plain.getEnumConstants()));
    }
    return plain.isRecord() ? record(plain) : simple(plain, name);
  }

  private Object ofGeneric(Class<?> raw, Type[] of) {
    if (raw == Optional.class) {
      return random.nextBoolean() ? Optional.of(of(of[0], "")) : Optional.empty();
    }
    int size = 1 + random.nextInt(2);
    if (raw == List.class) {
      return Stream.generate(() -> of(of[0], "")).limit(size).toList();
    }
    Map<Object, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < size; i++) {
      map.put(of(of[0], ""), of(of[1], ""));
    }
    return map;
  }

  private Object simple(Class<?> type, String name) {
    if (type == OptionalDouble.class) {
      return random.nextBoolean() ? OptionalDouble.of(number(name)) : OptionalDouble.empty();
    } else if (type == double.class || type == Double.class) {
      return name.equals("degreesOfFreedom") && random.nextBoolean()
          ? Double.POSITIVE_INFINITY
          : number(name);
    } else if (type == int.class) {
      return 1 + random.nextInt(1000);
    } else if (type == long.class) {
      return random.nextLong() >>> 10;
    } else if (type == boolean.class) {
      return random.nextBoolean();
    } else if (type == OffsetDateTime.class) {
      return Instant.ofEpochSecond(random.nextInt())
          .atOffset(ZoneOffset.ofHours(random.nextInt(9)));
    }
    return name.equals("sha512") ? "0123456789abcdef".repeat(8) : words();
  }

  private double number(String name) {
    double some = random.nextBoolean() ? random.nextDouble() : random.nextInt(500) / 8.0;
    return name.equals("confidence") ? 0.6 + 0.3 * random.nextDouble() : some;
  }

  private String words() {
    return one(List.of("knee", "a \"b\" \\ \n\t", "Länge √2 \u2028 \ud83e\uddb5", "=1+1", "0"))
        + random.nextInt(100_000);
  }

  /** What a record refuses is tried again with other values. */
  private Object record(Class<?> type) {
    RecordComponent[] parts = type.getRecordComponents();
    for (int attempt = 0; attempt < 1000; attempt++) {
      List<Object> values = new ArrayList<>();
      for (RecordComponent part : parts) {
        values.add(of(part.getGenericType(), part.getName()));
      }
      try {
        Constructor<?> constructor =
            type.getDeclaredConstructor(
                Stream.of(parts).map(RecordComponent::getType).toArray(Class<?>[]::new));
        return constructor.newInstance(values.toArray());
      } catch (InvocationTargetException refused) {
        // Values that the record does not take: others are tried.
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(e);
      }
    }
    throw new IllegalStateException("no " + type + " found");
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }
}
