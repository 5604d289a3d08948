package caryatid.spark;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.stream.Collectors.joining;

import caryatid.remark.BadInput;
import caryatid.report.FindingRow;
import caryatid.report.FindingsCsv;
import caryatid.usecase.Check;
import caryatid.usecase.batch.Batch;
import caryatid.usecase.batch.BatchState;
import caryatid.wording.Wording;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Serializable;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;

/** The states of a list, checked on a cluster: the findings and refusals of {@code batch}. */
public final class BatchJob {
  private static final int STATES_A_TASK = 10;

  private BatchJob() {}

  /** A state's rows, or why it was refused. */
  private record Outcome(String rows, List<String> refused) implements Serializable {}

  /**
   * Checks the states of a list, writes the table and prints what was refused.
   *
   * @param args where the files lie and the table goes, and the name of the list there: a folder,
   *     or what Hadoop has a file system for
   */
  public static void main(String[] args) throws IOException, BadInput {
    try (JavaSparkContext spark = new JavaSparkContext(new SparkConf().setAppName("batch"))) {
      run(spark, args[0], args[1], OffsetDateTime.now().toString()).forEach(System.out::println);
    }
  }

  static List<String> run(JavaSparkContext spark, String folder, String list, String now)
      throws IOException, BadInput {
    int states = states(folder, list).size();
    List<Integer> numbers = IntStream.range(0, states).boxed().toList();
    List<Outcome> all =
        spark
            .parallelize(numbers, Math.max(1, states / STATES_A_TASK))
            .mapPartitions(of -> check(folder, list, now, of))
            .collect();
    try (OutputStream out = new ClusterFiles(folder).create(FindingsCsv.FILE)) {
      out.write(FindingsCsv.table(List.of(), false));
      out.write(all.stream().map(Outcome::rows).collect(joining()).getBytes(UTF_8));
    }
    return all.stream().flatMap(outcome -> outcome.refused().stream()).toList();
  }

  private static List<BatchState> states(String folder, String list) throws BadInput {
    return Batch.states(
        List.of(), List.of(Path.of(list)), Path.of(""), Optional.empty(), new ClusterFiles(folder));
  }

  private static Iterator<Outcome> check(
      String folder, String list, String now, Iterator<Integer> numbers) throws BadInput {
    List<BatchState> states = states(folder, list);
    List<Outcome> outcomes = new ArrayList<>();
    while (numbers.hasNext()) {
      outcomes.add(check(states.get(numbers.next()), new ClusterFiles(folder), now));
    }
    return outcomes.iterator();
  }

  private static Outcome check(BatchState state, ClusterFiles files, String now) {
    try {
      Check.Checked checked = Check.run(state.inputs(files), OffsetDateTime.parse(now));
      byte[] table = FindingsCsv.table(FindingRow.of(state.name(), checked.result()), false);
      int header = FindingsCsv.table(List.of(), false).length;
      return new Outcome(new String(table, UTF_8).substring(header), List.of());
    } catch (BadInput | RuntimeException e) {
      Wording wording = Wording.in(Locale.ENGLISH);
      return new Outcome("", Batch.refusal(state, e).stream().map(wording::say).toList());
    }
  }
}
