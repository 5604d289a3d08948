package caryatid.launcher;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.ClassRemapper;
import org.objectweb.asm.commons.SimpleRemapper;

/**
 * A copy of the launcher with just enough beside it, and the tools it may find on its path: those
 * of every system, and a stand-in for Maven that takes a second, counts its calls and puts {@link
 * Echo} where the jar belongs.
 */
record Checkout(Path home, Path tools, String path) {
  static final String REHEARSAL = "caryatid.rehearsal.Rehearsal";

  private static final String[] EVERYWHERE = {
    "cat",
    "cksum",
    "cp",
    "find",
    "grep",
    "head",
    "mkdir",
    "mv",
    "ps",
    "readlink",
    "rm",
    "sed",
    "sh",
    "sleep",
    "touch",
    "wc"
  };
  private static final String MAVEN =
      """
      #!/bin/sh
      echo called >>calls
      sleep 1
      mkdir -p target/fast && cp echo.jar target/fast/caryatid.jar
      """;

  static Checkout in(Path folder, String name) throws IOException {
    Path home = Files.createDirectories(folder.resolve(name));
    Files.copy(Path.of("caryatid"), home.resolve("caryatid"));
    executable(home.resolve("caryatid"));
    Files.writeString(home.resolve("pom.xml"), "<project/>");
    Files.createDirectories(home.resolve("src/main"));
    packEcho(home.resolve("echo.jar"));
    Path tools = Files.createDirectories(folder.resolve("tools"));
    for (String tool : EVERYWHERE) {
      script(tools.resolve(tool), "#!/bin/sh\nPATH=/usr/bin:/bin exec " + tool + " \"$@\"\n");
    }
    return new Checkout(home, tools, tools.toString());
  }

  Path launcher() {
    return home.resolve("caryatid");
  }

  Path target(String name) {
    return home.resolve("target/fast").resolve(name);
  }

  long builds() throws IOException {
    return Files.readAllLines(home.resolve("calls")).size();
  }

  /** Puts Java on the path. */
  Checkout withJava() {
    return new Checkout(home, tools, tools + ":" + Path.of(System.getProperty("java.home"), "bin"));
  }

  /** Puts the stand-in for Maven on the path. */
  Checkout withMaven() throws IOException {
    script(tools.resolve("mvn"), MAVEN);
    return this;
  }

  static Path script(Path file, String text) throws IOException {
    Files.writeString(file, text);
    return executable(file);
  }

  private static Path executable(Path file) {
    if (!file.toFile().setExecutable(true)) {
      throw new IllegalStateException("cannot be made executable: " + file);
    }
    return file;
  }

  /** The stand-in under the name of the class with which the launcher rehearses, for both uses. */
  private static void packEcho(Path jar) throws IOException {
    String own = Type.getInternalName(Echo.class);
    String entry = REHEARSAL.replace('.', '/');
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, REHEARSAL);
    ClassWriter renamed = new ClassWriter(0);
    new ClassReader(Echo.class.getName())
        .accept(
            new ClassRemapper(renamed, new SimpleRemapper(Opcodes.ASM9, Map.of(own, entry))), 0);
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream packed = new JarOutputStream(out, manifest)) {
      packed.putNextEntry(new JarEntry(entry + ".class"));
      packed.write(renamed.toByteArray());
    }
  }
}
