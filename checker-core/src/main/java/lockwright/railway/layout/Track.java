package lockwright.railway.layout;

import lockwright.spec.Span;

/** A length of line between two ends, the unit of occupation. */
public record Track(String id, String label, boolean passenger, Span at) {}
