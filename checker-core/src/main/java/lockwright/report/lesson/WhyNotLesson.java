package lockwright.report.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import lockwright.explain.Held;
import lockwright.railway.locking.Entry;
import lockwright.railway.teaching.WhyNot;
import lockwright.railway.words.Event;
import lockwright.report.Sequence;
import lockwright.report.html.Tables;
import lockwright.spec.Problems;
import lockwright.walk.Outcome;

/**
 * A lesson on a lever that will not move: how the box came to stand so, what holds it, what frees
 * it.
 */
final class WhyNotLesson extends Lesson {
  private static final List<String> COLUMNS = List.of("line", "entry", "holds it here?", "note");

  private final WhyNot asked;
  private final Refusal refusal;

  private WhyNotLesson(
      Lessons.Made made,
      WhyNot asked,
      Refusal refusal,
      List<String> beginning,
      List<Moment> moments,
      TrainersWords trainer) {
    super(made, asked.title(), beginning, moments, trainer);
    this.asked = asked;
    this.refusal = refusal;
  }

  /**
   * The lesson; nothing, if the question or words beside it are at fault, which is told.
   *
   * @param most how many states each search may look at
   */
  static Optional<Lesson> of(Lessons.Made made, WhyNot asked, int most, Problems problems) {
    return Refusal.of(made, asked, most, problems)
        .map(
            refusal -> {
              Sequence sequence = Sequence.of(made.box(), refusal.played());
              List<Moment> moments = moments(asked, refusal, sequence, made);
              TrainersWords trainer =
                  TrainersWords.of(asked.title(), asked.words(), made.box(), moments, problems);
              return new WhyNotLesson(made, asked, refusal, sequence.beginning(), moments, trainer);
            });
  }

  /** The steps, with one more for the lever that does not move. */
  private static List<Moment> moments(
      WhyNot asked, Refusal refusal, Sequence sequence, Lessons.Made made) {
    List<Moment> played = Moment.of(refusal.played(), sequence);
    Moment there = played.get(refusal.before());
    Event.LeverMoves stroke = Refusal.stroke(asked.lever(), asked.pulled());
    List<Moment> moments = new ArrayList<>(played.subList(0, refusal.before() + 1));
    moments.add(
        new Moment(
            moments.size(),
            Optional.of(stroke),
            named(made, asked) + " will not be " + (asked.pulled() ? "pulled" : "replaced"),
            "",
            there.last(),
            there.state()));
    for (Moment later : played.subList(refusal.before() + 1, played.size())) {
      moments.add(
          new Moment(
              moments.size(),
              later.event(),
              later.done(),
              later.moved(),
              later.last(),
              later.state()));
    }
    return moments;
  }

  private static String named(Lessons.Made made, WhyNot asked) {
    String label = made.box().frame().lever(asked.lever()).label();
    return label.isEmpty() ? asked.lever() : asked.lever() + " " + label;
  }

  @Override
  Kind kind() {
    return Kind.WHY_NOT;
  }

  @Override
  String name() {
    return asked.title();
  }

  @Override
  String file() {
    return FileNames.of("why not", asked.title());
  }

  private int refused() {
    return refusal.before() + 1;
  }

  private String moved() {
    return asked.pulled() ? "pulled" : "replaced";
  }

  private boolean freed() {
    return refusal.freeing() instanceof Outcome.Found;
  }

  @Override
  void story() {
    m.element("p", question(), "class", "asked");
    boolean atOnce = refusal.before() == 0;
    m.element(
        "p",
        sentence(beginning)
            + (atOnce
                ? " The box stands so from the beginning."
                : " Then, each movement being free when it is made:"));
    if (!atOnce) {
      movements(moments.subList(1, refused()));
      m.element(
          "p",
          refusal.asGiven()
              ? "It is one way to come there. There may be others."
              : "The levers are not named in an order in which they can be pulled, with nothing else"
                  + " done. This is a way found by a search, with as few movements as can be.");
    }
    Moment here = moments.get(refused());
    m.open("p", "class", "refused").text("\u2718 ").link(here.anchor(), here.done()).text(".");
    m.close();
    m.open("details").element("summary", "What frees it");
    freeing();
    m.close();
  }

  private String question() {
    String first =
        asked.first().isEmpty()
            ? ""
            : "After "
                + String.join(
                    ", ",
                    asked.first().stream()
                        .map(f -> (f.pulled() ? "pull " : "replace ") + f.lever())
                        .toList())
                + ", with ";
    return (first.isEmpty() ? "With " : first)
        + Refusal.state(asked)
        + ": why will "
        + named(made, asked)
        + " not be "
        + moved()
        + "?";
  }

