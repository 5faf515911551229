package lockwright.report.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Claim;
import lockwright.encode.names.Names;
import lockwright.encode.names.Run;

/**
 * What a result says of the entries of the table, each left out alone, read back as claims.
 *
 * @param notTried why none was tried; empty, if they were
 * @param entries in the order of the table
 */
public record RecordedEntries(String notTried, List<Of> entries) {
  public RecordedEntries {
    entries = List.copyOf(entries);
  }

  /**
   * What is said of one.
   *
   * @param claims by target, for {@link lockwright.audit.EntryAudit}
   * @param undecided why nothing is known; empty, if something is
   */
  public record Of(Map<String, Claim> claims, List<String> undecided) {}

  /**
   * @param safety the ids of the requirements of safety, and of the advice that is kept
   */
  static RecordedEntries read(
      JsonNode part,
      Set<String> safety,
      Function<String, Run> runs,
      Function<String, Certificate> certificates) {
    List<Of> all = new ArrayList<>();
    for (JsonNode verdict : part.path("verdicts")) {
      all.add(of(verdict, safety, runs, certificates));
    }
    return new RecordedEntries(part.path("notTried").asText(), all);
  }

  private static Of of(
      JsonNode verdict,
      Set<String> safety,
      Function<String, Run> runs,
      Function<String, Certificate> certificates) {
    Map<String, Claim> claims = new HashMap<>();
    List<String> reasons = names(verdict.path("reasons"));
    for (JsonNode b : verdict.path("breaks")) {
      claims.put(text(b, "requirement"), reached(b, runs));
    }
    if (!claims.isEmpty()) {
      // Of the others only which are open is told; that the rest is kept is not, nor audited.
      Claim kept = new Claim.Never(new Certificate(List.of()));
      safety.forEach(id -> claims.putIfAbsent(id, kept));
      names(verdict.path("open")).forEach(claims::remove);
    }
    for (JsonNode b : verdict.path("advice")) {
      claims.put(text(b, "requirement"), reached(b, runs));
    }
    if (verdict.has("proof")) {
      claims.put(Names.FORBIDDEN_BY_ENTRY, never(verdict.required("proof"), certificates));
    }
    if (verdict.has("allows")) {
      claims.put(Names.FORBIDDEN_BY_ENTRY, reached(verdict.required("allows"), runs));
    }
    for (JsonNode k : verdict.path("kept")) {
      claims.put(text(k, "requirement"), never(k, certificates));
    }
    return new Of(claims, reasons);
  }

  private static Claim reached(JsonNode by, Function<String, Run> runs) {
    return new Claim.Reached(runs.apply(text(by, "run")), by.required("shortest").asBoolean());
  }

  private static Claim never(JsonNode by, Function<String, Certificate> certificates) {
    return new Claim.Never(certificates.apply(text(by, "certificate")));
  }

  private static String text(JsonNode node, String field) {
    return node.required(field).asText();
  }

  private static List<String> names(JsonNode list) {
    List<String> names = new ArrayList<>();
    list.forEach(n -> names.add(n.asText()));
    return names;
  }
}
