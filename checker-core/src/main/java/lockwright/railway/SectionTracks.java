package lockwright.railway;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lockwright.railway.layout.Attachment;
import lockwright.spec.Message;
import lockwright.spec.Problems;
import lockwright.spec.SectionsFile;
import lockwright.spec.SpecFolder;
import lockwright.spec.Written;

/** Attaches the outer ends of tracks that lie in single-line sections. */
final class SectionTracks {
  private final TrackEnds ends;
  private final Problems problems;
  private final Map<String, Written> sectionOfTrack = new HashMap<>();

  SectionTracks(TrackEnds ends, Problems problems) {
    this.ends = ends;
    this.problems = problems;
  }

  /** Attaches what the plan has left open; returns whether every section got its end. */
  boolean attach(SpecFolder spec) {
    boolean good = !spec.has(SpecFolder.SECTIONS) || spec.isWhole(SpecFolder.SECTIONS);
    for (SectionsFile.Section section :
        spec.sections().map(SectionsFile::sections).orElse(List.of())) {
      good &= section.track().isPresent() && attach(section.name(), section.track().get());
      for (Written track : section.within()) {
        good &= attach(section.name(), track);
      }
    }
    return good;
  }

  private boolean attach(Written section, Written track) {
    Written earlier = sectionOfTrack.putIfAbsent(track.text(), section);
    if (!ends.isTrack(track.text())) {
      problems.add(
          Message.SECTION_UNKNOWN_TRACK,
          track.at(),
          "there is no track " + track.quoted(),
          "name the track of plan.yaml whose outer end lies in the section");
    } else if (earlier != null) {
      problems.add(
          Message.SECTIONS_ON_ONE_TRACK,
          track.at(),
          "track " + track.quoted() + " lies in section " + earlier.quoted() + " already",
          "name for each section the track of its own that leads into it");
    } else if (ends.attached(track.text()) == 1) {
      ends.attach(track, new Attachment.InSection(section.text()));
      return true;
    } else if (ends.attached(track.text()) == 0) {
      problems.add(
          Message.SECTION_TRACK_LOOSE,
          track.at(),
          "both ends of track "
              + track.quoted()
              + " are open, so which lies in the section is not"
              + " clear",
          "attach the inner end to something in plan.yaml");
    } else {
      problems.add(
          Message.SECTION_TRACK_CLOSED,
          track.at(),
          "track " + track.quoted() + " has no open end that could lie in the section",
          "take the track out of the limits in plan.yaml, or name the track that leads into the"
              + " section");
    }
    return false;
  }
}
