package lockwright.railway.frame;

import lockwright.spec.Span;

/** A lever of the frame: its number (digits, perhaps a letter), its label and what it works. */
public record Lever(String id, String label, Work work, Span at) {}
