/**
 * The house: a checker for the mechanical locking of a signal box. No class lives in this package;
 * each package below it is a room with one job. Which room may import which is written as a table
 * in {@code ArchitectureTest}, and held by it. Start reading at {@code lockwright.check}.
 */
package lockwright;
