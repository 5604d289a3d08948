package caryatid.blackbox;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** Files that an earlier version wrote, taken out of their zips by the JDK alone. */
public final class Frozen {
  public static final Path V1 = Path.of("src/test/resources/caryatid/frozen/v1");

  private Frozen() {}

  static byte[] result(String name) throws IOException {
    try (InputStream in =
        new GZIPInputStream(Files.newInputStream(V1.resolve("results/" + name + ".json.gz")))) {
      return in.readAllBytes();
    }
  }

  /** A store unzipped; gives the folder that {@code --records} names. */
  public static Path store(String name, Path into) throws IOException {
    for (Map.Entry<String, byte[]> file :
        unzipped(V1.resolve("records/" + name + ".zip")).entrySet()) {
      Path path = into.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue());
    }
    return into.resolve("records");
  }

  /** The files in a zip, by their paths. */
  public static Map<String, byte[]> unzipped(Path zip) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        if (!entry.isDirectory()) {
          ByteArrayOutputStream bytes = new ByteArrayOutputStream();
          in.transferTo(bytes);
          files.put(entry.getName(), bytes.toByteArray());
        }
      }
    }
    return files;
  }

  /** Every file below a folder with the sum of its bytes. */
  static Map<String, String> sums(Path folder) throws IOException {
    Map<String, String> sums = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        sums.put(folder.relativize(file).toString(), sum("SHA-256", Files.readAllBytes(file)));
      }
    }
    return sums;
  }

  static String sum(String algorithm, byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance(algorithm).digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new UncheckedIOException(new IOException(e));
    }
  }
}
