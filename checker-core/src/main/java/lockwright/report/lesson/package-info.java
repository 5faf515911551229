/**
 * Lessons: a page of HTML for each requirement that is broken and for each route that can be
 * cleared, one step a movement, made from what stands; what is free in each step is asked of {@code
 * working}. Start at {@link lockwright.report.lesson.Lessons}. May import {@code report}, {@code
 * report.html}, {@code report.picture}, {@code report.learner}, {@code railway}, {@code audit} and
 * {@code working}.
 */
package lockwright.report.lesson;
