package caryatid.exchange;

import caryatid.remark.Argument;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.sheet.yaml.InputValue;
import java.io.IOException;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpConnectTimeoutException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import javax.net.ssl.SSLException;

/**
 * A clinic's system that speaks HL7 FHIR R4. Its certificate is checked as the computer's own rules
 * want it, no other address is followed, and nothing that it answers is repeated to anybody.
 */
final class FhirServer {
  private static final String JSON = "application/fhir+json";
  private static final int LEAST_LIMIT = 16 << 20;

  private final ServerAddress address;
  private final Optional<AccessToken> token;
  private final Duration patience;
  private final HttpClient client;

  /**
   * @param patience how long one answer may take, to its end
   */
  FhirServer(ServerAddress address, Optional<AccessToken> token, Duration patience) {
    this.address = address;
    this.token = token;
    this.patience = patience;
    this.client =
        HttpClient.newBuilder()
            .followRedirects(HttpClient.Redirect.NEVER)
            .version(HttpClient.Version.HTTP_1_1)
            .connectTimeout(patience)
            .build();
  }

  /**
   * The resources of a type with an identifier. It is asked for in the body, because addresses are
   * written into logs.
   */
  List<InputValue> search(String type, String query) throws StoreFailure {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(address.at(type + "/_search"))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(query, StandardCharsets.US_ASCII));
    return FhirTree.items(read(ask(request, LEAST_LIMIT), "Bundle"), "entry").stream()
        .flatMap(entry -> FhirTree.at(entry, "resource").stream())
        .filter(found -> FhirTree.text(found, "resourceType").equals(Optional.of(type)))
        .toList();
  }

  /** Sends a transaction, and gives what became of each of its entries. */
  List<InputValue> transact(byte[] bundle) throws StoreFailure {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(address.at(""))
            .header("Content-Type", JSON + "; charset=utf-8")
            .POST(HttpRequest.BodyPublishers.ofByteArray(bundle));
    int most = (int) Math.min(Integer.MAX_VALUE - 8L, LEAST_LIMIT + 2L * bundle.length);
    return FhirTree.items(read(ask(request, most), "Bundle"), "entry").stream().toList();
  }

  /** A resource as it is stored. */
  InputValue stored(String type, String id, int most) throws StoreFailure {
    return read(ask(HttpRequest.newBuilder(address.at(type + "/" + id)), most), type);
  }

  private InputValue read(byte[] body, String type) throws StoreFailure {
    try {
      return FhirTree.read(body, type);
    } catch (IOException e) {
      throw failure(ExchangeProblem.NOT_UNDERSTOOD);
    }
  }

  private byte[] ask(HttpRequest.Builder builder, int most) throws StoreFailure {
    builder.header("Accept", JSON).timeout(patience);
    token.ifPresent(t -> builder.header("Authorization", "Bearer " + t.text()));
    CompletableFuture<HttpResponse<byte[]>> asked =
        client.sendAsync(builder.build(), answer -> new LimitedBody(most));
    try {
      HttpResponse<byte[]> answer = asked.get(patience.toMillis(), TimeUnit.MILLISECONDS);
      requireDone(answer);
      return answer.body();
    } catch (ExecutionException e) {
      throw failure(reason(e.getCause()));
    } catch (TimeoutException e) {
      asked.cancel(true);
      throw failure(ExchangeProblem.TOO_SLOW, Argument.count(patience.toSeconds()));
    } catch (InterruptedException e) {
      asked.cancel(true);
      Thread.currentThread().interrupt();
      throw failure(ExchangeProblem.BROKEN_OFF);
    }
  }

  private static ExchangeProblem reason(Throwable failure) {
    if (failure instanceof ConnectException || failure instanceof HttpConnectTimeoutException) {
      return ExchangeProblem.UNREACHABLE;
    }
    return failure instanceof SSLException
        ? ExchangeProblem.NOT_TRUSTED
        : ExchangeProblem.BROKEN_OFF;
  }

  private void requireDone(HttpResponse<byte[]> answer) throws StoreFailure {
    int status = answer.statusCode();
    Argument number = Argument.text(Integer.toString(status));
    if (status / 100 == 3) {
      throw failure(ExchangeProblem.ELSEWHERE, Argument.text(host(answer)));
    }
    if (status == 401 || status == 403) {
      throw failure(ExchangeProblem.NOT_LET_IN, number);
    }
    if (status / 100 == 5 || status == 429) {
      throw failure(ExchangeProblem.SYSTEM_FAILED, number);
    }
    if (status / 100 != 2) {
      throw failure(ExchangeProblem.REFUSED, number, Argument.text(codes(answer.body())));
    }
  }

  private static String host(HttpResponse<byte[]> answer) {
    try {
      return answer.headers().firstValue("Location").map(URI::create).map(URI::getHost).orElse("?");
    } catch (IllegalArgumentException e) {
      return "?";
    }
  }

  /** The codes alone of what is wrong: its words may quote the patient. */
  private static String codes(byte[] body) {
    try {
      String codes =
          FhirTree.items(FhirTree.read(body, "OperationOutcome"), "issue").stream()
              .flatMap(issue -> FhirTree.text(issue, "code").stream())
              .filter(code -> code.matches("[a-z-]{1,30}"))
              .distinct()
              .collect(Collectors.joining(", "));
      return codes.isEmpty() ? "?" : codes;
    } catch (IOException e) {
      return "?";
    }
  }

  StoreFailure failure(ExchangeProblem why, Argument... arguments) {
    return new StoreFailure(Problem.at(address.place(), why, arguments));
  }
}
