package caryatid.store;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Invented;
import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a program (SIGKILL, where the system has it) at random moments while it starts records,
 * adds stands, erases, packs and takes in; every entry it had confirmed must be there and verify,
 * and nothing half. What is erased is gone from every file, and no file is open to others.
 */
@Tag("proof")
class KillTest {
  private static final int KILLS = Integer.getInteger("kills", 30);
  private static final int LONGEST_MS = 1500;

  @TempDir private Path folder;
  private int erasures;

  @Test
  void whatWasConfirmedSurvivesAKillAndNothingIsHalfThere() throws Exception {
    long seed = System.nanoTime();
    Random random = new Random(seed);
    int settled = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      Path clinic = folder.resolve("clinic-" + kill / 5);
      List<String> confirmed = runAndKill(clinic, kill, random.nextInt(LONGEST_MS));
      String when = "seed " + seed + ", kill " + kill;
      List<Path> open = new ArrayList<>(Marker.openToOthers(clinic));
      open.addAll(Marker.openToOthers(Marker.unpacked(clinic)));
      assertThat(open).as(when).isEmpty();
      settled += check(Invented.store(clinic), "R" + kill + "-", confirmed, when);
      for (String line : confirmed) {
        erased(clinic, new RecordCode(line.split(" ")[0]), line.split(" ")[1], when);
      }
    }
    System.out.println(
        KILLS
            + " kills, seed "
            + seed
            + ": "
            + settled
            + " records with an addition in the making, "
            + erasures
            + " taken in elsewhere and erased");
  }

  private List<String> runAndKill(Path clinic, int kill, int afterMs) throws Exception {
    Path said = folder.resolve("said-" + kill);
    Process program = OtherJvm.start(said, Adder.class, "records", clinic.toString(), "" + kill);
    // A third are killed in the first steps, where the store itself is made.
    while (kill % 3 > 0 && Files.size(said) == 0 && program.isAlive()) {
      Thread.sleep(1);
    }
    Thread.sleep(afterMs);
    program.destroyForcibly().waitFor();
    String lines = Files.readString(said);
    // What comes after the last line's end was not said to the end.
    return lines.substring(0, lines.lastIndexOf('\n') + 1).lines().toList();
  }

  /**
   * What was erased, or is erased now, is nowhere; what was being taken in can be taken in again.
   */
  private void erased(Path clinic, RecordCode code, String said, String when) throws Exception {
    if (said.equals("erased")) {
      assertThat(Marker.in(clinic, code)).as(when).isEmpty();
    } else if (said.equals("erased-there")) {
      assertThat(Marker.in(Marker.unpacked(clinic), code)).as(when).isEmpty();
    } else if (said.equals("packed")) {
      Store other = Invented.store(Marker.unpacked(clinic));
      if (!other.codes().contains(code.text())) {
        other.unpack(Marker.packed(clinic).resolve(code.text() + ".zip"), "AB");
      }
      assertThat(other.verify(code)).as(when).isEmpty();
      if (!other.open(code).record().isErased()) {
        assertThat(Marker.in(Marker.unpacked(clinic), code)).as(when).isNotEmpty();
        Adder.erase(other, code);
      }
      assertThat(Marker.in(Marker.unpacked(clinic), code)).as(when).isEmpty();
      erasures++;
    }
  }

  private static int check(Store store, String lead, List<String> confirmed, String when)
      throws BadInput, StoreFailure {
    int unsettled = 0;
    List<String> codes = store.codes().stream().filter(c -> c.startsWith(lead)).toList();
    for (String code : codes) {
      RecordCode record = new RecordCode(code);
      List<String> said =
          confirmed.stream()
              .filter(l -> l.startsWith(code + " "))
              .map(l -> l.split(" ")[1])
              .toList();
      assertThat(store.verify(record)).as(when + ", " + code).isEmpty();
      unsettled += check(store.open(record), said, when) ? 1 : 0;
    }
    for (String line : confirmed) {
      assertThat(codes).as(when).contains(line.split(" ")[0]);
    }
    return unsettled;
  }

  private static boolean check(StoredRecord stored, List<String> said, String when)
      throws BadInput, StoreFailure {
    FittingRecord record = stored.record();
    if (said.contains("erased")) {
      assertThat(record.isErased()).as(when).isTrue();
    }
    if (record.isErased() || said.isEmpty()) {
      return false;
    }
    int confirmed =
        said.stream().filter(l -> l.matches("\\d+")).mapToInt(Integer::parseInt).max().orElse(0);
    assertThat(record.entries()).as(when).hasSizeBetween(confirmed, confirmed + 1);
    for (Entry entry : record.entries()) {
      for (KeptFile file : entry.files()) {
        stored.bytes(entry, file);
      }
    }
    return record.size() > confirmed;
  }
}
