package lockwright.proof;

import java.util.function.Consumer;
import lockwright.solver.Solvers;
import lockwright.system.TransitionSystem;

/**
 * What an engine works on, and with.
 *
 * @param progress is told, in words, of each stage of long work
 */
public record Problem(TransitionSystem system, Solvers solvers, Consumer<String> progress) {}
