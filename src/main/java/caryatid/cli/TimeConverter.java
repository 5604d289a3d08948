package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Converts a typed time. */
final class TimeConverter implements ITypeConverter<OffsetDateTime> {
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 9999;

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
    throw new TypeConversionException(
        Wording.in(Locale.ENGLISH).fill("cli.badTime", Argument.text(typed)));
  }
}
