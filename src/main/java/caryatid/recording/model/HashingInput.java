package caryatid.recording.model;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/**
 * An input whose bytes are counted and hashed while they are read, so that it is read only once.
 */
public final class HashingInput implements NamedBytes {
  private final NamedBytes input;
  private Optional<HashingStream> opened = Optional.empty();

  public HashingInput(NamedBytes input) {
    this.input = input;
  }

  @Override
  public String name() {
    return input.name();
  }

  @Override
  public InputStream open() throws IOException {
    HashingStream fingerprint = new HashingStream(input.open());
    opened = Optional.of(fingerprint);
    return fingerprint;
  }

  /** What was read since the input was opened. */
  public Provenance provenance() {
    return opened.orElseThrow().provenance(name());
  }
}
