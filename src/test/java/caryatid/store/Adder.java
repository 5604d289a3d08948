package caryatid.store;

import caryatid.demo.Invented;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * A program of its own that adds to a store until it is stopped or done, and says each thing once
 * it is confirmed.
 */
final class Adder {
  private static final int STANDS = 2;

  private Adder() {}

  /**
   * {@code records FOLDER SEED} starts record after record, each with a marker and a few stands,
   * erases every third, and takes every third in elsewhere and erases it there; {@code entries
   * FOLDER CODE COUNT SEED} adds stands to one record; {@code killed FOLDER STEP} adds one stand
   * and is killed at that step that changes something on the disk.
   */
  public static void main(String[] args) throws BadInput, StoreFailure, IOException {
    if (args[0].equals("killed")) {
      killed(Path.of(args[1]), Integer.parseInt(args[2]));
      return;
    }
    if (args[0].equals("records")) {
      records(Path.of(args[1]), Integer.parseInt(args[2]));
    } else {
      Store store = Invented.store(Path.of(args[1]));
      entries(store, new RecordCode(args[2]), Integer.parseInt(args[3]), Long.parseLong(args[4]));
    }
  }

  private static void killed(Path clinic, int step) throws BadInput, StoreFailure {
    Faults faults = new Faults();
    Store store = Invented.store(FaultyFiles.of(clinic, faults));
    faults.armToKill(step);
    say("" + store.add(Invented.CODE, Invented.stand(1_000 + step, 20)).number());
  }

  private static void records(Path clinic, int seed) throws BadInput, StoreFailure, IOException {
    Store store = Invented.store(clinic);
    for (int i = 0; ; i++) {
      RecordCode code = new RecordCode("R" + seed + "-" + i);
      store.start(code, Invented.opening());
      say(code + " 1");
      say(code + " " + store.add(code, Invented.note(Marker.of(code))).number());
      for (int stand = 0; stand < STANDS; stand++) {
        say(code + " " + store.add(code, Invented.stand(stand, 200)).number());
      }
      if (i % 3 == 0) {
        unpacked(store, code, clinic);
      } else if (i % 3 == 1) {
        erase(store, code);
        say(code + " erased");
      }
    }
  }

  /** Packs a record, takes it in elsewhere, and erases what was taken in. */
  private static void unpacked(Store store, RecordCode code, Path clinic)
      throws BadInput, StoreFailure, IOException {
    Path zip = Files.createDirectories(Marker.packed(clinic)).resolve(code.text() + ".zip");
    store.pack(code, zip, new BesideRecord(List.of(), Optional.empty()));
    say(code + " packed");
    Store other = Invented.store(Marker.unpacked(clinic));
    other.unpack(zip, "AB");
    say(code + " unpacked");
    erase(other, code);
    say(code + " erased-there");
  }

  static void erase(Store store, RecordCode code) throws BadInput, StoreFailure {
    store.erase(code, OffsetDateTime.now(ZoneId.systemDefault()), "AB", "no longer wanted");
  }

  private static void entries(Store store, RecordCode code, int count, long seed)
      throws BadInput, StoreFailure {
    for (int i = 0; i < count; i++) {
      say(code + " " + store.add(code, Invented.stand(seed + i, 20)).number());
    }
  }

  private static void say(String line) {
    System.out.println(line.replace("RecordCode[text=", "").replace("]", ""));
    System.out.flush();
  }
}
