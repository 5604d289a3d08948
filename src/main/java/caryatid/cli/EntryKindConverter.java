package caryatid.cli;

import caryatid.entry.EntryKind;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Converts the typed kind of an entry. */
final class EntryKindConverter implements ITypeConverter<EntryKind> {
  @Override
  public EntryKind convert(String typed) {
    return EntryKind.of(typed)
        .filter(EntryKind::isAdded)
        .orElseThrow(() -> new TypeConversionException("expected one of " + known()));
  }

  private static String known() {
    return Arrays.stream(EntryKind.values())
        .filter(EntryKind::isAdded)
        .map(EntryKind::key)
        .collect(Collectors.joining(", "));
  }
}
