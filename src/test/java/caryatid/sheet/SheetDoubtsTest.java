package caryatid.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.loadline.Doubts;
import caryatid.remark.BadInput;
import org.junit.jupiter.api.Test;

class SheetDoubtsTest {

  @Test
  void withoutAWordTheUsualDoubtsAreAssumed() throws BadInput {
    assertThat(Sheets.sheet(Sheets.SHEET).doubts()).isEqualTo(Doubts.ASSUMED);
  }

  @Test
  void aClinicSaysWhatItKnowsBetterAndTheRestStays() throws BadInput {
    Doubts some = Sheets.sheet(Sheets.SHEET + "doubts: {turn-deg: 1.5}\n").doubts();
    assertThat(some).isEqualTo(Doubts.ASSUMED.known(Math.toRadians(1.5), 6, 4));
    Doubts all =
        Sheets.sheet(
                Sheets.SHEET
                    + "doubts: {turn-deg: 0, between-stands-fore-and-aft-mm: 2.5,"
                    + " between-stands-sideways-mm: 1}\n")
            .doubts();
    assertThat(all).isEqualTo(Doubts.ASSUMED.known(0, 2.5, 1));
  }
}
