/**
 * The pictures of a box as SVG, drawn from the tree of {@code result.json} alone: the track
 * diagram, the frame and the locking as a matrix. Start at {@link
 * lockwright.report.picture.Pictures}; what each part of a picture is for is said in {@code
 * docs/decisions/0006-what-each-part-of-a-picture-is-for.md}. May import {@code report} for the
 * escaping of the author's words.
 */
package lockwright.report.picture;
