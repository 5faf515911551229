/**
 * Lessons: a page of HTML for each requirement that is broken, for each route that can be cleared
 * and for each lever that a trainer asks about, one step a movement, made from what stands; what is
 * free in each step is asked of {@code working}. The trainer's own words stand beside the steps.
 * Start at {@link lockwright.report.lesson.Lessons}. May import {@code report}, {@code
 * report.html}, {@code report.picture}, {@code report.learner}, {@code explain}, {@code walk},
 * {@code spec}, {@code railway}, {@code audit} and {@code working}.
 */
package lockwright.report.lesson;
