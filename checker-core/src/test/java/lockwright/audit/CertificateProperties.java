package lockwright.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Fact;
import lockwright.railway.layout.Arm;
import lockwright.railway.layout.Route;
import lockwright.railway.section.Section.Begins;
import lockwright.railway.section.Section.Irregular;
import lockwright.railway.section.Section.Lasts;
import lockwright.railway.section.Section.Release;
import lockwright.railway.words.Quantity;
import lockwright.working.BruteForce;
import lockwright.working.Condition;
import lockwright.working.HandBox;
import lockwright.working.Sections;
import lockwright.working.Working;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;

/** On small boxes and certificates made at random, every way of checking judges alike. */
class CertificateProperties {
  private static final List<String> LEVERS = List.of("1", "2", "3", "4");
  private static final List<String> KINDS =
      List.of("released by", "locks", "locks both ways", "while normal locks both ways");

  @Property(tries = 400, shrinking = ShrinkingMode.OFF)
  void both_ways_judge_as_playing_every_movement_does(@ForAll long seed) {
    Random random = new Random(seed);
    List<String> entries = entries(random);
    Working working = working(random, frame().locking(entries.toArray(String[]::new)));
    Certificate certificate = certificate(random, working, entries);
    Assume.that(Certificates.all(working).stream().anyMatch(s -> Certificates.in(certificate, s)));
    boolean begins = Certificates.begins(working, certificate);
    boolean keeps = Certificates.keeps(working, certificate);
    Statistics.collect(begins && keeps);
    for (Checker checker : both(Invariant.read(working, certificate))) {
      assertThat(checker.begins() instanceof Outcome.Holds).isEqualTo(begins);
      assertThat(checker.keeps() instanceof Outcome.Holds).isEqualTo(keeps);
    }
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  void both_ways_judge_alike_where_there_is_a_section(@ForAll long seed) {
    Random random = new Random(seed);
    List<String> entries = entries(random);
    Working working =
        working(
            random,
            frame()
                .locking(entries.toArray(String[]::new))
                .routes(HandBox.route("1", "", new Route.End.InSection("line")))
                .section(section(random)));
    Certificate certificate = certificate(random, working, entries);
    Condition target = Invariant.read(working, certificate(random, working, entries)).whole();
    Invariant invariant = Invariant.read(working, certificate);
    Assume.that(new Enumeration(invariant).excludes(invariant.whole()) instanceof Outcome.Fails);
    Checker first = new Enumeration(invariant);
    Checker second = new Solving(invariant);
    assertThat(second.begins().getClass()).isEqualTo(first.begins().getClass());
    assertThat(second.keeps().getClass()).isEqualTo(first.keeps().getClass());
    assertThat(second.excludes(target).getClass()).isEqualTo(first.excludes(target).getClass());
    Statistics.collect(first.keeps() instanceof Outcome.Holds);
  }

  /** What a certificate that stands excludes can indeed not be reached. */
  @Property(tries = 300, shrinking = ShrinkingMode.OFF)
  void nothing_that_is_reached_is_excluded(@ForAll long seed) {
    Random random = new Random(seed);
    List<String> entries = entries(random);
    Working working =
        working(random, frame().locking(entries.toArray(String[]::new)).section(section(random)));
    Certificate certificate = certificate(random, working, entries);
    Invariant invariant = Invariant.read(working, certificate);
    Checker checker = new Enumeration(invariant);
    boolean stands =
        checker.begins() instanceof Outcome.Holds && checker.keeps() instanceof Outcome.Holds;
    Statistics.collect(stands);
    if (stands) {
      Condition outside = Condition.not(invariant.whole());
      assertThat(BruteForce.of(working).shortest(outside)).isEmpty();
    }
  }

  private static List<Checker> both(Invariant invariant) {
    return List.of(new Enumeration(invariant), new Solving(invariant));
  }

  private static HandBox frame() {
    return new HandBox().signal("1", Arm.STOP).points("2").points("3").signal("4", Arm.STOP);
  }

  private static Working working(Random random, HandBox box) {
    return random.nextInt(4) == 0 ? Working.whole(box.box()) : Working.parted(box.box());
  }

  private static Sections section(Random random) {
    Sections section = Sections.pair(1 + random.nextInt(2));
    section = random.nextBoolean() ? section.atStart() : section;
    section = random.nextBoolean() ? section.neverBoth() : section;
    section = random.nextInt(3) == 0 ? section.irregular(one(random, Irregular.values())) : section;
    return random.nextBoolean()
        ? section.release(
            new Release(List.of("1"), one(random, Lasts.values()), one(random, Begins.values())))
        : section;
  }

  private static <T> T one(Random random, T[] all) {
    return all[random.nextInt(all.length)];
  }

  private static List<String> entries(Random random) {
    List<String> entries = new ArrayList<>();
    int count = 1 + random.nextInt(5);
    while (entries.size() < count) {
      List<String> levers = new ArrayList<>(LEVERS);
      Collections.shuffle(levers, random);
      String when =
          random.nextInt(3) != 0
              ? ""
              : " when "
                  + levers.get(2)
                  + (random.nextBoolean() ? " N" : " R")
                  + (random.nextInt(3) == 0 ? " (holds)" : "");
      entries.add(
          levers.get(0)
              + " "
              + KINDS.get(random.nextInt(KINDS.size()))
              + " "
              + levers.get(1)
              + when);
    }
    return entries;
  }

  /** Clauses that the entries give, some left out, and a few more at random. */
  private static Certificate certificate(Random random, Working working, List<String> entries) {
    List<List<Fact>> clauses = new ArrayList<>();
    for (String entry : entries) {
      if (random.nextInt(6) != 0) {
        clauses.add(clauseOf(entry));
      }
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      List<Fact> clause = new ArrayList<>();
      for (int f = 1 + random.nextInt(3); f > 0; f--) {
        Quantity q = working.quantities().get(random.nextInt(working.quantities().size()));
        String value = q.values().get(random.nextInt(q.values().size()));
        clause.add(new Fact(q.key(), value, random.nextBoolean()));
      }
      clauses.add(clause);
    }
    return new Certificate(clauses);
  }

  private static List<Fact> clauseOf(String entry) {
    String[] words = entry.split(" when ")[0].split(" ");
    String a = words[0];
    String b = words[words.length - 1];
    List<Fact> clause = new ArrayList<>();
    clause.add(fact(a, entry.contains("while normal") ? "R" : "N"));
    if (entry.contains("both ways")) {
      clause.add(new Fact("lever " + b, "M", false));
    } else {
      clause.add(fact(b, entry.contains("released") ? "R" : "N"));
    }
    if (entry.contains(" when ")) {
      String[] when = entry.split(" when ")[1].split(" ");
      clause.add(fact(when[0], when[1].equals("N") ? "R" : "N"));
    }
    return clause;
  }

  private static Fact fact(String lever, String position) {
    return new Fact("lever " + lever, position, true);
  }
}
