package caryatid.views;

import static caryatid.demo.Invented.CODE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.demo.Invented;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.entry.form.AnswersToContent;
import caryatid.fitting.Addition;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.sheet.TrialSheet;
import caryatid.sheet.TrialSheetReader;
import caryatid.store.Store;
import caryatid.store.StoredRecord;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NextSheetTest {
  private static final String SHEET =
      """
      trial-sheet: 1
      wearer: K7
      at: 2026-03-04T10:15+01:00
      side: right
      level: transtibial
      stance: {kind: prosthetic foot on plate}
      other-foot:
        on: block
        height-difference-mm: 0
      hands: free
      footwear: {worn: barefoot, heel-height-mm: 0}
      minutes-walked: 5
      landmarks:
        - name: knee centre
          forward-mm: 112
          up-mm: 492
          marking-mm: 4
      targets:
        - plane: sagittal
          landmark: knee centre
          recommended-mm: 15
          below-mm: 10
          above-mm: 10
          source: fitting plan (invented)
      notes:
        comfort: fine
      """;

  @TempDir private Path folder;

  @Test
  void targetsAndLandmarksCarryOverToTheNextStandAndEachLandmarkWantsItsWord()
      throws BadInput, StoreFailure {
    NextSheet next = next(SHEET);
    assertThat(next.text())
        .isEqualTo(
            """
            trial-sheet: 1
            based-on: first.yaml
            confirmed: []
            # In first.yaml:
            # landmarks:
            #   - name: knee centre
            #     forward-mm: 112
            #     up-mm: 492
            #     marking-mm: 4
            at:
            wearer: K7
            side: right
            level: transtibial
            stance: {kind: prosthetic foot on plate}
            other-foot:
              on: block
              height-difference-mm: 0
            hands: free
            footwear: {worn: barefoot, heel-height-mm: 0}
            """);
    assertThatThrownBy(() -> read(next, next.text())).isInstanceOf(BadInput.class);
    TrialSheet filled =
        read(
            next,
            next.text()
                .replace("confirmed: []", "confirmed: [knee centre]")
                .replace("at:\n", "at: 2026-03-04T10:40+01:00\n"));
    assertThat(filled.landmarks()).hasSize(1);
    assertThat(filled.targets()).hasSize(1);
    assertThat(filled.minutesWalked()).isEmpty();
  }

  /** A hand that touched makes a stand doubtful; the next one has to say how it was. */
  @ParameterizedTest
  @CsvSource({
    "touching, ''",
    "holding, ''",
    "'\"touching\"', ''",
    "free, ' free'",
    "'\"free\"', ' \"free\"'"
  })
  void handsThatWereNotFreeAreToBeSaidAgain(String hands, String next)
      throws BadInput, StoreFailure {
    assertThat(next(SHEET.replace("hands: free", "hands: " + hands)).text())
        .contains("\nhands:" + next + "\n");
  }

  @Test
  void withoutAStandThereIsNoNextSheet() throws BadInput, StoreFailure {
    Store store = Invented.store(folder);
    store.start(CODE, Invented.opening());
    StoredRecord stored = store.open(CODE);
    assertThatThrownBy(() -> NextSheet.of(stored.record(), stored::bytes))
        .hasMessage("Keeping.NO_STAND");
  }

  private NextSheet next(String sheet) throws BadInput, StoreFailure {
    Store store = Invented.store(folder);
    store.start(CODE, Invented.opening());
    store.add(
        CODE,
        new Addition(
            Invented.AT,
            "AB",
            Optional.empty(),
            AnswersToContent.content(EntryKind.STAND, Answers.NONE),
            List.of(Invented.attached(KeptFile.Role.SHEET, "visit/first.yaml", sheet))));
    StoredRecord stored = store.open(CODE);
    return NextSheet.of(stored.record(), stored::bytes);
  }

  private static TrialSheet read(NextSheet next, String text) throws BadInput, StoreFailure {
    return TrialSheetReader.read(
        NamedBytes.of("next.yaml", text.getBytes(StandardCharsets.UTF_8)),
        name -> Optional.ofNullable(next.earlier().get(name)).map(b -> NamedBytes.of(name, b)));
  }
}
