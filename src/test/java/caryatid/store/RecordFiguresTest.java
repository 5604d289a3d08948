package caryatid.store;

import static caryatid.demo.Invented.CODE;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.cli.Main;
import caryatid.demo.Invented;
import caryatid.fitting.Addition;
import caryatid.fitting.RecordCode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long the commands take in a large store: 1,000 records, and in one of them 100 stands of 60 s
 * at 100 Hz. Whole commands are timed, from the start of the program to its end.
 */
@Tag("figures")
class RecordFiguresTest {
  private static final int RECORDS = Integer.getInteger("records", 1000);
  private static final int STANDS = 100;
  private static final int RUNS = 5;

  @TempDir private Path folder;

  @Test
  void showingALongRecordOfALargeStoreTakesLessThanASecondAndTheHundredthStandAtMostTwiceTheFirst()
      throws Exception {
    Store store = Invented.store(folder.resolve("clinic"));
    for (int i = 1; i < RECORDS; i++) {
      store.start(new RecordCode("R" + i), Invented.opening());
    }
    store.start(CODE, Invented.opening());
    double start = median("--version");
    double first = addStand();
    double[] calls = new double[STANDS - RUNS];
    for (int i = RUNS; i < STANDS; i++) {
      Addition stand = Invented.stand(i, 6000);
      long before = System.nanoTime();
      store.add(CODE, stand);
      calls[i - RUNS] = (System.nanoTime() - before) / 1e6;
    }
    Path pdf = folder.resolve("record.pdf");
    double show = median("record", "show", CODE.text(), "--records", clinic());
    double list = median("record", "list", "--records", clinic());
    double hundredth = addStand();
    double report =
        median(
            "record",
            "report",
            CODE.text(),
            "--replace",
            "--out",
            pdf.toString(),
            "--records",
            clinic());
    double verify = median("record", "verify", CODE.text(), "--records", clinic());
    System.out.printf(
        Locale.ROOT,
        "start %.2f s; show %.2f s; list %.2f s; first stands %.2f s; hundredth %.2f s; report"
            + " %.2f s; verify %.2f s; record %d MB; the call alone, warm: %.0f ms after %d stands,"
            + " %.0f ms after %d%n",
        start,
        show,
        list,
        first,
        hundredth,
        report,
        verify,
        size() / 1_000_000,
        middle(Arrays.copyOfRange(calls, 5, 15)),
        RUNS + 10,
        middle(Arrays.copyOfRange(calls, calls.length - 10, calls.length)),
        STANDS);
    assertThat(show - start).isLessThan(1);
    assertThat(hundredth / first).isLessThanOrEqualTo(2);
  }

  /** The median time of adding a few stands by the command. */
  private double addStand() throws Exception {
    double[] seconds = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      Addition stand = Invented.stand(System.nanoTime(), 6000);
      String[] keep =
          stand.files().stream()
              .flatMap(
                  f -> Stream.of("--keep", f.is().name().toLowerCase(Locale.ROOT) + "=" + put(f)))
              .toArray(String[]::new);
      String[] add = {"record", "add", CODE.text(), "stand", "--by", "AB", "--records", clinic()};
      String[] all = Stream.concat(Arrays.stream(add), Arrays.stream(keep)).toArray(String[]::new);
      seconds[i] = seconds(all);
    }
    return middle(seconds);
  }

  private Path put(Addition.Attached file) {
    try {
      Path path = folder.resolve(file.bytes().name());
      return Files.write(path, file.bytes().open().readAllBytes());
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private String clinic() {
    return folder.resolve("clinic").toString();
  }

  private double median(String... command) throws Exception {
    double[] seconds = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      seconds[i] = seconds(command);
    }
    return middle(seconds);
  }

  private double seconds(String... command) throws Exception {
    long before = System.nanoTime();
    Process process = OtherJvm.start(folder.resolve("said"), Main.class, command);
    assertThat(process.waitFor()).as(String.join(" ", command)).isZero();
    return (System.nanoTime() - before) / 1e9;
  }

  private static double middle(double[] times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private long size() throws Exception {
    try (Stream<Path> files = Files.walk(folder.resolve("clinic/records").resolve(CODE.text()))) {
      return files.filter(Files::isRegularFile).mapToLong(f -> f.toFile().length()).sum();
    }
  }
}
