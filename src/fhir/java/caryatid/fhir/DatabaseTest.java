package caryatid.fhir;

import java.io.IOException;
import java.nio.file.Path;

/** A server whose store is a database in a file, fetched with Maven: 354 libraries of 407 MB. */
class DatabaseTest extends SendingContract {
  @Override
  SystemProcess system(Path folder) throws IOException, InterruptedException {
    return SystemProcess.database(folder.resolve("store"));
  }

  @Override
  boolean remembers() {
    return true;
  }

  @Override
  int putSaysThere() {
    return 0;
  }
}
