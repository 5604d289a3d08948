package caryatid.recording.importer;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Exports for tests, and what the importer makes of them. */
final class Exports {
  static final Wording WORDING = Wording.in(Locale.ROOT);

  private Exports() {}

  static NamedBytes of(String... lines) {
    return text(String.join("\n", lines) + "\n");
  }

  static NamedBytes text(String text) {
    return text(text, StandardCharsets.UTF_8);
  }

  static NamedBytes text(String text, Charset charset) {
    return NamedBytes.of("stand.csv", text.getBytes(charset));
  }

  /** A header and rows of its own pattern, the row's number for {@code #}. */
  static NamedBytes rows(String header, String pattern, int count) {
    StringBuilder text = new StringBuilder(header).append('\n');
    IntStream.range(0, count)
        .forEach(i -> text.append(pattern.replace("#", Integer.toString(i))).append('\n'));
    return text(text.toString());
  }

  static Recording read(NamedBytes export, PlateDescription description) throws BadInput {
    return Importer.read(export, Optional.of(description));
  }

  /** A centre of pressure that sways, mm, as two cells. */
  static String sway(int i) {
    return String.format(Locale.ROOT, "%.3f,%.3f", 10 + Math.sin(i), 20 + Math.cos(0.7 * i));
  }

  /** Reads an export without times, described as of 100 Hz. */
  static Recording readAt100Hz(NamedBytes export) throws BadInput {
    return read(export, new Described().rate(100).get());
  }

  /** Every refusal as a person reads it; none where the file is read. */
  static List<String> refusals(NamedBytes export, Optional<PlateDescription> description) {
    try {
      Importer.read(export, description);
      return List.of();
    } catch (BadInput e) {
      return e.problems().stream().map(p -> plain(WORDING.say(p))).toList();
    }
  }

  static List<String> refusals(NamedBytes export, PlateDescription description) {
    return refusals(export, Optional.of(description));
  }

  /** That an export is refused with these sentences, in this order, and no others. */
  static void assertRefused(NamedBytes export, PlateDescription description, String... sentences) {
    assertThat(refusals(export, description)).containsExactly(sentences);
  }

  /** The remarks as a person reads them. */
  static List<String> remarks(Recording recording) {
    return recording.remarks().stream().map(r -> plain(WORDING.say(r))).toList();
  }

  /** Numbers and units are kept together by no-break spaces, which nobody sees. */
  private static String plain(String sentence) {
    return sentence.replace('\u00a0', ' ');
  }
}
