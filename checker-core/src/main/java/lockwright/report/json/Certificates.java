package lockwright.report.json;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lockwright.encode.names.Certificate;
import lockwright.encode.names.Fact;

/** Collects the certificates that verdicts name, each distinct one once, by digest. */
final class Certificates {
  private final SortedMap<String, Certificate> byDigest = new TreeMap<>();

  /**
   * @param clauses a line each, without line ends; SHA-256 of the lines is the digest
   */
  record Part(String digest, List<String> clauses) {}

  /** The digest of a certificate. */
  String digest(Certificate certificate) {
    String digest = certificate.digest();
    byDigest.putIfAbsent(digest, certificate);
    return digest;
  }

  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    byDigest.forEach((digest, c) -> parts.add(new Part(digest, lines(c))));
    return parts;
  }

  private static List<String> lines(Certificate certificate) {
    return certificate.clauses().stream()
        .map(c -> c.stream().map(Fact::toString).collect(Collectors.joining(" or ")))
        .toList();
  }
}
