package caryatid.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class CompletionCommandTest {
  @Test
  void theScriptKnowsCommandsBelowCommandsAndTheirOptions() {
    StringWriter out = new StringWriter();

    int code = Main.run(new PrintWriter(out), new PrintWriter(new StringWriter()), "completion");

    assertThat(code).isZero();
    assertThat(out.toString())
        .contains("check inspect batch record clinic plate open completion")
        .contains("_picocli_caryatid_record_compare()")
        .contains("'--at-a-time'");
  }
}
