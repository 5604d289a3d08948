package caryatid.web.page;

import caryatid.usecase.stand.AlignmentChange;
import caryatid.usecase.stand.AlignmentChange.Changeable;
import caryatid.usecase.stand.AlignmentChange.WayBack;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Another setting, or the way back, as it is offered.
 *
 * @param form the name of its form
 * @param offered what can be set otherwise
 * @param fasteners what is secured after it
 * @param back where a way back leads; empty for a change
 */
public record ChangeOffer(
    String form, List<Changeable> offered, List<Changeable> fasteners, Optional<WayBack> back) {
  public ChangeOffer {
    offered = List.copyOf(offered);
    fasteners = List.copyOf(fasteners);
  }

  /** What is set by the way back. */
  public List<Changeable> turns(AlignmentChange change) {
    return back.map(way -> change.turns(way.to())).orElse(List.of());
  }

  /** The item that was chosen; empty if none was. */
  public Optional<Changeable> chosen(Request request) {
    return request
        .field(ChangeMarkup.WHAT)
        .filter(number -> number.matches("\\d{1,3}"))
        .map(Integer::valueOf)
        .filter(number -> number < offered.size())
        .map(offered::get);
  }

  /** What is wrong with the setting that was typed, by the names of the fields. */
  public Map<String, String> faults(Request request, Wording wording) {
    if (back.isPresent() || onlySecures(request)) {
      return Map.of();
    }
    return chosen(request)
        .map(what -> TypedSetting.of(what, request).faults(wording))
        .orElseGet(() -> Map.of(ChangeMarkup.WHAT, wording.word("Web.fault.missing")));
  }

  /** Nothing is set otherwise, and the fasteners are secured after all. */
  private boolean onlySecures(Request request) {
    return chosen(request).isEmpty()
        && TypedSetting.isEmpty(request)
        && request.field(ChangeMarkup.SECURED).isPresent()
        && !fasteners.isEmpty();
  }

  /** What the change comes to; nothing as long as too little of it is typed. */
  public String comesTo(Request request, Wording wording) {
    return chosen(request)
        .map(what -> TypedSetting.of(what, request))
        .filter(set -> set.faults(wording).isEmpty())
        .map(set -> set.said(wording))
        .orElse("");
  }
}
