package lockwright.report.lesson;

import java.util.List;
import lockwright.report.html.Markup;
import lockwright.report.html.Tables;

/** Which levers are free in the state of a step, to be thought about before the next one. */
record Question(String heading, Moment moment, List<LeverNow> levers, Markup m) {
  static final String BEFORE_THE_NEXT_STEP = "Before the next step: which lever is free now?";

  private static final List<String> COLUMNS = List.of("lever", "stands at", "free?", "why not");

  void write() {
    String anchor = "question-" + moment.number();
    m.open("section", "class", "question", "aria-labelledby", anchor);
    m.element("h3", heading, "id", anchor);
    m.open("div", "class", "ticks", "role", "group", "aria-labelledby", anchor);
    for (int i = 0; i < levers.size(); i++) {
      LeverNow lever = levers.get(i);
      String id = "tick-" + moment.number() + "-" + i;
      m.open("span", "class", "tick");
      m.open("input", "type", "checkbox", "id", id, "data-free", lever.free() ? "yes" : "no");
      m.element("label", lever.lever().id(), "for", id).close();
    }
    m.close();
    m.element("p", "", "class", "told", "aria-live", "polite");
    m.open("details").element("summary", "The answer, from the locking of this box");
    m.element("p", free());
    Tables.head(m, COLUMNS);
    levers.forEach(this::row);
    Tables.end(m);
    m.close().close();
  }

  private String free() {
    List<String> free = levers.stream().filter(LeverNow::free).map(l -> l.lever().id()).toList();
    return free.isEmpty() ? "No lever is free." : "Free: " + String.join(", ", free) + ".";
  }

  private void row(LeverNow lever) {
    String label = lever.lever().label();
    m.open("tr");
    Tables.cell(m, COLUMNS.get(0), lever.lever().id() + (label.isEmpty() ? "" : " " + label));
    Tables.cell(m, COLUMNS.get(1), lever.stands().equals("M") ? "part-way" : lever.stands());
    m.open("td", "data-label", COLUMNS.get(2));
    for (LeverNow.Way way : lever.ways()) {
      String words = way.free() ? "\u2714 free to " + way.does() : "\u2718 no " + way.does();
      m.element("p", words, "class", way.free() ? "good" : "held");
    }
    m.close().open("td", "data-label", COLUMNS.get(3), "class", "small");
    for (LeverNow.Way way : lever.ways()) {
      way.heldBy().forEach(h -> m.element("p", h));
    }
    m.close().close();
  }
}
