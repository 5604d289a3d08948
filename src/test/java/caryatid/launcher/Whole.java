package caryatid.launcher;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;

/** A copy of the launcher with the whole program: as in a checkout that was built. */
final class Whole {
  private Whole() {}

  /** A checkout whose stand-in for Maven puts the program's jar, and its libraries, in place. */
  static Checkout in(Path folder) throws IOException {
    Checkout checkout = Checkout.in(folder, "whole").withJava();
    Path lib = Files.createDirectories(checkout.home().resolve("lib"));
    List<String> path = new ArrayList<>();
    for (String part : System.getProperty("java.class.path").split(File.pathSeparator)) {
      if (part.endsWith(".jar")) {
        Path library = Path.of(part);
        Files.copy(library, lib.resolve(library.getFileName()));
        path.add("lib/" + library.getFileName());
      }
    }
    pack(
        Path.of(
            caryatid.cli.Main.class.getProtectionDomain().getCodeSource().getLocation().getPath()),
        checkout.home().resolve("program.jar"),
        String.join(" ", path));
    copy(Path.of("sample-recordings/k7"), checkout.home().resolve("sample-recordings/k7"));
    Checkout.script(
        checkout.tools().resolve("mvn"),
        """
        #!/bin/sh
        mkdir -p target/fast/lib && cp lib/* target/fast/lib && cp program.jar target/fast/caryatid.jar
        """);
    return checkout;
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    for (Path file : files(from)) {
      Files.copy(file, to.resolve(file.getFileName()));
    }
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> found = Files.walk(folder)) {
      return found.filter(Files::isRegularFile).toList();
    }
  }

  private static void pack(Path classes, Path jar, String libraries) throws IOException {
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, "caryatid.cli.Main");
    manifest.getMainAttributes().put(Attributes.Name.CLASS_PATH, libraries);
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream packed = new JarOutputStream(out, manifest)) {
      for (Path file : files(classes)) {
        packed.putNextEntry(new JarEntry(classes.relativize(file).toString()));
        Files.copy(file, packed);
      }
    }
  }
}
