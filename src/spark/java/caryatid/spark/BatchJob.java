package caryatid.spark;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.remark.BadInput;
import caryatid.report.FindingRow;
import caryatid.report.FindingsCsv;
import caryatid.usecase.Check;
import caryatid.usecase.batch.Batch;
import caryatid.usecase.batch.BatchState;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;

/** The states of a list, checked on a cluster: the findings of {@code batch}, row for row. */
public final class BatchJob {
  private static final int STATES_A_TASK = 10;

  private BatchJob() {}

  /**
   * Checks the states of a list.
   *
   * @param args where the files lie and the table goes, and the name of the list there: a folder,
   *     or what Hadoop has a file system for
   */
  public static void main(String[] args) throws IOException, BadInput {
    try (JavaSparkContext spark = new JavaSparkContext(new SparkConf().setAppName("batch"))) {
      run(spark, args[0], args[1], OffsetDateTime.now().toString());
    }
  }

  static void run(JavaSparkContext spark, String folder, String list, String now)
      throws IOException, BadInput {
    int states = states(folder, list).size();
    List<Integer> numbers = IntStream.range(0, states).boxed().toList();
    int tasks = Math.max(1, states / STATES_A_TASK);
    List<String> rows =
        spark
            .parallelize(numbers, tasks)
            .mapPartitions(of -> rows(folder, list, now, of))
            .collect();
    try (OutputStream out = new ClusterFiles(folder).create(FindingsCsv.FILE)) {
      out.write(FindingsCsv.table(List.of(), false));
      out.write(String.join("", rows).getBytes(UTF_8));
    }
  }

  private static List<BatchState> states(String folder, String list) throws BadInput {
    return Batch.states(
        List.of(), List.of(Path.of(list)), Path.of(""), Optional.empty(), new ClusterFiles(folder));
  }

  /** Each state's rows; one that is refused has none, as in {@code batch}. */
  private static Iterator<String> rows(
      String folder, String list, String now, Iterator<Integer> numbers) throws BadInput {
    ClusterFiles files = new ClusterFiles(folder);
    List<BatchState> states = states(folder, list);
    List<String> rows = new ArrayList<>();
    int header = FindingsCsv.table(List.of(), false).length;
    while (numbers.hasNext()) {
      BatchState state = states.get(numbers.next());
      try {
        Check.Checked checked = Check.run(state.inputs(files), OffsetDateTime.parse(now));
        List<FindingRow> found = FindingRow.of(state.name(), checked.result());
        rows.add(new String(FindingsCsv.table(found, false), UTF_8).substring(header));
      } catch (BadInput | RuntimeException refused) {
        rows.add("");
      }
    }
    return rows.iterator();
  }
}
