package caryatid.store;

import caryatid.fitting.RecordCode;
import io.ocfl.api.exception.OcflJavaException;
import io.ocfl.core.storage.common.Listing;
import io.ocfl.core.storage.common.Storage;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/**
 * A record's files in a storage, as bytes.
 *
 * @param storage where all records lie
 * @param code the record
 */
record ObjectFiles(Storage storage, RecordCode code) {
  static final String INVENTORY = "inventory.json";
  static final String SUM = "inventory.json.sha512";

  /** An inventory that its sum file vouches for. */
  record Vouched(Inventory inventory, String sum) {}

  InputStream open(String path) throws IOException {
    try {
      return storage.read(code.text() + "/" + path);
    } catch (OcflJavaException e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  byte[] bytes(String path) throws IOException {
    try (InputStream stream = open(path)) {
      return stream.readAllBytes();
    }
  }

  /** The numbers of the versions whose folders are there, in no order. */
  List<Integer> versions() throws IOException {
    try {
      return storage.listDirectory(code.text()).stream()
          .filter(Listing::isDirectory)
          .map(Listing::getRelativePath)
          .filter(name -> name.matches("v[1-9]\\d{0,6}"))
          .map(name -> Integer.valueOf(name.substring(1)))
          .toList();
    } catch (OcflJavaException e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  /**
   * The inventory in a folder of the record.
   *
   * @param folder the folder's path with a slash at its end; empty for the record's own
   * @throws IOException if it cannot be read, or its sum file holds another sum
   */
  Vouched inventory(String folder) throws IOException {
    byte[] json = bytes(folder + INVENTORY);
    String sum = sum(bytes(folder + SUM));
    if (!sum.equals(Digests.of(Digests.SHA_512, json))) {
      throw new IOException(folder + INVENTORY + " is not what " + folder + SUM + " says");
    }
    return new Vouched(Inventory.parse(json), sum);
  }

  /**
   * The sum in a sum file.
   *
   * @throws IOException if it holds none
   */
  static String sum(byte[] bytes) throws IOException {
    String text = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1);
    if (!text.matches("[0-9a-f]{128}[ \\t]+inventory\\.json\\n?")) {
      throw new IOException("no sum file");
    }
    return text.substring(0, 128);
  }
}
