package lockwright.report.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import lockwright.check.Check;
import lockwright.check.EntryTrials;
import lockwright.check.Searcher;
import lockwright.proof.Knowledge;
import lockwright.railway.Box;
import lockwright.railway.BoxBuilder;
import lockwright.railway.control.ArmControl;
import lockwright.railway.control.Contact;
import lockwright.railway.control.Controls;
import lockwright.railway.control.OutsideCondition;
import lockwright.railway.frame.Connections;
import lockwright.railway.locking.Entry;
import lockwright.railway.requirement.Expectation;
import lockwright.report.Expectations;
import lockwright.report.Findings;
import lockwright.spec.Span;
import lockwright.worker.Found;
import lockwright.worker.Job;
import lockwright.worker.Limits;
import lockwright.worker.UnfitMachine;

/** Findings of checked boxes, each checked once. Together they have every verdict. */
final class Results {
  private static final BoxBuilder.Built JUNCTION = BoxBuilder.read(boxes("e1-junction"));

  /** The entry that the broken box lacks. */
  static final String LEFT_OUT = "1 locks 4";

  /** A box with a token section. */
  static final Findings SECTION = check(box(BoxBuilder.read(boxes("calling-on-into-section"))));

  /** A junction with an entry left out: proved, shown and broken. */
  static final Findings BROKEN = check(without(box(JUNCTION), LEFT_OUT));

  /** The same with a signal that can never be pulled: empty and impossible, besides. */
  static final Findings EMPTY = check(stuck(box(JUNCTION)));

  /** The same, hardly looked at. */
  static final Findings UNDECIDED = check(box(JUNCTION), new Limits(60, 1, 0));

  /** A box with every form that a spec can take. */
  static final Findings FORMS = check(box(BoxBuilder.read(boxes("every-form"))));

  /** A box whose frame is restored only when a token was withdrawn. */
  static final Findings STRANDED = check(box(BoxBuilder.read(boxes("restored-by-a-token"))));

  /** A box whose token releases a ground frame, and is not alone. */
  static final Findings SIDING = check(box(BoxBuilder.read(boxes("token-siding-without-consent"))));

  /** A box with a closing lever over opposed routes. */
  static final Findings CLOSING = check(box(BoxBuilder.read(boxes("opposed-through-signals"))));

  /** A box with a signal into a section whose control lets it go off once too often. */
  static final Findings CONTROLLED =
      check(controlled(box(BoxBuilder.read(boxes("calling-on-proved")))));

  /** A junction without detection, where a rod may break. */
  static final Findings ROD =
      check(
          box(BoxBuilder.read(boxes("broken-rod")))
              .withConnections(new Connections(List.of(), List.of("4"), List.of())));

  /** A crossover worked electrically. */
  static final Findings ELECTRIC = check(box(BoxBuilder.read(boxes("points-worked-electrically"))));

  /** A box with points worked by hand, whose bolt the arm does not hold. */
  static final Findings BY_HAND =
      check(without(box(BoxBuilder.read(boxes("points-worked-by-hand"))), "1 locks 2"));

  /** A loop with sprung points, its home free of the starting signal. */
  static final Findings SPRUNG =
      check(without(box(BoxBuilder.read(boxes("sprung-points"))), "1 locks 6"));

  /** A junction whose points are not locked against each other: as advice, and asked for. */
  static final Findings ADVICE =
      tried(check(without(box(BoxBuilder.read(boxes("double-line-junction"))), "6 released by 7")));

  static final Findings ASKED = check(box(BoxBuilder.read(boxes("double-line-junction-asked"))));

  /** The same locked, each entry left out. */
  static final Findings ADVICE_KEPT =
      tried(check(box(BoxBuilder.read(boxes("double-line-junction")))));

  /** The broken box, with what becomes of what is expected and waived. */
  static final Findings WAIVED =
      BROKEN.against(
          new Expectations(
              List.of(
                  expectation("no conflict: signals 1 and 2", Optional.empty()),
                  expectation("points set: signal 1", waiver("2031-04-30")),
                  expectation("points set: signal 2", waiver("2031-05-01"))),
              Optional.of(LocalDate.parse("2031-05-01"))));

  /** Nothing expected or waived, at some date. */
  static final Expectations NOTHING =
      new Expectations(List.of(), Optional.of(LocalDate.parse("2031-05-01")));

  /** The junction with entries that it does not need: each left out, hardly looked at or well. */
  static final Findings ENTRIES = tried(Limits.usual());

  static final Findings ENTRIES_UNDECIDED = tried(new Limits(60, 1, 0));

