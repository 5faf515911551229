/**
 * The learner's frame: a page of HTML on which the frame of a box can be worked, locked as the box
 * locks it. Made from {@code result.json} alone; the locking is a script, {@code locking.js}, which
 * is a reading of {@code docs/meaning.md} of its own and is compared with {@code working} in the
 * tests. Start at {@link lockwright.report.learner.LearnersFrame}. May import {@code report},
 * {@code report.html}, {@code report.picture} and {@code report.result}.
 */
package lockwright.report.learner;
