package caryatid.store;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Records brought back in part, renamed, copied, linked or forged are damage, whoever reads them.
 */
class ForgedStoreTest {
  private static final String[] INVENTORY = {"inventory.json", "inventory.json.sha512"};

  @TempDir private Path folder;
  private Path root;
  private Path object;

  @BeforeEach
  void aRecordOfSixEntries() {
    Run started =
        record("start", "K7", "--by", "AB", "wearer=K7", "side=right", "level=transtibial");
    assertThat(started.err()).isEmpty();
    for (int i = 2; i <= 6; i++) {
      assertThat(record("add", "K7", "note", "--by", "AB", "text=note " + i).err()).isEmpty();
    }
    root = folder.resolve("records");
    object = root.resolve("K7");
  }

  private Run record(String command, String... rest) {
    List<String> all = new ArrayList<>(List.of("record", command, "--records", folder.toString()));
    all.addAll(List.of(rest));
    return Run.caryatid(all.toArray(String[]::new));
  }

  private void assertDamaged(String code, String named) {
    for (String command : List.of("show", "compare", "next", "report", "verify", "pack", "add")) {
      Run run =
          switch (command) {
            case "compare" -> record(command, code, "1", "2");
            case "next" -> record(command, code, folder.resolve("next.yaml").toString());
            case "report" ->
                record(command, code, "--out", folder.resolve("record.pdf").toString());
            case "pack" -> record(command, code, folder.resolve("packed.zip").toString());
            case "add" -> record(command, code, "note", "--by", "AB", "text=more");
            default -> record(command, code);
          };
      assertThat(run.code()).as(command + run.out() + run.err()).isEqualTo(1);
      assertThat(run.err()).as(command).contains(named).doesNotContain("\tat ");
      assertThat(run.out()).as(command).doesNotContain("Added", "was written", "good order");
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void anInventoryOlderByTwoVersionsOrMore(int version) throws IOException {
    for (String file : INVENTORY) {
      Files.copy(
          object.resolve("v" + version + "/" + file),
          object.resolve(file),
          StandardCopyOption.REPLACE_EXISTING);
    }
    assertDamaged("K7", "K7/inventory.json: lists " + version + " versions, and the record has 6");
  }

  @Test
  void aRenamedFolder() throws IOException {
    Files.move(object, root.resolve("K8"));
    assertDamaged("K8", "K8/inventory.json: belongs to the record K7");
  }

  @Test
  void aCopiedFolder() throws IOException {
    try (Stream<Path> all = Files.walk(object)) {
      for (Path file : all.toList()) {
        Files.copy(file, root.resolve("K9").resolve(object.relativize(file)));
      }
    }
    assertDamaged("K9", "K9/inventory.json: belongs to the record K7");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0=ocfl_1.1", "ocfl_layout.json"})
  void theRootsDeclarationOrLayout(String file) throws IOException {
    for (String text : List.of("ocfl_1.0\n", "{\"extension\": \"0004-hashed-n-tuple\"}", "")) {
      Files.writeString(root.resolve(file), text);
      Run run = record("verify", "K7");
      assertThat(run.code()).isEqualTo(1);
      assertThat(run.err()).contains("records/" + file + ": is not what the program wrote");
    }
    Files.delete(root.resolve(file));
    assertThat(record("verify", "K7").code()).isEqualTo(1);
  }

  @Test
  void aLinkInThePlaceOfAFile() throws IOException {
    Path entry = object.resolve("v2/content/0002-note/entry.json");
    Path elsewhere = folder.resolve("elsewhere.json");
    Files.move(entry, elsewhere);
    Files.createSymbolicLink(entry, elsewhere);
    Run run = record("verify", "K7");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("K7/v2/content/0002-note/entry.json: is a link");
  }

  @Test
  void aForgedHead() throws IOException {
    Path inventory = object.resolve("inventory.json");
    String forged =
        Files.readString(inventory).replace("\"head\" : \"v6\"", "\"head\" : \"v99999\"");
    forged = forged.replace("\"head\":\"v6\"", "\"head\":\"v99999\"");
    assertThat(forged).contains("v99999");
    Files.writeString(inventory, forged);
    Files.writeString(
        object.resolve("inventory.json.sha512"),
        Digests.of(Digests.SHA_512, Files.readAllBytes(inventory)) + "  inventory.json\n");
    assertDamaged("K7", "K7/inventory.json");
  }
}
