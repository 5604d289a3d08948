package caryatid.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.loadline.AssumedUncertainties;
import caryatid.remark.BadInput;
import org.junit.jupiter.api.Test;

class SheetDoubtsTest {

  @Test
  void withoutAWordTheUsualDoubtsAreAssumed() throws BadInput {
    assertThat(Sheets.sheet(Sheets.SHEET).doubts()).isEqualTo(AssumedUncertainties.ASSUMED);
  }

  @Test
  void aClinicSaysWhatItKnowsBetterAndTheRestStays() throws BadInput {
    AssumedUncertainties some = Sheets.sheet(Sheets.SHEET + "doubts: {turn-deg: 1.5}\n").doubts();
    assertThat(some)
        .isEqualTo(new AssumedUncertainties(0.002, Math.toRadians(1.5), 30, 100, 1000, 5.5, 4, 5));
    AssumedUncertainties all =
        Sheets.sheet(
                Sheets.SHEET
                    + "doubts: {turn-deg: 0, between-stands-fore-and-aft-mm: 2.5,"
                    + " between-stands-sideways-mm: 1, foot-line-aside-mm: 20,"
                    + " body-line-aside-mm: 110, swing-height-mm: 900}\n")
            .doubts();
    assertThat(all).isEqualTo(new AssumedUncertainties(0.002, 0, 20, 110, 900, 2.5, 1, 5));
  }
}
