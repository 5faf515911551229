/**
 * The railway of a plan and what follows from it alone: routes, paths not signalled, flank traps
 * and paths, conflicts, distant paths. Start at {@link lockwright.railway.layout.Layout} for what
 * is given, and at {@link lockwright.railway.layout.Routes} for what is derived. Knows nothing of
 * levers; imports {@code spec} for places only.
 */
package lockwright.railway.layout;
