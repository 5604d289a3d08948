package caryatid.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.remark.BadInput;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A damaged sheet is read or refused in words; nothing else happens (seeded). */
class MutatedSheetTest {
  private static final String SIGNS = "\n\t :-#'\"[]{},&*!|>%@~?0e.é\u0000\uD83D";
  private static final int TRIES = 2_000;

  @Test
  void everyDamageIsReadOrRefusedInWords() {
    Random random = new Random(20260304);
    int refused = 0;
    for (int i = 0; i < TRIES; i++) {
      refused += refused(damage(Sheets.SHEET, random)) ? 1 : 0;
    }
    assertThat(refused).isBetween(TRIES / 10, TRIES - 1);
  }

  private static boolean refused(String text) {
    try {
      return Sheets.sheet(text).landmarks().isEmpty();
    } catch (BadInput e) {
      assertThat(Sheets.said(e)).isNotEmpty().noneMatch(s -> s.matches(".*\\{[0-9]}.*"));
      return true;
    }
  }

  private static String damage(String text, Random random) {
    StringBuilder damaged = new StringBuilder(text);
    for (int i = 0; i <= random.nextInt(3); i++) {
      int at = random.nextInt(damaged.length());
      switch (random.nextInt(3)) {
        case 0 -> damaged.deleteCharAt(at);
        case 1 -> damaged.insert(at, SIGNS.charAt(random.nextInt(SIGNS.length())));
        default -> damaged.delete(at, Math.min(damaged.length(), at + random.nextInt(40)));
      }
    }
    return damaged.toString();
  }
}
