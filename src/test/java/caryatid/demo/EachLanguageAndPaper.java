package caryatid.demo;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Runs a test with the tag of each language of reports and each size of paper. */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@ParameterizedTest
@CsvSource({
  "en, A4",
  "en, LETTER",
  "de, A4",
  "de, LETTER",
  "fr, A4",
  "fr, LETTER",
  "es, A4",
  "es, LETTER"
})
public @interface EachLanguageAndPaper {}
