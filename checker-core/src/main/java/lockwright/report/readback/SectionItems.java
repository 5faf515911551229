package lockwright.report.readback;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lockwright.railway.Box;
import lockwright.railway.requirement.Requirement;
import lockwright.railway.section.Section;

/** Each single-line section: its instruments, tokens, consent and release. */
final class SectionItems {
  private SectionItems() {}

  static List<Item> of(Box box) {
    List<Item> items = new ArrayList<>();
    for (Section section : box.sections()) {
      say(items, section, "begins at", "the outer end of track " + section.track());
      String token = words(section.token());
      say(items, section, "worked by", "electric " + token + ", " + section.tokens() + " in all");
      for (Section.Instrument i : section.instruments()) {
        say(
            items,
            section,
            "instrument",
            i.name()
                + (i.name().equals(section.here()) ? ", at this box" : "")
                + (i.attended() ? ", attended" : ", not attended")
                + "; needs the consent of: "
                + Words.list(i.needsConsentOf()));
      }
      say(
          items,
          section,
          "plunging",
          section.plungeWhileWithdrawing() ? "also while withdrawing" : "not while withdrawing");
      say(
          items,
          section,
          "phase reverses",
          section.phaseReversesAtStart()
              ? "at the start of a withdrawal"
              : "at the end of a withdrawal");
      say(items, section, "irregular withdrawal", irregular(section.irregular()));
      say(items, section, "release", section.release().map(SectionItems::release).orElse("none"));
      for (Section.Lock lock : section.locks()) {
        say(
            items,
            section,
            "ground frame",
            lock.groundFrame()
                + ", released by the "
                + token
                + (lock.heldWhileOpen()
                    ? ", which is held while it is open"
                    : ", which is not held while it is open"));
      }
      say(items, section, "section signals", Words.list(signals(box, section)));
    }
    return items;
  }

  private static void say(List<Item> items, Section section, String what, String value) {
    items.add(new Item("section", section.name(), what, value));
  }

  private static String irregular(Section.Irregular irregular) {
    return irregular == Section.Irregular.ANY
        ? "allowed any number of times"
        : irregular == Section.Irregular.ONCE ? "allowed once" : "assumed not to happen";
  }

  private static String release(Section.Release release) {
    return "of levers "
        + Words.list(release.levers())
        + ", lasting "
        + words(release.lasts())
        + ", in the beginning "
        + words(release.begins());
  }

  private static List<String> signals(Box box, Section section) {
    return box.requirements().stream()
        .filter(
            r ->
                r instanceof Requirement.SectionSignalEarned e
                    && e.section().equals(section.name()))
        .map(r -> ((Requirement.SectionSignalEarned) r).signal())
        .toList();
  }

  private static String words(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
