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
  @Override
  public OffsetDateTime convert(String typed) {
    try {
      return OffsetDateTime.parse(typed);
    } catch (DateTimeParseException e) {
      throw new TypeConversionException(
          Wording.in(Locale.ENGLISH).fill("cli.badTime", Argument.text(typed)));
    }
  }
}
