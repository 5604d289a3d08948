package caryatid.fitting;

import static caryatid.demo.Invented.answers;
import static caryatid.demo.Invented.attached;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.demo.Invented;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.AnswersToContent;
import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IdentityCheckTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Mr X walks well",
        "told Mrs. Miller",
        "Frau M\u00fcller steht sicher",
        "Herr Dr. Weber",
        "Mme D'Artagnan",
        "Se\u00f1ora Garc\u00eda",
        "Name: Anna",
        "name is Otto"
      })
  void aTitleOrTheWordNameWithANameIsQuestioned(String text) {
    assertThat(IdentityCheck.name(text)).isPresent();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "born 1961",
        "Born on 12 March",
        "geb. 12.03.1961",
        "geboren am 12. M\u00e4rz 1961",
        "n\u00e9e le 3 mai 1961",
        "nacida el 3 de mayo",
        "DOB see file",
        "date of birth known",
        "birthday: 12 March",
        "Jahrgang 61",
        "since 1961-03-12",
        "12/03/1961",
        "12.03.61",
        "3 May 1961",
        "March 12, 1961",
        "scan_1961-03-12.csv"
      })
  void whatLooksLikeABirthIsQuestioned(String text) {
    assertThat(IdentityCheck.birth(text, 2026)).isPresent();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-11-25",
        "amputation 12.05.2019",
        "next visit 01/12/26",
        "weight borne on the brim",
        "wants to dance at the birthday of a friend",
        "Fr. 10:00 again",
        "MS diagnosed",
        "misses a step",
        "torque 10/12/15 N m",
        "version 10.11.12.13",
        "file name is too long",
        "name: K7",
        "Berger, Analysis of amputee gait, 1992, ch. 14",
        "serial 19610312-44",
        "knee bends 12 to 15 degrees, 3 of 1961 steps",
        "M. gastrocnemius tight",
        "Herring bone pattern of the liner"
      })
  void otherWordsAndNumbersAreNot(String text) {
    assertThat(IdentityCheck.name(text)).isEmpty();
    assertThat(IdentityCheck.birth(text, 2026)).isEmpty();
  }

  @Test
  void everyFieldTheReasonAndTheFilesNamesAreLookedAt() {
    Addition addition =
        new Addition(
            Invented.AT,
            "AB",
            Optional.of(new Entry.Correction(2, "Mr X said so", Optional.empty())),
            AnswersToContent.content(
                EntryKind.FOOTWEAR,
                answers(
                    "shoes",
                    answers("shoe", "Frau Weber's boot", "heel-height-mm", 20),
                    "note",
                    "born 1961")),
            List.of(attached(KeptFile.Role.OTHER, "1961-03-12/scan 12.03.1961.txt", "x")));
    assertThatThrownBy(addition::anonymous)
        .isInstanceOfSatisfying(
            BadInput.class,
            e ->
                assertThat(e.problems().stream().map(Wording.in(Locale.ENGLISH)::say))
                    .containsExactly(
                        said("shoes[1].shoe: \"Frau Weber's\" looks like a name"),
                        said("note: \"born 1961\" looks like a date of birth"),
                        said("because: \"Mr X\" looks like a name"),
                        said("scan 12.03.1961.txt: \"12.03.1961\" looks like a date of birth")));
  }

  private static String said(String what) {
    return "footwear: "
        + what
        + ", which a record must not contain. Leave it out; if it says nothing about who the wearer"
        + " is, add --sure.";
  }
}
