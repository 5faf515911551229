/**
 * The catalogue of requirements, and their instances for one layout. Start at {@link
 * lockwright.railway.requirement.Derivation}; the meaning of each is in `docs/meaning.md` 6.
 * Imports the layout, the frame and the sections, never the locking that is to be checked.
 */
package lockwright.railway.requirement;
