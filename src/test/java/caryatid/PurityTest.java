package caryatid;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.impure.Harmless;
import caryatid.impure.Violations;
import caryatid.remark.Topic;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What computes depends on its arguments alone, and the rule that says so can fail. */
class PurityTest {
  private static final ArchRule RULE = Purity.of("caryatid.impure..");

  private static JavaClasses imported(Class<?> type) {
    return new ClassFileImporter().importClasses(type);
  }

  @Test
  void computingDependsOnItsArgumentsAlone() {
    JavaClasses program =
        new ClassFileImporter()
            .importUrl(Topic.class.getProtectionDomain().getCodeSource().getLocation());
    Purity.of(Purity.PACKAGES).check(program);
  }

  @TestFactory
  Stream<DynamicTest> eachViolationIsFound() {
    String found = RULE.evaluate(imported(Violations.class)).getFailureReport().toString();
    return Arrays.stream(Violations.class.getDeclaredMethods())
        .filter(method -> !method.isSynthetic())
        .map(Method::getName)
        .map(
            name ->
                DynamicTest.dynamicTest(
                    name,
                    () ->
                        assertThat(found)
                            .containsPattern("Violations\\.(lambda\\$)?" + name + "[$(]")));
  }

  @Test
  void whatIsHarmlessIsAllowed() {
    RULE.check(imported(Harmless.class));
  }
}
