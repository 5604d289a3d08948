package caryatid.differential;

import java.util.List;

/**
 * What both versions are asked to do.
 *
 * @param kind what it is counted under
 * @param name which of its kind
 * @param commands one after the other
 */
record Case(String kind, String name, List<String[]> commands) {
  Case {
    commands = List.copyOf(commands);
  }

  static Case of(String kind, String name, String... command) {
    return new Case(kind, name, List.<String[]>of(command));
  }
}
