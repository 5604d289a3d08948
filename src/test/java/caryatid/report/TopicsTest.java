package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.remark.Topic;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import org.junit.jupiter.api.Test;

class TopicsTest {
  @Test
  void everyKindOfRemarkThatAResultCanHoldCanBeReadBack() {
    List<Class<?>> remarks =
        new ClassFileImporter()
            .importUrl(Topic.class.getProtectionDomain().getCodeSource().getLocation()).stream()
                .filter(type -> type.isEnum() && type.isAssignableTo(Topic.class))
                .filter(type -> type.getSimpleName().endsWith("Remark"))
                .filter(type -> !type.getPackageName().equals("caryatid.fitting"))
                .<Class<?>>map(JavaClass::reflect)
                .toList();
    assertThat(remarks).isNotEmpty().allMatch(Topics.KNOWN::contains);
  }
}
