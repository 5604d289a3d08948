package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URLDecoder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads what a form sends: {@code application/x-www-form-urlencoded}, as the WHATWG defines it. */
final class FormFields {
  private FormFields() {}

  /** Names and values in order; what is badly encoded is left out. */
  static Map<String, List<String>> read(String encoded) {
    Map<String, List<String>> fields = new LinkedHashMap<>();
    for (String pair : encoded.split("&")) {
      int equals = pair.indexOf('=');
      if (equals > 0) {
        put(fields, pair.substring(0, equals), pair.substring(equals + 1));
      }
    }
    return fields;
  }

  private static void put(Map<String, List<String>> fields, String name, String value) {
    try {
      fields
          .computeIfAbsent(URLDecoder.decode(name, UTF_8), n -> new ArrayList<>())
          .add(URLDecoder.decode(value, UTF_8).replace("\r\n", "\n"));
    } catch (IllegalArgumentException badlyEncoded) {
      // No browser sends such a pair.
    }
  }
}
