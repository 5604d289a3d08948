package caryatid.format;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EntryJsonTest {
  private static final String HEAD =
      "\"fitting-entry\": 2, \"number\": 1, \"kind\": \"note\", \"at\": \"2026-03-04T08:00:00+01:00\","
          + " \"by\": \"AB\"";

  private static EntryReading read(String more) {
    return EntryJson.read(("{" + HEAD + more + "}").getBytes(StandardCharsets.UTF_8), "e.json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", ", \"content\": \"steady\"", ", \"content\": [{\"text\": \"a\"}]"})
  void anEntryWithoutContentIsNotRead(String more) {
    assertThat(((EntryReading.Unreadable) read(more)).problems())
        .extracting(Wording.in(Locale.ENGLISH)::say)
        .containsExactly("e.json line 1, column 1: content is missing. Add it.");
  }

  @ParameterizedTest
  @ValueSource(strings = ", \"content\": {\"text\": \"steady\"}")
  void anEntryWithContentIsRead(String more) {
    assertThat(read(more)).isInstanceOf(EntryReading.Done.class);
  }
}
