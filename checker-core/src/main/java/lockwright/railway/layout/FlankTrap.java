package lockwright.railway.layout;

/** Trap points that must lie for the trap while a route is signalled; `docs/meaning.md` 1.5. */
public record FlankTrap(String points, Lie lie) {}
