package caryatid.views;

import static caryatid.demo.Invented.CODE;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.store.Store;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether a stand was of the kind that its target is valid for. */
class TargetValidityTest {
  @TempDir private Path folder;

  @Test
  void theModeOfTheKneeIsKnownBesideWhetherItWasLocked() throws BadInput, StoreFailure {
    assertThat(open("standing")).isEmpty();
    assertThat(open("Not locked")).isEmpty();
    assertThat(open("not locked, standing")).isEmpty();
    assertThat(open("barefoot")).isEmpty();
    assertThat(open("locked"))
        .containsExactly(
            "sagittal, right, knee centre: the target is valid for \"locked\"; stood in (entry 2):"
                + " barefoot, not locked, standing. Check that it applies.");
  }

  private List<String> open(String validFor) throws BadInput, StoreFailure {
    Store store = Invented.store(folder.resolve(validFor));
    store.start(CODE, Invented.opening());
    Map<String, Answers.Value> stood = new LinkedHashMap<>(Invented.found(20).values());
    stood.put("knee-mode", new Answers.Value.Words("not locked, standing"));
    Map<String, Answers.Value> finding =
        new LinkedHashMap<>(Invented.found(20).rows("findings").get(0).values());
    finding.put("valid-for", new Answers.Value.Words(validFor));
    stood.put("findings", new Answers.Value.Rows(List.of(new Answers(finding))));
    store.add(CODE, Invented.addition(EntryKind.STAND, new Answers(stood)));
    return RecordView.of(store.read(CODE)).open().stream()
        .filter(remark -> remark.topic() == OpenIssue.VALID_FOR)
        .map(Wording.in(Locale.ENGLISH)::say)
        .toList();
  }
}