  /** What would free it, in words. */
  private void freeing() {
    if (freed()) {
      List<Moment> after = moments.subList(refused() + 1, moments.size() - 1);
      m.element(
          "p",
          "It is free after "
              + (after.size() == 1 ? "1 movement" : after.size() + " movements")
              + ", and not after fewer, by whole strokes:");
      movements(after);
      m.element("p", "There may be other ways that are as short.");
    } else if (refusal.freeing() instanceof Outcome.Never) {
      m.element(
          "p",
          "No sequence of whole strokes ever frees it from here: all that can come of this state was"
              + " tried.");
    } else if (refusal.freeing() instanceof Outcome.NotWithin limit) {
      m.element(
          "p",
          "What would free it was not found within "
              + limit.movements()
              + " movements. Longer sequences were not tried.");
    }
  }

  @Override
  void told(Moment moment) {
    if (moment.number() == refused()) {
      m.element("p", "\u2718 It is held, and stays as it is. What holds it:", "class", "refused");
      holds(refusal.way().heldBy().stream().filter(h -> !h.unmarked()).toList());
      List<Held> unmarked = refusal.way().heldBy().stream().filter(Held::unmarked).toList();
      if (!unmarked.isEmpty()) {
        m.element(
            "p", "Held too, if pieces with conditions hold levers though not marked (holds: yes):");
        holds(unmarked);
      }
      if (!freed()) {
        freeing();
      }
    } else if (last(moment)) {
      m.element("p", "\u2714 Now it can be " + moved() + ".", "class", "reached");
    }
  }

  private void holds(List<Held> holds) {
    m.open("ul", "class", "holds");
    for (Held held : holds) {
      m.open("li");
      held.entry().ifPresent(e -> m.link(anchor(e), e.at().toString()).text(" "));
      m.text(held.rule());
      if (!held.seen().isEmpty()) {
        m.element("p", "Seen from this lever, " + held.seen() + ".", "class", "small");
      }
      m.close();
    }
    m.close();
  }

  private String anchor(Entry entry) {
    return "entry-" + (made.box().locking().indexOf(entry) + 1);
  }

  @Override
  void question(Moment moment) {
    if (moment.number() != refused()) {
      new Question(
              Question.BEFORE_THE_NEXT_STEP,
              moment,
              LeverNow.all(made.box(), made.whole(), moment.state()),
              m)
          .write();
      return;
    }
    String anchor = "question-" + moment.number();
    m.open("section", "class", "question", "aria-labelledby", anchor);
    m.element("h3", "Before the next step: what has to be done to free it?", "id", anchor);
    m.open("details").element("summary", "The answer, from the locking of this box");
    freeing();
    m.close().close();
  }

  @Override
  void toLearn() {
    m.open("section", "aria-labelledby", "table");
    m.element("h2", "What the locking table says of lever " + asked.lever(), "id", "table");
    List<Entry> holding = entries(false);
    List<Entry> unmarked = entries(true);
    List<Entry> all =
        made.box().locking().stream()
            .filter(e -> names(e, asked.lever()) || holding.contains(e) || unmarked.contains(e))
            .toList();
    if (all.isEmpty()) {
      m.element("p", "No entry names it. What holds it stands outside the table.");
    } else {
      m.element("p", "Each entry that names it, under whichever lever it stands.");
      Tables.head(m, COLUMNS);
      for (Entry entry : all) {
        m.open("tr", "id", anchor(entry));
        Tables.cell(m, COLUMNS.get(0), entry.at().toString());
        Tables.cell(m, COLUMNS.get(1), entry.words());
        Tables.cell(
            m,
            COLUMNS.get(2),
            holding.contains(entry)
                ? "\u2718 holds it"
                : unmarked.contains(entry) ? "only if its piece holds" : "no");
        Tables.cell(m, COLUMNS.get(3), entry.note());
        m.close();
      }
      Tables.end(m);
    }
    m.close();
  }

  /**
   * Of the entries that hold the lever: those that are read so for possibility alone, or others.
   */
  private List<Entry> entries(boolean unmarked) {
    return refusal.way().heldBy().stream()
        .filter(h -> h.unmarked() == unmarked)
        .flatMap(h -> h.entry().stream())
        .toList();
  }

  private static boolean names(Entry entry, String lever) {
    return Stream.concat(
            Stream.concat(Stream.of(entry.lever()), entry.others().stream()),
            entry.when().stream().map(Entry.Condition::lever))
        .anyMatch(lever::equals);
  }

  @Override
  void howToRead() {
    if (!allHolds()) {
      m.element(
          "p",
          "Not everything of this box is proved or shown: look at the check before any of its locking"
              + " is taken for the rule.",
          "class",
          "wrong");
    }
    m.element(
        "p",
        "The movements, and what is free at each step, are those of the levers, locking and"
            + " instruments as the files below give them, by whole strokes, every piece with conditions"
            + " holding its levers. They were found by a search, and played, in the run that wrote this"
            + " page. That the lever is held here says nothing of the rest of the locking; the check"
            + " does.");
  }

  private boolean allHolds() {
    return StreamSupport.stream(made.result().required("requirements").spliterator(), false)
        .allMatch(r -> r.required("verdict").asText().matches("proved|shown"));
  }
}