  static final List<Findings> ALL =
      List.of(
          SECTION,
          SIDING,
          BROKEN,
          EMPTY,
          UNDECIDED,
          FORMS,
          STRANDED,
          CLOSING,
          CONTROLLED,
          ROD,
          ELECTRIC,
          BY_HAND,
          SPRUNG,
          ADVICE,
          ASKED,
          ADVICE_KEPT,
          WAIVED,
          ENTRIES,
          ENTRIES_UNDECIDED);

  private static final Map<Findings, JsonNode> WRITTEN = new IdentityHashMap<>();

  private Results() {}

  private static Box controlled(Box box) {
    Span here = new Span("controls.yaml", 1, 1);
    OutsideCondition clear =
        new OutsideCondition(
            "Line clear", OutsideCondition.Kind.TRACK_CIRCUIT, List.of("line"), false, here);
    ArmControl control = new ArmControl("1", List.of(new Contact.Outside("Line clear")), here);
    return box.withControls(new Controls(List.of(clear), List.of(), List.of(control)));
  }

  private static Expectation expectation(String id, Optional<Expectation.Waiver> waiver) {
    return new Expectation(
        id,
        Expectation.Verdict.BROKEN,
        "a \"lesson\" </script>\u202e",
        waiver,
        new Span("waivers.yaml", 2, 3));
  }

  private static Optional<Expectation.Waiver> waiver(String until) {
    return Optional.of(new Expectation.Waiver("signal engineer", LocalDate.parse(until)));
  }

  static Path boxes(String name) {
    return Path.of("src", "test", "resources", "boxes", name);
  }

  static Box box(BoxBuilder.Built built) {
    return built.box().orElseThrow();
  }

  static Findings check(Box box) {
    return check(box, Limits.usual());
  }

  private static Findings check(Box box, Limits limits) {
    try {
      return new Check(limits, (job, progress) -> search(job), text -> {})
          .run(box, JUNCTION.digests());
    } catch (UnfitMachine | IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Found search(Job job) {
    Knowledge known = job.run(progress -> {});
    return new Found(known.verdicts(), known.decidedBy(), "in this process");
  }

  /** A class of its own, since other threads search while this one is still being made. */
  private static final class InThisProcess implements Searcher, Consumer<String> {
    @Override
    public void accept(String progress) {}

    @Override
    public Found search(Job job, Consumer<String> progress) {
      Knowledge known = job.run(progress);
      return new Found(known.verdicts(), known.decidedBy(), "in this process");
    }
  }

  /** What is written of them, written once. */
  static JsonNode json(Findings findings) {
    return WRITTEN.computeIfAbsent(findings, Results::read).deepCopy();
  }

  private static JsonNode read(Findings findings) {
    try {
      return new JsonMapper().readTree(text(findings));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  static String text(Findings findings) {
    return new String(ResultJson.bytes(findings), StandardCharsets.UTF_8);
  }

  private static Box without(Box box, String entry) {
    List<Entry> entries = new ArrayList<>(box.locking());
    if (!entries.removeIf(e -> e.words().equals(entry))) {
      throw new IllegalArgumentException("no entry " + entry);
    }
    return box.withLocking(entries);
  }

  private static Findings tried(Limits limits) {
    Span at = new Span("locking.csv", 99, 1);
    List<Entry> entries = new ArrayList<>(box(JUNCTION).locking());
    for (Entry.Kind kind : List.of(Entry.Kind.LOCKS, Entry.Kind.NOT_AGAIN_BEFORE)) {
      entries.add(new Entry(kind, "1", List.of("2"), List.of(), false, "", at));
    }
    return tried(check(box(JUNCTION).withLocking(entries)), limits);
  }

  private static Findings tried(Findings findings) {
    return tried(findings, Limits.usual());
  }

  private static Findings tried(Findings findings, Limits limits) {
    try {
      return new EntryTrials(limits, new InThisProcess(), new InThisProcess()).run(findings);
    } catch (UnfitMachine | IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Lever 1 can leave N only with lever 2 reversed, and only with lever 2 normal. */
  private static Box stuck(Box box) {
    List<Entry> entries = new ArrayList<>(box.locking());
    Span at = new Span("locking.csv", 99, 1);
    for (Entry.Kind kind : List.of(Entry.Kind.RELEASED_BY, Entry.Kind.LOCKS)) {
      entries.add(new Entry(kind, "1", List.of("2"), List.of(), false, "stuck", at));
    }
    return box.withLocking(entries);
  }
}
