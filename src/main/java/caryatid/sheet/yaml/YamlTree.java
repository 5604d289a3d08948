package caryatid.sheet.yaml;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Topic;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlVersionException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * A YAML file's nodes: the plain part of YAML only, one document, every scalar as it is written.
 */
final class YamlTree {
  private static final int DEEPEST = 20;
  private static final LoadSettings SETTINGS =
      LoadSettings.builder()
          .setSchema(new FailsafeSchema())
          .setAllowDuplicateKeys(true)
          .setAllowNonScalarKeys(true)
          .build();

  private YamlTree() {}

  /**
   * The file's outermost mapping.
   *
   * @throws BadInput if the file cannot be read, is no YAML, has no keys outermost, or uses what
   *     only hides where a value comes from (anchors, tags, several documents)
   */
  static MappingNode of(NamedBytes yaml) throws BadInput {
    String text = YamlText.of(yaml);
    Optional<Node> root;
    try {
      plainOnly(text, yaml.name());
      root = new Compose(SETTINGS).composeString(text);
    } catch (MarkedYamlEngineException e) {
      throw notYaml(e, text, yaml.name());
    } catch (YamlVersionException e) {
      throw YamlText.bad(Place.of(yaml.name()), YamlProblem.OTHER_YAML);
    } catch (ReaderException e) {
      int line = 1 + (int) text.codePoints().limit(e.getPosition()).filter(c -> c == '\n').count();
      throw YamlText.bad(Place.of(yaml.name(), line), YamlProblem.CONTROL_CHARACTER);
    }
    if (root.orElse(null) instanceof MappingNode mapping) {
      return mapping;
    }
    throw YamlText.bad(Place.of(yaml.name()), YamlProblem.NOTHING_IN_IT);
  }

  /** Also keeps a deeply nested file from exhausting the stack when its nodes are built. */
  private static void plainOnly(String text, String file) throws BadInput {
    int depth = 0;
    int documents = 0;
    for (Event event : new Parse(SETTINGS).parseString(text)) {
      depth += event instanceof CollectionStartEvent ? 1 : 0;
      depth -= event instanceof CollectionEndEvent ? 1 : 0;
      documents += event instanceof DocumentStartEvent ? 1 : 0;
      Optional<YamlProblem> fault = fault(event, depth, documents);
      if (fault.isPresent()) {
        throw YamlText.bad(ProblemList.at(file, event.getStartMark().orElseThrow()), fault.get());
      }
    }
  }

  private static Optional<YamlProblem> fault(Event event, int depth, int documents) {
    if (documents > 1) {
      return Optional.of(YamlProblem.SECOND_DOCUMENT);
    }
    if (depth > DEEPEST) {
      return Optional.of(YamlProblem.TOO_DEEP);
    }
    if (event instanceof AliasEvent
        || (event instanceof NodeEvent node && node.getAnchor().isPresent())) {
      return Optional.of(YamlProblem.ANCHOR);
    }
    return tagged(event) ? Optional.of(YamlProblem.TAG) : Optional.empty();
  }

  private static boolean tagged(Event event) {
    return (event instanceof ScalarEvent scalar && scalar.getTag().isPresent())
        || (event instanceof CollectionStartEvent start && start.getTag().isPresent());
  }

  private static BadInput notYaml(MarkedYamlEngineException e, String text, String file) {
    Mark mark = e.getProblemMark().orElseThrow();
    int index = text.offsetByCodePoints(0, mark.getIndex());
    boolean tab = index < text.length() && text.charAt(index) == '\t';
    return YamlText.bad(ProblemList.at(file, mark), tab ? YamlProblem.TAB : YamlProblem.NOT_YAML);
  }

  /** The text of a YAML file. */
  private static final class YamlText {
    /**
     * Far more than a person writes. The YAML library's time grows with the square of a line's
     * length.
     */
    static final int MOST_BYTES = 100_000;

    private YamlText() {}

    /**
     * The file's text without a byte order mark.
     *
     * @throws BadInput if the file cannot be read, is too large, or is not UTF-8
     */
    static String of(NamedBytes yaml) throws BadInput {
      byte[] bytes = bytes(yaml);
      CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
      ByteBuffer in = ByteBuffer.wrap(bytes);
      CharBuffer out = CharBuffer.allocate(bytes.length + 1);
      CoderResult end = decoder.decode(in, out, true);
      String text = out.flip().toString();
      if (end.isError()) {
        int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
        throw bad(Place.of(yaml.name(), line), YamlProblem.NOT_UTF8);
      }
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static byte[] bytes(NamedBytes yaml) throws BadInput {
      byte[] bytes;
      try {
        bytes = yaml.readAtMost(MOST_BYTES + 1);
      } catch (IOException e) {
        throw bad(Place.of(yaml.name()), YamlProblem.UNREADABLE);
      }
      if (bytes.length > MOST_BYTES) {
        throw bad(Place.of(yaml.name()), YamlProblem.TOO_LARGE);
      }
      return bytes;
    }

    static BadInput bad(Place place, Topic topic, Argument... arguments) {
      return new BadInput(Problem.at(place, topic, arguments));
    }
  }
}
