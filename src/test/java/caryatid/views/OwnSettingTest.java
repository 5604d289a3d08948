package caryatid.views;

import static caryatid.demo.Invented.CODE;
import static caryatid.demo.Invented.answers;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.store.Store;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

  @Test
  void aSettingBeyondTheMakersRangeIsSaidWithTheRangeUntilItIsWithin()
      throws BadInput, StoreFailure {
    Store store = Invented.store(folder);
    store.start(CODE, Invented.opening());
    Answers foot = answers("what", "foot", "name", "demo foot", "heel-height-highest-mm", 20);
    store.add(
        CODE,
        Invented.addition(
            EntryKind.COMPONENTS,
            new Answers(Map.of("components", new Answers.Value.Rows(List.of(foot))))));
    heel(store, 30);
    assertThat(said(store))
        .containsExactly(
            "demo foot: the wearer set it to a heel of 30.0 mm, but its maker gives it for 0.0 mm"
                + " to 20.0 mm. Set it within this range, or settle it with the maker.");
    heel(store, 20);
    assertThat(said(store)).isEmpty();
  }

  private static void heel(Store store, int heelMm) throws BadInput, StoreFailure {
    store.add(
        CODE,
        Invented.addition(
            EntryKind.OWN_SETTING,
            answers("what", "ankle", "attempts", 1, "succeeded", 1, "heel-height-set-mm", heelMm)));
  }

  private static List<String> said(Store store) throws BadInput, StoreFailure {
    return RecordView.of(store.read(CODE)).remarks().stream()
        .filter(remark -> remark.topic() == LimitRemark.OWN_SETTING_OUTSIDE)
        .map(Wording.in(Locale.ENGLISH)::say)
        .map(text -> text.replace('\u00a0', ' '))
        .toList();
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
