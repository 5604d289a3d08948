package caryatid.fhir;

import java.io.IOException;
import java.nio.file.Path;

/** A router with a repository in memory, fetched with npm. Skipped where there is no npm. */
class RouterTest extends SendingContract {
  @Override
  SystemProcess system(Path folder) throws IOException, InterruptedException {
    return SystemProcess.router();
  }

  @Override
  boolean remembers() {
    return false;
  }

  @Override
  int putSaysThere() {
    return 1;
  }
}
