package caryatid.spark;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.cli.Main;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The job on a cluster of two worker processes, against {@code batch} on the same list. */
class BatchJobTest {
  private static final int STATES = Integer.getInteger("states", 60);
  private static final Path SAMPLES = Path.of("sample-recordings", "k7");

  @TempDir private Path folder;
  private JavaSparkContext spark;
  private List<String> refused = List.of();
  private final StringWriter said = new StringWriter();

  /** Every state has a wearer of its own; every tenth sheet is none. */
  @BeforeEach
  void writeStates() throws IOException {
    for (String file : List.of("barefoot-1.csv", "barefoot-2.csv", "plate.yaml")) {
      Files.copy(SAMPLES.resolve(file), folder.resolve(file));
    }
    String sheet = Files.readString(SAMPLES.resolve("barefoot.yaml"));
    for (int i = 0; i < STATES; i++) {
      String own = i % 10 == 9 ? "no: sheet" : sheet.replace("wearer: K7", "wearer: W" + i);
      Files.writeString(folder.resolve("s" + i + ".yaml"), own);
    }
    Files.writeString(
        folder.resolve("list.csv"),
        IntStream.range(0, STATES)
            .mapToObj(i -> "s" + i + ",barefoot-" + (i % 2 + 1) + ".csv,s" + i + ".yaml,plate.yaml")
            .collect(Collectors.joining("\n", "state,recording,sheet,plate\n", "\n")));
  }

  @BeforeEach
  void startTheCluster() throws IOException {
    Files.createDirectories(Path.of(System.getenv("SPARK_HOME"), "jars"));
    spark =
        new JavaSparkContext(
            new SparkConf()
                .setAppName("batch")
                .setMaster("local-cluster[2,1,1024]")
                .set("spark.ui.enabled", "false")
                .set("spark.executor.memory", "512m")
                .set("spark.executor.extraClassPath", System.getProperty("java.class.path")));
  }

  @AfterEach
  void stopTheCluster() {
    spark.close();
  }

  /** The processes in which the workers check. */
  private static List<ProcessHandle> workers() {
    return ProcessHandle.current()
        .descendants()
        .filter(process -> process.info().command().orElse("").endsWith("java"))
        .toList();
  }

  private String fromTheCluster() throws Exception {
    refused = BatchJob.run(spark, folder.toString(), "list.csv", OffsetDateTime.now().toString());
    return Files.readString(folder.resolve("findings.csv"));
  }

  private String fromBatch() throws IOException {
    Path out = folder.resolve("out");
    PrintWriter terminal = new PrintWriter(said);
    String list = folder.resolve("list.csv").toString();
    Main.run(terminal, terminal, "batch", "--list", list, "--out", out.toString());
    return Files.readString(out.resolve("findings.csv"));
  }

  @Test
  void theRowsAreThoseOfBatch() throws Exception {
    String rows = fromTheCluster();

    assertThat(workers()).hasSize(2);
    assertThat(rows).isEqualTo(fromBatch());
    assertThat(rows.lines().count()).isGreaterThan(STATES);
  }

  /**
   * A problem stands on a line of its own, indented, behind the state's; the cluster has no folder.
   */
  @Test
  void refusalsAreThoseOfBatch() throws Exception {
    fromTheCluster();
    fromBatch();

    assertThat(said.toString().lines().filter(line -> line.startsWith("  ")))
        .map(line -> line.strip().replace(folder + "/", ""))
        .isEqualTo(refused)
        .hasSizeGreaterThanOrEqualTo(STATES / 10);
  }

  @Test
  void aWorkerThatIsKilledLosesNothing() throws Exception {
    AtomicInteger killed = new AtomicInteger();
    Thread killer =
        new Thread(
            () -> {
              while (spark.statusTracker().getActiveStageIds().length == 0) {
                Thread.onSpinWait();
              }
              workers().stream()
                  .limit(1)
                  .forEach(w -> killed.addAndGet(w.destroyForcibly() ? 1 : 0));
            });
    killer.start();

    String rows = fromTheCluster();

    killer.join();
    assertThat(killed).hasValue(1);
    assertThat(rows).isEqualTo(fromBatch());
  }
}
