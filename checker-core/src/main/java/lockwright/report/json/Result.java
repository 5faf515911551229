package lockwright.report.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lockwright.audit.CheckedBy;
import lockwright.railway.Box;
import lockwright.report.Advised;
import lockwright.report.Assumption;
import lockwright.report.Cautions;
import lockwright.report.Findings;

/** The whole of the file; its parts are in the order of the box, or sorted. */
record Result(
    int format,
    Tool tool,
    List<String> cautions,
    List<String> leftOut,
    String box,
    List<SpecFile> files,
    boolean passes,
    Counts counts,
    ExpectationsPart expectations,
    LayoutPart layout,
    DrawingPart drawing,
    List<LeverPart> levers,
    List<EntryPart> locking,
    List<SectionPart> sections,
    ControlsPart controls,
    List<RoutePart> routes,
    List<NotSignalledPart> notSignalled,
    List<ConflictPart> conflicts,
    List<DistantPathPart> distantPaths,
    List<FlankPathPart> flankPaths,
    List<OverlapPart> overlaps,
    List<CatalogueEntry> catalogue,
    List<Instance> requirements,
    List<Instance> advice,
    List<ExemptionPart> exempted,
    EntriesPart entries,
    List<Assumption> assumptions,
    List<Certificates.Part> certificates,
    List<Runs.Part> runs) {

  static final int FORMAT = 1;

  record Tool(String name, String version, String solver, String secondSolver) {}

  record SpecFile(String name, String sha256) {}

  static Result of(Findings findings) {
    Box box = findings.box();
    Runs runs = new Runs();
    Certificates certificates = new Certificates();
    Instances instances = new Instances(findings, runs, certificates);
    List<Instance> requirements = findings.audited().stream().map(a -> a.fold(instances)).toList();
    List<Instance> advice =
        findings.advice().stream()
            .map(a -> a.fold(instances).advised(Advised.of(a).toString()))
            .toList();
    EntriesPart entries = EntriesPart.of(findings.entries(), runs, certificates);
    return new Result(
        FORMAT,
        new Tool(
            "Lockwright",
            ToolVersion.OF_THIS_BUILD,
            findings.solver(),
            CheckedBy.SECOND_SOLVER.words()),
        Cautions.ALL,
        Cautions.LEFT_OUT,
        box.name(),
        files(findings.digests()),
        findings.passes(),
        Counts.of(requirements),
        ExpectationsPart.of(findings),
        LayoutPart.of(box),
        DrawingPart.of(box),
        box.frame().levers().stream().map(l -> LeverPart.of(box, l)).toList(),
        box.locking().stream().map(EntryPart::of).toList(),
        box.sections().stream().map(SectionPart::of).toList(),
        ControlsPart.of(box),
        box.routes().stream().map(RoutePart::of).toList(),
        box.notSignalled().stream().map(NotSignalledPart::of).toList(),
        box.conflicts().stream().map(ConflictPart::of).toList(),
        box.distantPaths().stream().map(DistantPathPart::of).toList(),
        FlankPathPart.of(box),
        OverlapPart.of(box),
        CatalogueEntry.all(requirements),
        requirements,
        advice,
        box.exempted().stream().map(ExemptionPart::of).toList(),
        entries,
        Assumption.of(box),
        certificates.parts(),
        runs.parts());
  }

  private static List<SpecFile> files(Map<String, String> digests) {
    List<SpecFile> files = new ArrayList<>();
    digests.forEach((name, digest) -> files.add(new SpecFile(name, digest)));
    return files;
  }
}
