package caryatid.differential;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** One version of the program, in a class loader of its own. */
final class Version implements AutoCloseable {
  /** After everything that samples and docs tell. */
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-12-01T08:00:00Z"), ZoneOffset.UTC);

  private final ClassLoader loader;
  private final Method run;

  private Version(ClassLoader loader) throws ReflectiveOperationException {
    this.loader = loader;
    this.run =
        Class.forName("caryatid.cli.Main", true, loader)
            .getMethod("run", Clock.class, PrintWriter.class, PrintWriter.class, String[].class);
  }

  /** The one on the test's class path. */
  static Version here() throws ReflectiveOperationException {
    return new Version(Version.class.getClassLoader());
  }

  /**
   * The one in a jar, whose libraries lie beside it where its manifest says.
   *
   * @throws IOException if there is no such file
   */
  static Version in(Path jar) throws IOException, ReflectiveOperationException {
    if (!Files.isRegularFile(jar)) {
      throw new IOException("no jar at " + jar.toAbsolutePath());
    }
    URL[] urls = {jar.toUri().toURL()};
    return new Version(new URLClassLoader(urls, ClassLoader.getPlatformClassLoader()));
  }

  /**
   * What a command prints.
   *
   * @param code exit code
   * @param out standard output
   * @param err standard error
   */
  record Printed(int code, String out, String err) {}

  Printed run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Thread thread = Thread.currentThread();
    ClassLoader before = thread.getContextClassLoader();
    thread.setContextClassLoader(loader);
    try {
      Object code = run.invoke(null, CLOCK, new PrintWriter(out), new PrintWriter(err), arguments);
      return new Printed((Integer) code, out.toString(), err.toString());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    } finally {
      thread.setContextClassLoader(before);
    }
  }

  @Override
  public void close() throws IOException {
    if (loader instanceof URLClassLoader jar) {
      jar.close();
    }
  }
}
