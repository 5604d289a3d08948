package caryatid.web.page;

import caryatid.remark.Argument;
import caryatid.wording.Wording;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Days and times as they are typed in a language, by the clock of a place unless an offset from UTC
 * stands behind them. The year first, and day.month.year, can be read in one way only and are taken
 * in every language; day/month/year where nobody writes the month first.
 */
public record LocalTimes(Wording wording, ZoneId zone) {
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 9999;
  private static final String YEAR_FIRST = "uuuu-M-d H:mm[:ss]";
  private static final String DOTS = "d.M.uuuu H:mm[:ss]";
  private static final String SLASHES = "d/M/uuuu H:mm[:ss]";

  private static final Pattern PARTS =
      Pattern.compile("(\\S+?)[T,\\s]\\s*(\\d{1,2}:\\S+?)\\s*(Z|[+-](?:0\\d|1[0-7]):[0-5]\\d)?");

  private static final OffsetDateTime EXAMPLE =
      OffsetDateTime.of(2026, 3, 4, 10, 15, 0, 0, ZoneOffset.UTC);

  /** Those of this computer. */
  public static LocalTimes here(Wording wording) {
    return new LocalTimes(wording, ZoneId.systemDefault());
  }

  /** A time as the language writes it; with its offset where the clock here showed another. */
  public String show(OffsetDateTime at) {
    LocalDateTime local = at.toLocalDateTime();
    return offsets(local).equals(List.of(at.getOffset()))
        ? local.format(shown())
        : local.format(pattern("uuuu-MM-dd HH:mm")) + " " + at.getOffset();
  }

  private DateTimeFormatter shown() {
    return switch (wording.locale().getLanguage()) {
      case "de" -> pattern("dd.MM.uuuu HH:mm");
      case "fr", "es" -> pattern("dd/MM/uuuu HH:mm");
      default -> pattern("uuuu-MM-dd HH:mm");
    };
  }

  private static DateTimeFormatter pattern(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ROOT)
        .withResolverStyle(ResolverStyle.STRICT);
  }

  /** What was typed, as a time; empty if it is none, or could be two. */
  public Optional<OffsetDateTime> read(String typed) {
    List<ZoneOffset> offsets = local(typed).map(at -> offsets(typed, at)).orElse(List.of());
    return offsets.size() == 1
        ? local(typed).map(at -> OffsetDateTime.of(at, offsets.get(0)))
        : Optional.empty();
  }

  /** Why what was typed is no time; empty if it is one. */
  public Optional<String> fault(String typed) {
    Optional<LocalDateTime> local = local(typed);
    if (local.isEmpty()) {
      String example = EXAMPLE.toLocalDateTime().format(shown());
      return Optional.of(wording.fill("Web.badTime", Argument.text(example), Argument.text(typed)));
    }
    List<ZoneOffset> offsets = offsets(typed, local.get());
    if (offsets.isEmpty()) {
      return Optional.of(wording.fill("Web.timeSkipped", Argument.text(typed)));
    }
    return offsets.size() == 1
        ? Optional.empty()
        : Optional.of(
            wording.fill(
                "Web.timeTwice",
                Argument.text(typed),
                Argument.text(offsets.get(0).getId()),
                Argument.text(offsets.get(1).getId())));
  }

  /** A time as files write it; what is none stays as it is. */
  public String plain(String typed) {
    return read(typed).map(OffsetDateTime::toString).orElse(typed);
  }

  private List<ZoneOffset> offsets(String typed, LocalDateTime local) {
    Matcher parts = PARTS.matcher(typed.strip());
    return parts.matches() && parts.group(3) != null
        ? List.of(ZoneOffset.of(parts.group(3)))
        : offsets(local);
  }

  private List<ZoneOffset> offsets(LocalDateTime local) {
    return zone.getRules().getValidOffsets(local);
  }

  private Optional<LocalDateTime> local(String typed) {
    Matcher parts = PARTS.matcher(typed.strip());
    if (!parts.matches()) {
      return Optional.empty();
    }
    String text = parts.group(1) + " " + parts.group(2);
    return forms()
        .flatMap(form -> parsed(text, form).stream())
        .filter(at -> at.getYear() >= FIRST_YEAR && at.getYear() <= LAST_YEAR)
        .findFirst();
  }

  private Stream<String> forms() {
    boolean dayFirst = !wording.locale().getLanguage().equals("en");
    return dayFirst ? Stream.of(YEAR_FIRST, DOTS, SLASHES) : Stream.of(YEAR_FIRST, DOTS);
  }

  private static Optional<LocalDateTime> parsed(String text, String form) {
    try {
      return Optional.of(LocalDateTime.parse(text, pattern(form)));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
