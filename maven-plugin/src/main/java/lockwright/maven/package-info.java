/**
 * The Maven goals: parameters in, build outcome out. No logic of its own: it may import {@code
 * lockwright.check} and what that returns. Start reading at the {@code check} goal.
 */
package lockwright.maven;
