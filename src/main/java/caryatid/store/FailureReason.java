package caryatid.store;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;

/** Why something failed, in the operating system's words. */
final class FailureReason {
  private FailureReason() {}

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
