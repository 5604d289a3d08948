package caryatid.format;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.entry.Acceptance;
import caryatid.entry.Assessment;
import caryatid.entry.BenchAlignment;
import caryatid.entry.BenchItem;
import caryatid.entry.BodyMassSource;
import caryatid.entry.Components;
import caryatid.entry.Entry;
import caryatid.entry.EntryContent;
import caryatid.entry.Erasure;
import caryatid.entry.GaitPhase;
import caryatid.entry.GaitPlane;
import caryatid.entry.KeptFile;
import caryatid.entry.KneeLock;
import caryatid.entry.LegLength;
import caryatid.entry.Note;
import caryatid.entry.OwnSetting;
import caryatid.entry.RecordOpening;
import caryatid.entry.SettingUnit;
import caryatid.entry.Severity;
import caryatid.entry.ShoeList;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.entry.Walking;
import caryatid.entry.WalkingDeviation;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Verdict;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.ProstheticSide;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One invented entry of each kind, with every field, as version 2 was first written. The files are
 * frozen: a constant or a component with another name or a new field changes none of them, and each
 * is read as what it said. A program that writes a newer version still reads them; that half of the
 * test stays.
 */
class FrozenEntriesTest {
  private static final Path FOLDER = Path.of("src/test/resources/caryatid/frozen/v2/entries");
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-04T10:15:00+01:00");

  @ParameterizedTest
  @MethodSource("contents")
  void anEntryOfVersionTwoIsReadAsWhatItSaidAndWrittenAsItWas(EntryContent content)
      throws IOException {
    Entry entry =
        new Entry(
            7,
            AT,
            "AB",
            Optional.of(new Entry.Correction(2, "wrong side", Optional.of(AT.minusDays(1)))),
            content,
            List.of(new KeptFile("report.pdf", KeptFile.Role.EARLIER_SHEET, "my report.pdf")));
    Path file = FOLDER.resolve(content.kind().key() + ".json");
    byte[] bytes = Files.readAllBytes(file);
    assertThat(EntryJson.read(bytes, "e")).isEqualTo(new EntryReading.Done(entry));
    assertThat(new String(EntryJson.write(entry), java.nio.charset.StandardCharsets.UTF_8))
        .isEqualTo(Files.readString(file));
  }

  static Stream<EntryContent> contents() {
    return Stream.of(
        new RecordOpening(
            "K7",
            ProstheticSide.BOTH,
            AmputationLevel.KNEE_DISARTICULATION,
            Optional.empty(),
            Optional.empty(),
            mm("82.5"),
            OptionalInt.of(3),
            some("note")),
        new Assessment(
            some("none"),
            Optional.empty(),
            some("full contact"),
            some("silicone"),
            OptionalInt.of(2),
            some("pin"),
            some("no marks"),
            some("barefoot"),
            mm("20"),
            OptionalInt.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            some("note")),
        new BenchAlignment(
            List.of(
                new BenchAlignment.Item(
                    TermOrText.of(BenchItem.SOCKET_FLEXION),
                    Optional.empty(),
                    Optional.empty(),
                    mm("5"),
                    exact("7.25"),
                    SettingUnit.DEG,
                    Optional.empty(),
                    some("instructions"),
                    some("note")),
                new BenchAlignment.Item(
                    TermOrText.words("pelvis tilt"),
                    Optional.empty(),
                    Optional.empty(),
                    mm(""),
                    exact("15"),
                    SettingUnit.NEWTON_METRE,
                    Optional.empty(),
                    some(""),
                    some("")),
                new BenchAlignment.Item(
                    new TermOrText<>(Optional.of(BenchItem.HEIGHT), "with the shoe"),
                    Optional.empty(),
                    Optional.empty(),
                    mm(""),
                    exact("900"),
                    SettingUnit.MM,
                    Optional.empty(),
                    some(""),
                    some(""))),
            some("note")),
        new Components(
            List.of(
                new Components.ComponentLimits(
                    "foot",
                    Optional.empty(),
                    "demo foot",
                    some("D-1"),
                    Optional.empty(),
                    mm("100"),
                    OptionalInt.of(2),
                    OptionalInt.of(4),
                    mm("0"),
                    mm("20"),
                    some("instructions"))),
            some("note")),
        new LegLength(
            List.of(new LegLength.Height("iliac crest", exact("1003"), exact("1009"))),
            mm("5"),
            mm("10"),
            Optional.of(Side.LEFT),
            Optional.of(false),
            some("note")),
        new StandSummary(
            some("foot moved"),
            some("behind the knee"),
            some("barefoot"),
            mm("-3"),
            Optional.of(new TermOrText<>(Optional.of(KneeLock.NOT_LOCKED), "standing")),
            mm("82"),
            Optional.of(BodyMassSource.PLATE),
            mm("45.6"),
            List.of(
                new StandSummary.Found(
                    new LandmarkInPlane(Plane.FRONTAL, Side.RIGHT, "knee centre"),
                    exact("-1.234567"),
                    exact("18.2"),
                    exact("20"),
                    exact("15"),
                    exact("16"),
                    Verdict.OUTSIDE_TOO_CLOSE,
                    "instructions",
                    Optional.of(TermOrText.of(KneeLock.LOCKED)))),
            some("conclusion"),
            some("easy"),
            some("no marks"),
            some("walk"),
            some("note")),
        new Walking(
            List.of(
                new Walking.Observation(
                    TermOrText.of(WalkingDeviation.DROP_OFF),
                    Optional.of(GaitPlane.TRANSVERSE),
                    Optional.of(GaitPhase.MID_STANCE),
                    Optional.of(Severity.SLIGHT),
                    Optional.of(TermOrText.of(WalkingDeviation.DROP_OFF)),
                    Optional.of(TermOrText.of(WalkingDeviation.Reference.TEXTBOOKS))),
                new Walking.Observation(
                    TermOrText.words("limps"),
                    Optional.of(GaitPlane.SAGITTAL),
                    Optional.of(GaitPhase.WHOLE_STRIDE),
                    Optional.of(Severity.MARKED),
                    Optional.of(TermOrText.words("pain")),
                    Optional.of(TermOrText.words("own experience")))),
            OptionalInt.of(6),
            some("light redness"),
            some("medium"),
            some("none"),
            OptionalInt.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            some("note")),
        new ShoeList(
            List.of(
                new ShoeList.Shoe(
                    "boot", exact("15"), OptionalInt.of(6), Optional.of(true), some("note"))),
            some("note")),
        new Acceptance("one stand", "walks well", OptionalInt.of(6), OptionalInt.empty()),
        new OwnSetting("ankle", 3, 2, mm("15"), mm("14"), some("note")),
        new Note("next visit in two weeks"),
        new Erasure("on request", 12));
  }

  private static Optional<String> some(String text) {
    return Optional.of(text).filter(t -> !t.isEmpty());
  }

  private static Optional<BigDecimal> mm(String number) {
    return some(number).map(FrozenEntriesTest::exact);
  }

  /** Zeros behind the last digit are not kept. */
  private static BigDecimal exact(String number) {
    return new BigDecimal(number).stripTrailingZeros();
  }
}
