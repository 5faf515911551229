/**
 * The engine that lets others search a smaller system, in which the greater values of a variable
 * are one. See {@link lockwright.proof.merged.MergedValues}.
 */
package lockwright.proof.merged;
