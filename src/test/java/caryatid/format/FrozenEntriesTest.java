package caryatid.format;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.entry.Accepted;
import caryatid.entry.Assessment;
import caryatid.entry.BenchAlignment;
import caryatid.entry.BenchItem;
import caryatid.entry.Components;
import caryatid.entry.Content;
import caryatid.entry.Entry;
import caryatid.entry.Erasure;
import caryatid.entry.Footwear;
import caryatid.entry.GaitPlane;
import caryatid.entry.KeptFile;
import caryatid.entry.KneeLock;
import caryatid.entry.Length;
import caryatid.entry.MassFrom;
import caryatid.entry.Named;
import caryatid.entry.Note;
import caryatid.entry.Opening;
import caryatid.entry.OwnSetting;
import caryatid.entry.Phase;
import caryatid.entry.SettingUnit;
import caryatid.entry.Severity;
import caryatid.entry.Stood;
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
  void anEntryOfVersionTwoIsReadAsWhatItSaidAndWrittenAsItWas(Content content) throws IOException {
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

  static Stream<Content> contents() {
    return Stream.of(
        new Opening(
            "K7",
            ProstheticSide.BOTH,
            AmputationLevel.KNEE_DISARTICULATION,
            mm("82.5"),
            OptionalInt.of(3),
            some("note")),
        new Assessment(
            some("none"),
            some("full contact"),
            some("silicone"),
            OptionalInt.of(2),
            some("pin"),
            some("no marks"),
            some("barefoot"),
            mm("20"),
            some("note")),
        new BenchAlignment(
            List.of(
                new BenchAlignment.Item(
                    Named.of(BenchItem.SOCKET_FLEXION),
                    mm("5"),
                    exact("7.25"),
                    SettingUnit.DEG,
                    some("instructions"),
                    some("note")),
                new BenchAlignment.Item(
                    Named.words("pelvis tilt"),
                    mm(""),
                    exact("15"),
                    SettingUnit.NEWTON_METRE,
                    some(""),
                    some("")),
                new BenchAlignment.Item(
                    new Named<>(Optional.of(BenchItem.HEIGHT), "with the shoe"),
                    mm(""),
                    exact("900"),
                    SettingUnit.MM,
                    some(""),
                    some(""))),
            some("note")),
        new Components(
            List.of(
                new Components.Component(
                    "foot",
                    "demo foot",
                    some("D-1"),
                    mm("100"),
                    OptionalInt.of(2),
                    OptionalInt.of(4),
                    mm("0"),
                    mm("20"),
                    some("instructions"))),
            some("note")),
        new Length(
            List.of(new Length.Height("iliac crest", exact("1003"), exact("1009"))),
            mm("5"),
            mm("10"),
            Optional.of(Side.LEFT),
            Optional.of(false),
            some("note")),
        new Stood(
            some("foot moved"),
            some("behind the knee"),
            some("barefoot"),
            mm("-3"),
            Optional.of(new Named<>(Optional.of(KneeLock.NOT_LOCKED), "standing")),
            mm("82"),
            Optional.of(MassFrom.PLATE),
            mm("45.6"),
            List.of(
                new Stood.Found(
                    new LandmarkInPlane(Plane.FRONTAL, Side.RIGHT, "knee centre"),
                    exact("-1.234567"),
                    exact("18.2"),
                    exact("20"),
                    exact("15"),
                    exact("16"),
                    Verdict.OUTSIDE_TOO_CLOSE,
                    "instructions",
                    Optional.of(Named.of(KneeLock.LOCKED)))),
            some("conclusion"),
            some("easy"),
            some("no marks"),
            some("walk"),
            some("note")),
        new Walking(
            List.of(
                new Walking.Observation(
                    Named.of(WalkingDeviation.DROP_OFF),
                    Optional.of(GaitPlane.TRANSVERSE),
                    Optional.of(Phase.MID_STANCE),
                    Optional.of(Severity.SLIGHT),
                    Optional.of(Named.of(WalkingDeviation.DROP_OFF)),
                    Optional.of(Named.of(WalkingDeviation.Source.TEXTBOOKS))),
                new Walking.Observation(
                    Named.words("limps"),
                    Optional.of(GaitPlane.SAGITTAL),
                    Optional.of(Phase.WHOLE_STRIDE),
                    Optional.of(Severity.MARKED),
                    Optional.of(Named.words("pain")),
                    Optional.of(Named.words("own experience")))),
            OptionalInt.of(6),
            some("light redness"),
            some("medium"),
            some("none"),
            some("note")),
        new Footwear(
            List.of(
                new Footwear.Shoe(
                    "boot", exact("15"), OptionalInt.of(6), Optional.of(true), some("note"))),
            some("note")),
        new Accepted("one stand", "walks well", OptionalInt.of(6)),
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
