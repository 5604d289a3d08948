package caryatid.recording.table;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.ExportLayout;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines with quotes that nothing closes: how much work it is to see that they are no table. */
class UnclosedQuotesTest {
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  /** What one parser of the CSV library takes at most; each line was given to 20 of them. */
  private static final long PARSER_BYTES = 25_000;

  @Test
  void aQuoteThatOpensALineAndIsNeverClosedNeedsNoParser() {
    assertThat(bytesALine("\",367.16,17.030,-2.936")).isLessThan(PARSER_BYTES / 5);
  }

  @Test
  void aLineThatTheParserRefusesIsGivenToOneOfEachDelimiterForRowsAndForNames() {
    assertThat(bytesALine("\"a\"b,367.16,17.030,-2.936")).isLessThan(7 * PARSER_BYTES);
  }

  @Test
  void suchALineIsOneCell() {
    for (Delimiter delimiter : List.of(Delimiter.TAB, Delimiter.SEMICOLON, Delimiter.COMMA)) {
      assertThat(delimiter.split(" \"a,b;c\td ")).containsExactly("\"a,b;c\td");
      assertThat(delimiter.split("\"a\"b,1;2\t3")).containsExactly("\"a\"b,1;2\t3");
    }
    assertThat(Delimiter.COMMA.split("5\" pipe,3")).containsExactly("5\" pipe", "3");
    assertThat(Delimiter.COMMA.split("\"a,b\",3")).containsExactly("a,b", "3");
  }

  private static long bytesALine(String line) {
    List<String> lines = Collections.nCopies(HeadFinder.LOOK_AHEAD, line);
    HeadFinder finder = new HeadFinder(ExportLayout.UNSTATED, "export.csv");
    seek(finder, lines);
    long before = THREADS.getCurrentThreadAllocatedBytes();
    seek(finder, lines);
    return (THREADS.getCurrentThreadAllocatedBytes() - before) / lines.size();
  }

  private static void seek(HeadFinder finder, List<String> lines) {
    assertThat(finder.find(lines, 1, false)).isEmpty();
    assertThat(finder.namesAlone(lines)).isEmpty();
  }
}
