/**
 * A machine without railways: variables of finitely many values, transitions with a guard, targets
 * that must or must not be reached. Start at {@link lockwright.system.TransitionSystem}. Imports
 * nothing of ours.
 */
package lockwright.system;
