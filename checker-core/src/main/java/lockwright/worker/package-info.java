/**
 * Searches in a process of their own, so that a crash of the solver, or its memory, is no matter of
 * the build. The build's side starts at {@link lockwright.worker.Children}, the other at {@link
 * lockwright.worker.Child}. May import {@code proof}, its engines, {@code system}, {@code solver},
 * {@code solver.z3} and {@code verdict}.
 */
package lockwright.worker;
