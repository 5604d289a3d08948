package caryatid.usecase.stand;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.remark.BadInput;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"12,5|[12.5]", "4 9.5|[4, 9.5]", "4; 9|[4, 9]", "4 soon|[4, 'soon']"})
  void severalNumbersBecomeAList(String typed, String list) throws BadInput {
    SheetText sheet = new SheetText().numbers("read-at-s", Optional.of(typed), "read-at");
    assertThat(new String(sheet.sheet().readAll(), UTF_8)).isEqualTo("read-at-s: " + list + "\n");
  }
}
