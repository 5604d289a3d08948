package caryatid.usecase.batch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BatchListTest {
  private static List<BatchState> states(String text) throws BadInput {
    NamedBytes bytes = NamedBytes.of("list.csv", text.getBytes(UTF_8));
    return BatchList.states(Path.of("lists/list.csv"), bytes, Optional.empty());
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";"})
  void rowsOfOneNameAreStandsOfOneState(String mark) throws Exception {
    String text =
        """
        \uFEFFstate,recording,sheet,plate
        K7/bare,a.csv,s.yaml,p.yaml
        K7/shoe,c.csv,t.yaml,

        K7/bare,b.csv,s.yaml,p.yaml
        """
            .replace(",", mark);
    List<BatchState> states = states(text);
    assertThat(states).extracting(BatchState::name).containsExactly("K7/bare", "K7/shoe");
    assertThat(states.get(0).recordings())
        .containsExactly(Path.of("lists/a.csv"), Path.of("lists/b.csv"));
    assertThat(states.get(0).plate()).contains(Path.of("lists/p.yaml"));
    assertThat(states.get(1).plate()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "no sheet column | state,recording | LIST_COLUMNS",
        "a name twice | state,state,recording,sheet | LIST_COLUMNS",
        "nothing | '' | NOTHING_FOUND",
        "an empty line | ' ' | NOTHING_FOUND",
        "a blank cell | state,recording,sheet/a,,s.yaml | LIST_ROW",
        "a short row | state,recording,sheet/a,b.csv | LIST_ROW",
        "out of the folder | state,recording,sheet/../a,b.csv,s.yaml | LIST_NAME",
        "a root | state,recording,sheet//a,b.csv,s.yaml | LIST_NAME",
        "a drive | state,recording,sheet/C:a,b.csv,s.yaml | LIST_NAME",
        "two sheets | state,recording,sheet/a,b.csv,s.yaml/a,c.csv,t.yaml | LIST_DIFFERS"
      })
  void aListThatCannotBeMeantIsRefused(String slip, String rows, String topic) {
    String text = rows.replace("//", "\n\u0001").replace("/", "\n").replace("\n..\n", "\n../");
    assertThatThrownBy(() -> states(text.replace("\u0001", "/")))
        .as(slip)
        .isInstanceOfSatisfying(
            BadInput.class,
            e -> assertThat(e.problems().get(0).topic().code()).isEqualTo("BatchProblem." + topic));
  }

  @Test
  void columnsThatAreThereAreNamedAlsoWhereOneIsThereTwice() {
    assertThatThrownBy(() -> states("state,state,recording,sheet\n"))
        .isInstanceOfSatisfying(
            BadInput.class,
            e ->
                assertThat(e.problems())
                    .containsExactly(
                        Problem.at(
                            Place.of("lists/list.csv"),
                            BatchProblem.LIST_COLUMNS,
                            Argument.text("state,state,recording,sheet"))));
  }

  @Test
  void aRefusedRowIsNamedByItsLine() {
    assertThatThrownBy(() -> states("state,recording,sheet\na,b.csv,s.yaml\nc,,s.yaml\n"))
        .isInstanceOfSatisfying(
            BadInput.class, e -> assertThat(e.problems().get(0).place().line()).hasValue(3));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a//b", "a/", "a/../b", "a/.", "a.", "a ."})
  void aNameThatADiskReadsDifferentlyIsRefused(String name) {
    assertThatThrownBy(() -> states("state,recording,sheet\n" + name + ",b.csv,s.yaml\n"))
        .isInstanceOfSatisfying(
            BadInput.class,
            e ->
                assertThat(e.problems().get(0).topic().code()).isEqualTo("BatchProblem.LIST_NAME"));
  }
}
