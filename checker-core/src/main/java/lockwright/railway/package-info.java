/**
 * The railway and its apparatus in the trade's words. {@link lockwright.railway.Box} is all of it;
 * {@link lockwright.railway.BoxBuilder} makes one from a spec and tells what does not fit together.
 * Each room inside holds the records of one part. May import {@code spec} and its own rooms.
 */
package lockwright.railway;
