package caryatid.cli;

import caryatid.entry.EntryKind;
import caryatid.remark.Argument;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Converts what is typed as an argument. */
final class Converters {
  private Converters() {}

  /** Converts the typed kind of an entry. */
  static final class ToEntryKind implements ITypeConverter<EntryKind> {
    /** What is printed of such an entry; files have called it otherwise ever since. */
    private static final String ASSESSMENT = "assessment";

    @Override
    public EntryKind convert(String typed) {
      return EntryKind.of(typed.equals(ASSESSMENT) ? EntryKind.ASSESSMENT.key() : typed)
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

  /** Converts a typed time. */
  static final class ToTime implements ITypeConverter<OffsetDateTime> {
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 9999;

    private final Wording wording;

    /** A time, or a sentence in the language of the reader. */
    ToTime(Wording wording) {
      this.wording = wording;
    }

    @Override
    public OffsetDateTime convert(String typed) {
      try {
        OffsetDateTime time = OffsetDateTime.parse(typed);
        if (time.getYear() >= FIRST_YEAR && time.getYear() <= LAST_YEAR) {
          return time;
        }
      } catch (DateTimeParseException e) {
        // Said below.
      }
      throw new TypeConversionException(wording.fill("cli.badTime", Argument.text(typed)));
    }
  }
}
