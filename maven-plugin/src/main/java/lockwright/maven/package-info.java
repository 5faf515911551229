/**
 * The Maven goals: parameters in, build outcome out. No logic of its own: it may import {@code
 * lockwright.check}, what goes in and comes out there, and the formats of {@code
 * lockwright.report}; and what turns the locking table round in {@code lockwright.spec}. The
 * starter files of a new box are resources here. Start reading at {@link
 * lockwright.maven.CheckMojo}.
 */
package lockwright.maven;
