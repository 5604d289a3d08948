package caryatid.views;

import static caryatid.demo.Invented.CODE;
import static caryatid.demo.Invented.answers;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.entry.EntryKind;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.store.Store;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnSettingTest {
  @TempDir private Path folder;

  @Test
  void aSettingThatFailedStaysOpenUntilTheSameOneSucceeds() throws BadInput, StoreFailure {
    Store store = Invented.store(folder);
    store.start(CODE, Invented.opening());
    set(store, "ankle to the boot", 0);
    set(store, "ankle to the sandal", 3);
    assertThat(open(store)).containsExactly(Argument.text("ankle to the boot"));
    set(store, "Ankle to the boot ", 3);
    assertThat(open(store)).isEmpty();
  }

  private static void set(Store store, String what, int succeeded) throws BadInput, StoreFailure {
    store.add(
        CODE,
        Invented.addition(
            EntryKind.OWN_SETTING, answers("what", what, "attempts", 3, "succeeded", succeeded)));
  }

  private static List<Argument> open(Store store) throws BadInput, StoreFailure {
    return RecordView.of(store.read(CODE)).open().stream()
        .filter(remark -> remark.topic() == OpenIssue.OWN_SETTING)
        .map(remark -> remark.arguments().get(3))
        .toList();
  }
}
