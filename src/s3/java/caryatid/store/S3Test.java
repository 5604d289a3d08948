package caryatid.store;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.entry.Note;
import caryatid.fitting.Addition;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import io.ocfl.api.OcflRepository;
import io.ocfl.aws.OcflS3Client;
import io.ocfl.core.OcflRepositoryBuilder;
import io.ocfl.core.extension.storage.layout.config.FlatLayoutConfig;
import io.ocfl.core.storage.OcflStorageBuilder;
import io.ocfl.core.storage.cloud.CloudStorage;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.gaul.s3proxy.AuthenticationType;
import org.gaul.s3proxy.S3Proxy;
import org.jclouds.ContextBuilder;
import org.jclouds.blobstore.BlobStoreContext;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import software.amazon.awssdk.auth.credentials.AwsBasicCredentials;
import software.amazon.awssdk.auth.credentials.StaticCredentialsProvider;
import software.amazon.awssdk.core.async.AsyncRequestBody;
import software.amazon.awssdk.regions.Region;
import software.amazon.awssdk.services.s3.S3AsyncClient;
import software.amazon.awssdk.transfer.s3.S3TransferManager;

/**
 * The code that adds to a record and reads it, on a server that speaks S3 (S3Proxy, in memory),
 * through the store's own library. Locks and the settling of interrupted additions are not part of
 * this: they need a folder.
 */
class S3Test {
  private static final String BUCKET = "records";
  private static final RecordCode CODE = new RecordCode("K7-right");
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-04T10:15:00+01:00");

  @TempDir private Path work;
  private S3Proxy server;
  private S3AsyncClient s3;
  private OcflS3Client client;
  private OcflRepository repository;

  @BeforeEach
  void start() throws Exception {
    BlobStoreContext memory =
        ContextBuilder.newBuilder("transient")
            .credentials("id", "secret")
            .build(BlobStoreContext.class);
    server =
        S3Proxy.builder()
            .blobStore(memory.getBlobStore())
            .endpoint(URI.create("http://127.0.0.1:0"))
            .awsAuthentication(AuthenticationType.AWS_V2_OR_V4, "id", "secret")
            .ignoreUnknownHeaders(true)
            .build();
    server.start();
    s3 =
        S3AsyncClient.builder()
            .endpointOverride(URI.create("http://127.0.0.1:" + server.getPort()))
            .forcePathStyle(true)
            .region(Region.US_EAST_1)
            .credentialsProvider(
                StaticCredentialsProvider.create(AwsBasicCredentials.create("id", "secret")))
            .build();
    s3.createBucket(bucket -> bucket.bucket(BUCKET)).join();
    client =
        OcflS3Client.builder()
            .s3Client(s3)
            .transferManager(S3TransferManager.builder().s3Client(s3).build())
            .bucket(BUCKET)
            .repoPrefix("clinic")
            .build();
    repository =
        new OcflRepositoryBuilder()
            .defaultLayoutConfig(new FlatLayoutConfig())
            .storage(OcflStorageBuilder.builder().cloud(client).build())
            .workDir(work)
            .build();
  }

  @AfterEach
  void stop() throws Exception {
    repository.close();
    s3.close();
    server.stop();
  }

  @Test
  void whatIsAddedIsReadBackWholeAndIsASoundObject() throws BadInput, StoreFailure {
    byte[] bytes = "Time,Fz\n0.00,400\n".repeat(20_000).getBytes(StandardCharsets.UTF_8);
    VersionWriter writer = new VersionWriter(repository, CODE);
    writer.add(1, addition("first", List.of()));
    Addition.Attached recording =
        new Addition.Attached(KeptFile.Role.RECORDING, NamedBytes.of("walk.csv", bytes));
    writer.add(2, addition("second", List.of(recording)));
    StoredRecord stored = read();
    FittingRecord record = stored.record();
    assertThat(record.damage()).isEmpty();
    assertThat(record.entries()).hasSize(2);
    Entry second = record.entry(2);
    assertThat(stored.bytes(second, second.files().get(0))).isEqualTo(bytes);
    assertThat(repository.validateObject(CODE.text(), true).getErrors()).isEmpty();
  }

  @Test
  void whatHasChangedThereIsNotShownAsWhole() throws BadInput, StoreFailure {
    new VersionWriter(repository, CODE).add(1, addition("first", List.of()));
    String key = "clinic/K7-right/v1/content/0001-note/entry.json";
    s3.putObject(put -> put.bucket(BUCKET).key(key), AsyncRequestBody.fromString("{}")).join();
    FittingRecord record = read().record();
    assertThat(record.entries()).isEmpty();
    assertThat(record.damage()).extracting("topic").containsExactly(Damage.CHANGED);
    assertThat(repository.validateObject(CODE.text(), true).getErrors()).isNotEmpty();
  }

  private StoredRecord read() {
    return RecordReader.read(new ObjectFiles(new CloudStorage(client), CODE)).orElseThrow();
  }

  private static Addition addition(String text, List<Addition.Attached> files) {
    return new Addition(AT, "AB", Optional.empty(), new Note(text), files);
  }
}
