package caryatid;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Reader;
import java.io.Writer;
import java.nio.channels.Channel;
import java.nio.charset.Charset;
import java.text.DecimalFormatSymbols;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The rule of the packages that compute: the same arguments give the same result, on every machine,
 * at any time, in every locale. It goes by what is called, so that a class with one harmless method
 * may be used.
 */
final class Purity {
  /** Those in DEVELOPERS.md; one that does not exist yet is held to it from its first class. */
  static final String[] PACKAGES = {
    "caryatid.remark..",
    "caryatid.geometry..",
    "caryatid.uncertainty..",
    "caryatid.sheet..",
    "caryatid.standing..",
    "caryatid.loadline..",
    "caryatid.plate..",
    "caryatid.repeatability..",
    "caryatid.alignment..",
    "caryatid.entry..",
    "caryatid.fitting..",
    "caryatid.views..",
    "caryatid.advice.."
  };

  /** A type of which nothing may be used. */
  private static final Pattern OUTSIDE =
      Pattern.compile(
          "java\\.nio\\.file\\..*|java\\.nio\\.channels\\..*|java\\.net\\..*|java\\.security\\..*"
              + "|java\\.io\\.(File.*|RandomAccessFile|Console)|java\\.util\\.Scanner"
              + "|java\\.util\\.ResourceBundle|java\\.util\\.TimeZone|java\\.util\\.Date"
              + "|java\\.util\\.(Gregorian)?Calendar|java\\.text\\.SimpleDateFormat"
              + "|java\\.util\\.(Random|SplittableRandom)|java\\.util\\.random\\..*"
              + "|java\\.util\\.concurrent\\..*|java\\.util\\.prefs\\..*"
              + "|java\\.lang\\.(Thread|Runtime|Process.*)");

  private static final Set<String> NAMES =
      Set.of("now", "random", "nanoTime", "currentTimeMillis", "randomUUID", "shuffle");

  /** The locale, the zone or the character set that the machine is set to. */
  private static final Set<String> DEFAULTS =
      Set.of(
          "getDefault",
          "systemDefault",
          "defaultCharset",
          "getResourceAsStream",
          "identityHashCode");

  /** What formats by the machine's locale or character set where neither is given. */
  private static final Pattern FORMATTING =
      Pattern.compile(
          "java\\.lang\\.String\\.(format|formatted|toLowerCase|toUpperCase|getBytes)"
              + "|java\\.util\\.Formatter\\.<init>"
              + "|java\\.text\\.DecimalFormat\\.<init>|java\\.text\\.MessageFormat\\.(<init>|format)"
              + "|java\\.text\\.(NumberFormat|DecimalFormatSymbols|Collator|BreakIterator)\\.get.*Instance"
              + "|java\\.time\\.format\\.DateTimeFormatter\\.(ofPattern|ofLocalized.*)"
              + "|java\\.time\\.format\\.DateTimeFormatterBuilder\\.toFormatter");

  private static final List<Class<?>> STREAMS =
      List.of(InputStream.class, OutputStream.class, Reader.class, Writer.class, Channel.class);

  private Purity() {}

  static ArchRule of(String... packages) {
    return noClasses()
        .that()
        .resideInAnyPackage(packages)
        .should(new Reaching())
        .because("what they compute depends on their arguments alone");
  }

  /** Reaching for files, streams, clock, chance, the machine's locale or its settings. */
  private static final class Reaching extends ArchCondition<JavaClass> {
    Reaching() {
      super("reach for files, streams, clock, chance or the machine's settings");
    }

    @Override
    public void check(JavaClass type, ConditionEvents events) {
      for (JavaAccess<?> access : type.getAccessesFromSelf()) {
        events.add(new SimpleConditionEvent(access, reaches(access), access.getDescription()));
      }
    }
  }

  private static boolean reaches(JavaAccess<?> access) {
    JavaClass owner = access.getTargetOwner();
    String name = access.getTarget().getName();
    return OUTSIDE.matcher(owner.getName()).matches()
        || NAMES.contains(name)
        || DEFAULTS.contains(name)
        || owner.isAssignableTo(Clock.class)
        || owner.isEquivalentTo(System.class) && !name.equals("arraycopy")
        || isStream(owner)
        || access.getTarget() instanceof CodeUnitAccessTarget target
            && (isStream(target.getRawReturnType()) || formatsByDefault(owner, target));
  }

  private static boolean isStream(JavaClass type) {
    return STREAMS.stream().anyMatch(type::isAssignableTo);
  }

  private static boolean formatsByDefault(JavaClass owner, CodeUnitAccessTarget target) {
    boolean isText = owner.isEquivalentTo(String.class) && target.getName().equals("<init>");
    boolean ofBytes =
        isText
            && target.getRawParameterTypes().stream().anyMatch(t -> t.isEquivalentTo(byte[].class));
    boolean formats = FORMATTING.matcher(owner.getName() + "." + target.getName()).matches();
    return (ofBytes || formats) && !saysHow(target);
  }

  private static boolean saysHow(CodeUnitAccessTarget target) {
    return Stream.of(Locale.class, Charset.class, DecimalFormatSymbols.class)
        .anyMatch(
            how -> target.getRawParameterTypes().stream().anyMatch(t -> t.isEquivalentTo(how)));
  }
}
