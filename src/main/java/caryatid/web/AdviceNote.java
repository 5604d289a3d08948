package caryatid.web;

import caryatid.remark.BadInput;
import caryatid.usecase.Records;
import caryatid.usecase.stand.NextChange;
import caryatid.web.page.AdviceMarkup;
import caryatid.web.page.JobStep;
import caryatid.web.page.Markup;

/** What to change next, said below the result that was kept. */
final class AdviceNote {
  private AdviceNote() {}

  /** Nothing where the record is damaged: what was set or found may be otherwise. */
  static Markup of(Records records, OpenRecord record) {
    try {
      return AdviceMarkup.of(
          NextChange.of(records, record.code(), record.wording()),
          record.address(JobStep.BENCH),
          record.wording());
    } catch (BadInput e) {
      return new Markup();
    }
  }
}
