import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.jpa.provider.JpaSystemProvider;
import ca.uhn.fhir.jpa.test.config.TestR4Config;
import ca.uhn.fhir.rest.api.EncodingEnum;
import ca.uhn.fhir.rest.server.RestfulServer;
import ca.uhn.fhir.rest.server.provider.ResourceProviderFactory;
import org.apache.commons.dbcp2.BasicDataSource;
import org.eclipse.jetty.ee10.servlet.ServletContextHandler;
import org.eclipse.jetty.ee10.servlet.ServletHolder;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import org.springframework.context.annotation.Configuration;

/**
 * Serves the database in the file that is given, on a free port of this computer, which it prints.
 * What was answered as stored is on the disk.
 */
public final class RecordDatabase {
  private static String file;

  private RecordDatabase() {}

  /** Its makers' settings for tests, but for where it stores and how many connections it takes. */
  @Configuration
  public static class InFile extends TestR4Config {
    @Override
    public void setConnectionProperties(BasicDataSource source) {
      super.setConnectionProperties(source);
      source.setUrl("jdbc:h2:file:" + file + ";WRITE_DELAY=0");
    }
  }

  public static void main(String[] arguments) throws Exception {
    file = arguments[0];
    TestR4Config.ourMaxThreads = 8;
    AnnotationConfigApplicationContext parts = new AnnotationConfigApplicationContext(InFile.class);
    RestfulServer fhir = new RestfulServer(parts.getBean(FhirContext.class));
    fhir.registerProviders(parts.getBean(ResourceProviderFactory.class).createProviders());
    fhir.registerProvider(parts.getBean(JpaSystemProvider.class));
    fhir.setDefaultResponseEncoding(EncodingEnum.JSON);
    Server server = new Server();
    ServerConnector connector = new ServerConnector(server);
    connector.setHost("127.0.0.1");
    server.addConnector(connector);
    ServletContextHandler handler = new ServletContextHandler();
    handler.addServlet(new ServletHolder(fhir), "/fhir/*");
    server.setHandler(handler);
    server.start();
    System.out.println("PORT " + connector.getLocalPort());
  }
}
