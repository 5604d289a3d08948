package caryatid.format;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * What is written must not depend on how a class, a component or a constant is named in the code.
 * By call; that a name is not taken by joining a constant to a text is left to the frozen files.
 */
class NamesStayOutTest {
  private static final Set<String> OF_CLASSES =
      Set.of(
          "getSimpleName",
          "getName",
          "getTypeName",
          "getCanonicalName",
          "getRecordComponents",
          "getDeclaredFields",
          "getDeclaredMethods",
          "getMethods",
          "getFields",
          "getEnumConstants");
  private static final Set<String> OF_CONSTANTS = Set.of("name", "toString", "valueOf");

  @Test
  void aFormatAsksNoClassAndNoConstantForItsName() {
    noClasses()
        .that()
        .resideInAnyPackage("caryatid.format..", "caryatid.entry..")
        .and()
        .areNotEnums()
        .should()
        .callMethodWhere(DescribedPredicate.describe("it gives a name", NamesStayOutTest::named))
        .orShould()
        .dependOnClassesThat(resideInAPackage("java.lang.reflect.."))
        .check(
            new ClassFileImporter()
                .importUrl(ResultJson.class.getProtectionDomain().getCodeSource().getLocation()));
  }

  private static boolean named(JavaMethodCall call) {
    boolean ofClass = call.getTargetOwner().isEquivalentTo(Class.class);
    boolean ofConstant = call.getTargetOwner().isAssignableTo(Enum.class);
    return ofClass && OF_CLASSES.contains(call.getName())
        || ofConstant && OF_CONSTANTS.contains(call.getName());
  }
}
