package caryatid.recording.c3d;

import caryatid.recording.model.ImportProblem;
import caryatid.remark.Argument;

/** Why a C3D file, or one plate of it, cannot be used. */
final class C3dFault extends Exception {
  private static final long serialVersionUID = 1;

  private final ImportProblem topic;
  private final transient Argument[] arguments;

  C3dFault(ImportProblem topic, Argument... arguments) {
    super(topic.code(), null, false, false);
    this.topic = topic;
    this.arguments = arguments.clone();
  }

  /** The file is damaged; what is wrong is named as the file's own parameters are. */
  static C3dFault damaged(String what) {
    return new C3dFault(ImportProblem.MOTION_DAMAGED, Argument.text(what));
  }

  ImportProblem topic() {
    return topic;
  }

  Argument[] arguments() {
    return arguments.clone();
  }
}
