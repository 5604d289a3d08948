package caryatid.store;

import caryatid.remark.Argument;
import caryatid.remark.Coded;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** Why something failed, if the operating system has no words for it. */
enum FailureReason implements Coded {
  NO_PERMISSION("FailureReason.NO_PERMISSION"),
  NOT_READ_BACK("FailureReason.NOT_READ_BACK");

  private final String code;

  FailureReason(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** A failure of a file or folder, its reason as the operating system words it. */
  static StoreFailure failure(Path place, StoreProblem what, IOException e) {
    return new StoreFailure(Problem.at(Place.of(place.toString()), what, Argument.text(of(e))));
  }

  /** The reason as the operating system words it. */
  static String of(Throwable failure) {
    Throwable root = failure;
    while (root.getCause() != null && root.getCause() != root) {
      root = root.getCause();
    }
    if (root instanceof AccessDeniedException denied) {
      return "no permission for " + denied.getFile();
    }
    if (root instanceof FileSystemException at && at.getReason() != null) {
      return at.getReason() + ", " + at.getFile();
    }
    return String.valueOf(root.getMessage()).lines().findFirst().orElse("");
  }
}
