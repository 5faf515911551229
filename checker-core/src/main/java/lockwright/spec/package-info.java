/**
 * What the author wrote, and where: the readers of the four files of a spec, and the problems
 * found; and the locking table written anew. Start at {@link lockwright.spec.SpecFolder}. Values
 * stay the text that was written; each carries its place. Only form is checked here (syntax, keys,
 * words); what the names mean is the railway's. Imports no other room; the only user of a YAML
 * library.
 */
package lockwright.spec;
