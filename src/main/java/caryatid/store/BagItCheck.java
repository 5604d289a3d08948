package caryatid.store;

import caryatid.fitting.RecordCode;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Checks an unpacked bag: every file is in every manifest once, with its sum, and nothing else is.
 */
final class BagItCheck {
  private static final Pattern LINE =
      Pattern.compile("([0-9a-fA-F]{64}|[0-9a-fA-F]{128})[ \\t]+\\*?(\\S.*)");

  private final Path bag;
  private final String name;

  /**
   * @param bag the bag's folder
   * @param name of the zip, for problems
   */
  BagItCheck(Path bag, String name) {
    this.bag = bag;
    this.name = name;
  }

  /**
   * Checks the bag.
   *
   * @return the code of the one record in it
   * @throws BadInput if something is wrong with it
   */
  RecordCode check() throws BadInput, IOException {
    Set<String> files = files();
    for (String tag : BagItPackage.tagFiles()) {
      require(files.contains(tag), BagItProblem.NO_MANIFEST, tag);
    }
    require(!files.contains("fetch.txt"), BagItProblem.FETCHES);
    require(text(BagItPackage.DECLARATION).equals(BagItPackage.DECLARED), BagItProblem.NOT_A_BAG);
    Set<String> payload = starting(files, BagItPackage.PAYLOAD);
    for (Map.Entry<String, String> manifest : BagItPackage.MANIFESTS.entrySet()) {
      check(manifest.getKey(), manifest.getValue(), payload);
    }
    Set<String> tags = new TreeSet<>(files);
    tags.removeAll(payload);
    tags.remove(BagItPackage.TAG_MANIFEST);
    check(BagItPackage.TAG_MANIFEST, Digests.SHA_512, tags);
    return code(payload);
  }

  private void check(String manifest, String algorithm, Set<String> files)
      throws BadInput, IOException {
    Map<String, String> sums = sums(manifest);
    for (String file : files) {
      require(sums.containsKey(file), BagItProblem.NOT_LISTED, file, manifest);
    }
    for (Map.Entry<String, String> sum : sums.entrySet()) {
      require(
          files.contains(sum.getKey()), BagItProblem.LISTED_BUT_MISSING, sum.getKey(), manifest);
      try (InputStream bytes = Files.newInputStream(bag.resolve(sum.getKey()))) {
        boolean same = Digests.of(algorithm, bytes).equalsIgnoreCase(sum.getValue());
        require(same, BagItProblem.WRONG_SUM, sum.getKey(), manifest);
      }
    }
  }

  private Map<String, String> sums(String manifest) throws BadInput, IOException {
    Map<String, String> sums = new LinkedHashMap<>();
    for (String line : text(manifest).lines().toList()) {
      Matcher parts = LINE.matcher(line);
      require(parts.matches(), BagItProblem.NOT_A_BAG);
      boolean first = sums.put(parts.group(2), parts.group(1)) == null;
      require(first, BagItProblem.LISTED_TWICE, parts.group(2), manifest);
    }
    return sums;
  }

  private RecordCode code(Set<String> payload) throws BadInput {
    Set<String> codes =
        payload.stream()
            .map(path -> path.substring(BagItPackage.PAYLOAD.length()).split("/", 2)[0])
            .collect(Collectors.toSet());
    require(
        codes.size() == 1 && codes.stream().allMatch(RecordCode::isCode),
        BagItProblem.NOT_ONE_RECORD);
    return new RecordCode(codes.iterator().next());
  }

  private Set<String> files() throws IOException {
    try (Stream<Path> found = Files.walk(bag)) {
      return found
          .filter(Files::isRegularFile)
          .map(file -> bag.relativize(file).toString().replace('\\', '/'))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private static Set<String> starting(Set<String> files, String lead) {
    return files.stream()
        .filter(f -> f.startsWith(lead))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private String text(String file) throws IOException {
    return new String(Files.readAllBytes(bag.resolve(file)), StandardCharsets.UTF_8);
  }

  private void require(boolean holds, BagItProblem fault, String... arguments) throws BadInput {
    if (!holds) {
      List<Argument> texts = Stream.of(arguments).map(Argument::text).toList();
      throw new BadInput(new Problem(Place.of(name), fault, texts));
    }
  }
}
