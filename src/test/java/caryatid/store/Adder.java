package caryatid.store;

import caryatid.demo.Invented;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;

/**
 * A program of its own that adds to a store until it is stopped or done, and says each thing once
 * it is confirmed.
 */
final class Adder {
  private static final int STANDS = 6;

  private Adder() {}

  /**
   * {@code records FOLDER SEED} starts record after record, each with a few stands, and erases
   * every third; {@code entries FOLDER CODE COUNT SEED} adds stands to one record; {@code killed
   * FOLDER STEP} adds one stand and is killed at that step that changes something on the disk.
   */
  public static void main(String[] args) throws BadInput, StoreFailure {
    if (args[0].equals("killed")) {
      killed(Path.of(args[1]), Integer.parseInt(args[2]));
      return;
    }
    Store store = Invented.store(Path.of(args[1]));
    if (args[0].equals("records")) {
      records(store, Integer.parseInt(args[2]));
    } else {
      entries(store, new RecordCode(args[2]), Integer.parseInt(args[3]), Long.parseLong(args[4]));
    }
  }

  private static void killed(Path clinic, int step) throws BadInput, StoreFailure {
    Faults faults = new Faults();
    Store store = Invented.store(FaultyFiles.of(clinic, faults));
    faults.armToKill(step);
    say("" + store.add(Invented.CODE, Invented.stand(1_000 + step, 20)).number());
  }

  private static void records(Store store, int seed) throws BadInput, StoreFailure {
    for (int i = 0; ; i++) {
      RecordCode code = new RecordCode("R" + seed + "-" + i);
      store.start(code, Invented.opening());
      say(code + " 1");
      for (int stand = 0; stand < STANDS; stand++) {
        say(code + " " + store.add(code, Invented.stand(stand, 200)).number());
      }
      if (i % 3 == 2) {
        store.erase(code, OffsetDateTime.now(ZoneId.systemDefault()), "AB", "no longer wanted");
        say(code + " erased");
      }
    }
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
