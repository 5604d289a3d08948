package caryatid.recording.workbook;

import caryatid.recording.model.ImportProblem;
import caryatid.remark.Argument;
import java.io.IOException;
import java.util.List;

/** Why a workbook cannot be read. */
public final class WorkbookFault extends IOException {
  private static final long serialVersionUID = 1L;

  private final ImportProblem problem;
  private final transient List<Argument> arguments;

  WorkbookFault(ImportProblem problem, Argument... arguments) {
    super(problem.code());
    this.problem = problem;
    this.arguments = List.of(arguments);
  }

  /** A part that is not as the standard has it. */
  static WorkbookFault damaged(String where) {
    return new WorkbookFault(ImportProblem.WORKBOOK_DAMAGED, Argument.text(where));
  }

  public ImportProblem problem() {
    return problem;
  }

  /** The values its sentence needs. */
  public Argument[] arguments() {
    return arguments.toArray(Argument[]::new);
  }
}
