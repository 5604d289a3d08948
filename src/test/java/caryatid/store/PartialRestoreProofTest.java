package caryatid.store;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Run;
import caryatid.disk.DurableFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record of which parts came back from an older backup: whatever reads it ends with one. */
@Tag("proof")
class PartialRestoreProofTest {
  private static final int MOST = 200;
  private static final int ENTRIES = 8;

  @TempDir private Path folder;

  @Test
  void everyCommandEndsWithOneOnEveryPartialRestore() throws IOException {
    Path whole = folder.resolve("whole");
    assertThat(
            record(
                    whole,
                    "start",
                    "K7",
                    "--by",
                    "AB",
                    "wearer=K7",
                    "side=right",
                    "level=transtibial")
                .code())
        .isZero();
    for (int i = 2; i <= ENTRIES; i++) {
      assertThat(record(whole, "add", "K7", "note", "--by", "AB", "text=note " + i).code())
          .isZero();
    }
    int count = Integer.getInteger("restores", MOST);
    for (int seed = 0; seed < count; seed++) {
      Path store = folder.resolve("restore-" + seed);
      copy(whole, store);
      String how = restore(store.resolve("records/K7"), new Random(seed));
      judge(store, seed + ": " + how);
      DurableFiles.delete(store);
    }
    System.out.println("Partial restores and forged stores: " + count);
  }

  /** Spoils a record as a restore may. */
  private static String restore(Path object, Random random) throws IOException {
    int version = 1 + random.nextInt(ENTRIES - 2);
    switch (random.nextInt(5)) {
      case 0 -> {
        older(object, version, "inventory.json");
        older(object, version, "inventory.json.sha512");
        return "inventory of version " + version;
      }
      case 1 -> {
        older(object, version, "inventory.json");
        return "inventory without its sum of version " + version;
      }
      case 2 -> {
        for (int i = version + 1; i <= ENTRIES; i++) {
          DurableFiles.delete(object.resolve("v" + i));
        }
        return "no folders after version " + version;
      }
      case 3 -> {
        head(object, "v" + (ENTRIES + 1 + random.nextInt(99_999)));
        return "forged head";
      }
      default -> {
        Path entry;
        try (Stream<Path> all = Files.walk(object.resolve("v" + version))) {
          entry = all.filter(f -> f.endsWith("entry.json")).findFirst().orElseThrow();
        }
        Files.write(entry, new byte[1 + random.nextInt(9)]);
        return "entry of version " + version;
      }
    }
  }

  private static void head(Path object, String version) throws IOException {
    Path inventory = object.resolve("inventory.json");
    String text = Files.readString(inventory);
    String forged = text.replaceFirst("\"head\"\\s*:\\s*\"v8\"", "\"head\":\"" + version + "\"");
    assertThat(forged).isNotEqualTo(text);
    Files.writeString(inventory, forged);
    Files.writeString(
        object.resolve("inventory.json.sha512"),
        Digests.of(Digests.SHA_512, Files.readAllBytes(inventory)) + "  inventory.json\n");
  }

  private static void older(Path object, int version, String file) throws IOException {
    Files.copy(
        object.resolve("v" + version).resolve(file),
        object.resolve(file),
        StandardCopyOption.REPLACE_EXISTING);
  }

  private static void judge(Path store, String how) {
    String out = store.resolve("out.pdf").toString();
    List<Run> runs =
        List.of(
            record(store, "show", "K7"),
            record(store, "compare", "K7", "1", "2"),
            record(store, "report", "K7", "--out", out),
            record(store, "next", "K7", store.resolve("next.yaml").toString()),
            record(store, "since", "K7"),
            record(store, "back", "K7"),
            record(store, "backup", store.resolve("backup").toString()),
            record(store, "verify", "K7"),
            record(store, "pack", "K7", store.resolve("k7.zip").toString()),
            record(store, "add", "K7", "note", "--by", "AB", "text=more"));
    for (Run run : runs) {
      assertThat(run.code()).as(how + run.out() + run.err()).isEqualTo(1);
      assertThat(run.err()).as(how).isNotBlank().doesNotContain("\tat ", "nobody foresaw");
      assertThat(run.out()).as(how).doesNotContain("Added");
    }
  }

  private static Run record(Path store, String command, String... rest) {
    List<String> all = new ArrayList<>(List.of("record", command, "--records", store.toString()));
    all.addAll(List.of(rest));
    return Run.caryatid(all.toArray(String[]::new));
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.toList()) {
        Files.copy(file, to.resolve(from.relativize(file).toString()));
      }
    }
  }
}
