package caryatid.store;

import caryatid.recording.model.NamedBytes;
import java.util.List;
import java.util.Optional;

/**
 * What is packed with a record for people who have no such program.
 *
 * @param readMe lines that are read first
 * @param report the record's report, as a PDF
 */
public record BesideRecord(List<String> readMe, Optional<NamedBytes> report) {
  public BesideRecord {
    readMe = List.copyOf(readMe);
  }
}
