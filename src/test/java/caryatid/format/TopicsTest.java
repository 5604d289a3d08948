package caryatid.format;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.remark.Topic;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TopicsTest {
  /** What is remarked of a record is in no result. */
  private static final Set<String> RECORD =
      Set.of("caryatid.advice", "caryatid.fitting", "caryatid.store", "caryatid.views");

  @Test
  void everyKindOfRemarkThatAResultCanHoldCanBeReadBack() {
    List<Topic> remarks =
        new ClassFileImporter()
            .importUrl(Topic.class.getProtectionDomain().getCodeSource().getLocation()).stream()
                .filter(type -> type.isEnum() && type.isAssignableTo(Topic.class))
                .filter(type -> type.getSimpleName().endsWith("Remark"))
                .filter(type -> !RECORD.contains(type.getPackageName()))
                .map(JavaClass::reflect)
                .flatMap(type -> Stream.of(type.getEnumConstants()))
                .map(Topic.class::cast)
                .toList();
    assertThat(remarks).isNotEmpty().isSubsetOf(Topics.CODES.constants());
  }
}
