package caryatid.web.page;

import caryatid.remark.Argument;
import caryatid.wording.Language;
import caryatid.wording.RecordHead;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is around each page: whose leg it is, what is unsafe, the steps, and the next one. */
public final class Frame {
  /** Lines about safety that are shown; the rest is folded. */
  private static final int SHOWN = 3;

  private final Wording wording;

  /**
   * What is proposed next.
   *
   * @param words what it is
   * @param address of its page
   */
  public record Onward(String words, String address) {}

  /**
   * What of a record is around a page.
   *
   * @param current the step that is shown; empty for other pages
   * @param drafted the steps with something typed and not kept
   * @param next what is proposed next
   * @param keeps whether the page has the form of its step, which is kept by the button at the foot
   */
  public record Around(
      Optional<JobStep> current, Set<JobStep> drafted, Optional<Onward> next, boolean keeps) {
    public Around {
      drafted = Set.copyOf(drafted);
    }

    private boolean isDrafted() {
      return current.filter(drafted::contains).isPresent();
    }
  }

  public Frame(Wording wording) {
    this.wording = wording;
  }

  /**
   * A page that is about no record.
   *
   * @param title its heading
   */
  public Markup page(String title, Markup content) {
    Markup page = begin(title);
    page.open("div", "class", "top").open("header", "class", "head");
    page.element("p", "Caryatid", "class", "wearer").close("header").close("div");
    page.open("div", "class", "body");
    general(page.open("nav", "aria-label", wording.word("Web.nav")).open("ul"));
    page.close("ul").close("nav");
    return end(page.add(main(title, content)), Optional.empty());
  }

  /**
   * A page of a record.
   *
   * @param base the record's address
   * @param around what of the record is around it
   */
  public Markup page(RecordHead head, String base, Around around, String title, Markup content) {
    return page(head, base, around, title, content, Optional.empty());
  }

  /**
   * The same with what is to be done on the page before the next step.
   *
   * @param now empty where the script may put something there
   */
  public Markup page(
      RecordHead head,
      String base,
      Around around,
      String title,
      Markup content,
      Optional<Markup> now) {
    Markup page = begin(title);
    page.open("div", "class", "top");
    head(page, head);
    unsafe(page, head, base);
    page.close("div")
        .open("div", "class", "body")
        .open("nav", "aria-label", wording.word("Web.nav"));
    steps(page, head, base, around);
    page.close("nav");
    page.add(main(title, content));
    return end(page, around.next().map(next -> bar(next, around, now)));
  }

  private Markup begin(String title) {
    Markup page = new Markup().drawing("<!DOCTYPE html>\n");
    page.open("html", "lang", wording.locale().toLanguageTag()).open("head");
    page.open("meta", "charset", "utf-8");
    page.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.element("title", title + " - Caryatid");
    page.open("link", "rel", "icon", "href", "data:,");
    page.open("link", "rel", "stylesheet", "href", "/window.css");
    page.open("script", "src", "/window.js", "defer", "").close("script").close("head");
    page.open("body").element("a", wording.word("Web.skip"), "class", "skip", "href", "#main");
    return page;
  }

  private void head(Markup page, RecordHead head) {
    page.open("header", "class", "head");
    page.element("p", head.wearer(), "class", "wearer");
    if (!head.side().isEmpty()) {
      page.open("p", "class", "side").drawing(SideDrawing.svg(head.left(), head.right()));
      page.element("strong", head.side()).close("p");
    }
    page.element("p", head.level());
    head.footwear().ifPresent(worn -> page.element("p", worn));
    page.element(
        "p",
        wording.fill("Web.keptUpTo", Argument.count(head.newest())),
        "class",
        "kept",
        "id",
        "kept");
    page.close("header");
  }

