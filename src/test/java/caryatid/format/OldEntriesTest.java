package caryatid.format;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Frozen;
import caryatid.entry.BenchAlignment;
import caryatid.entry.BenchItem;
import caryatid.entry.Entry;
import caryatid.entry.KneeLock;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.entry.Walking;
import caryatid.entry.WalkingDeviation;
import caryatid.remark.Coded;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Entries of version 1, as version 0.1.0 wrote them in four languages, are read as codes. */
class OldEntriesTest {
  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void everyUsualItemAndDeviationOfEachLanguageIsATerm(String language) throws IOException {
    Set<BenchItem> items = EnumSet.noneOf(BenchItem.class);
    Set<String> own = new TreeSet<>();
    Set<WalkingDeviation> seen = EnumSet.noneOf(WalkingDeviation.class);
    for (Entry entry : entries(language)) {
      if (entry.content() instanceof BenchAlignment bench) {
        for (BenchAlignment.Item row : bench.items()) {
          row.item().code().ifPresentOrElse(items::add, () -> own.add(row.item().text()));
        }
      } else if (entry.content() instanceof Walking walking) {
        for (Walking.Observation row : walking.observations()) {
          if (row.deviation().code().isPresent()) {
            seen.add(deviation(row));
          } else {
            own.add(row.deviation().text());
          }
        }
      }
    }
    assertThat(own).containsExactly("own deviation", "own item");
    Set<BenchItem> usual = ofVersion1(BenchItem.values());
    usual.remove(BenchItem.HIP_JOINT_FORWARD);
    assertThat(items).isNotEmpty().isEqualTo(usual);
    assertThat(seen).isNotEmpty().isEqualTo(ofVersion1(WalkingDeviation.values()));
  }

  /** Those of which version 1 had words; others were added later. */
  private static <E extends Enum<E> & Coded> Set<E> ofVersion1(E[] terms) throws IOException {
    try (InputStream in = KnownWords.class.getResourceAsStream("words-1.txt")) {
      String words = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return Stream.of(terms)
          .filter(term -> words.lines().anyMatch(line -> line.startsWith(term.code() + " = ")))
          .collect(Collectors.toCollection(() -> EnumSet.noneOf(terms[0].getDeclaringClass())));
    }
  }

  private static WalkingDeviation deviation(Walking.Observation seen) {
    WalkingDeviation deviation = seen.deviation().code().orElseThrow();
    assertThat(seen.pointsTo()).contains(TermOrText.of(deviation));
    assertThat(seen.source()).contains(TermOrText.of(deviation.source()));
    assertThat(seen.plane()).contains(deviation.plane());
    assertThat(seen.phase()).contains(deviation.phase());
    return deviation;
  }

  @Test
  void whetherAKneeWasLockedIsATermAndItsModeStaysWords() throws IOException {
    List<TermOrText<KneeLock>> modes = new ArrayList<>();
    for (Entry entry : entries("de")) {
      if (entry.content() instanceof StandSummary stood) {
        stood.kneeMode().ifPresent(modes::add);
      }
    }
    assertThat(modes)
        .containsOnlyOnce(new TermOrText<>(Optional.of(KneeLock.NOT_LOCKED), "standing"))
        .anyMatch(mode -> mode.is(KneeLock.LOCKED));
  }

  @Test
  void aRecordThatMixesLanguagesHasOneItemAndOneDeviation() throws IOException {
    List<TermOrText<BenchItem>> items = new ArrayList<>();
    List<TermOrText<WalkingDeviation>> deviations = new ArrayList<>();
    for (Entry entry : entries("mixed")) {
      if (entry.content() instanceof BenchAlignment bench) {
        bench.items().forEach(row -> items.add(row.item()));
      } else if (entry.content() instanceof Walking walking) {
        walking.observations().forEach(o -> deviations.add(o.deviation()));
      }
    }
    TermOrText<BenchItem> flexion = TermOrText.of(BenchItem.SOCKET_FLEXION);
    TermOrText<BenchItem> height = TermOrText.of(BenchItem.HEIGHT);
    assertThat(items).containsExactly(flexion, flexion, flexion, height, height);
    assertThat(deviations).hasSize(4).containsOnly(deviations.get(0));
    assertThat(deviations.get(0).is(WalkingDeviation.KNEE_KEPT_EXTENDED)).isTrue();
  }

  /** In the order in which they were added. */
  private static List<Entry> entries(String store) throws IOException {
    List<Entry> entries = new ArrayList<>();
    for (Map.Entry<String, byte[]> file :
        Frozen.unzipped(Frozen.V1.resolve("records/" + store + ".zip")).entrySet()) {
      if (file.getKey().endsWith("/entry.json")) {
        EntryReading read = EntryJson.read(file.getValue(), file.getKey());
        assertThat(read).as(file.getKey()).isInstanceOf(EntryReading.Done.class);
        entries.add(((EntryReading.Done) read).entry());
      }
    }
    entries.sort(java.util.Comparator.comparingInt(Entry::number));
    return entries;
  }
}