  private void unsafe(Markup page, RecordHead head, String base) {
    List<RecordHead.Unsafe> all = head.unsafe();
    if (all.isEmpty()) {
      return;
    }
    page.open("section", "class", "unsafe", "aria-label", wording.word("Web.unsafe"));
    unsafe(page, all, 0, Math.min(SHOWN, all.size()), base);
    if (all.size() > SHOWN) {
      page.open("details")
          .element("summary", wording.fill("Web.more", Argument.count(all.size() - SHOWN)));
      unsafe(page, all, SHOWN, all.size(), base);
      page.close("details");
    }
    page.close("section");
  }

  private void unsafe(Markup page, List<RecordHead.Unsafe> all, int from, int before, String base) {
    page.open("ul");
    for (int i = from; i < before; i++) {
      RecordHead.Unsafe line = all.get(i);
      page.open("li").element("span", "! " + line.words());
      if (line.torque()) {
        String change = base + "/change";
        page.element("a", wording.word("Web.noteTorque"), "class", "button", "href", change);
      }
      if (!line.answered()) {
        String address = base + "/answer?line=" + (i + 1);
        page.element("a", wording.word("Web.answer"), "class", "button", "href", address);
      }
      page.close("li");
    }
    page.close("ul");
  }

  private void steps(Markup page, RecordHead head, String base, Around around) {
    page.open("ol");
    for (JobStep step : JobStep.values()) {
      boolean current = around.current().equals(Optional.of(step));
      page.open("li");
      link(page, base + "/" + step.path(), wording.word(step.key()), current);
      if (head.kinds().contains(step.kinds().get(0))) {
        page.element("span", " \u2713", "aria-hidden", "true")
            .element("span", wording.word("Web.done"), "class", "hidden");
      }
      if (around.drafted().contains(step)) {
        page.element("span", "\u00b7 " + wording.word("Web.draft"), "class", "drafted-mark");
      }
      page.close("a").close("li");
    }
    page.close("ol").open("ul");
    link(page, base + "/record", "Web.record");
    general(page);
    page.close("ul");
  }

  private void general(Markup page) {
    link(page, "/plates", "Web.plates");
    link(page, "/", "Web.records");
    link(page, "/end", "Web.end");
  }

  private void link(Markup page, String address, String key) {
    link(page.open("li"), address, wording.word(key), false);
    page.close("a").close("li");
  }

  private static void link(Markup page, String address, String words, boolean current) {
    page.open("a", "href", address, current ? "aria-current" : "", "page").text(words);
  }

  private static Markup main(String title, Markup content) {
    return new Markup()
        .open("main", "id", "main", "tabindex", "-1")
        .element("h1", title)
        .add(content)
        .close("main");
  }

  /** What is typed and not kept is to be kept first. */
  private Markup bar(Onward next, Around around, Optional<Markup> now) {
    Markup out = new Markup();
    now.ifPresent(step -> out.open("span", "id", "step").add(step).close("span"));
    if (around.keeps()) {
      out.element("button", wording.word("Web.keep"), "form", EntryMarkup.FORM, "class", "strong");
    }
    String look = around.isDrafted() ? "button next soft" : "button next";
    return out.element("a", next.words() + " \u2192", "class", look, "href", next.address());
  }

  private Markup end(Markup page, Optional<Markup> next) {
    page.close("div");
    next.ifPresent(
        link ->
            page.open("section", "class", "onward", "aria-label", wording.word("Web.nav"))
                .add(link)
                .close("section"));
    page.open("footer", "class", "foot").open("form", "method", "post", "action", "/language");
    page.open("label", "for", "language").text(wording.word("Web.language")).close("label");
    page.open("select", "id", "language", "name", "language");
    for (Language language : Language.values()) {
      boolean chosen = language.locale().equals(wording.locale());
      page.element(
          "option",
          language.locale().getDisplayLanguage(language.locale()),
          "value",
          language.tag(),
          chosen ? "selected" : "",
          "",
          "lang",
          language.tag());
    }
    page.close("select").element("button", wording.word("Web.choose")).close("form");
    page.close("footer").close("body").close("html");
    return page;
  }
}
