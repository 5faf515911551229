/**
 * What the YAML files of a spec may hold, one class a file: the readers take their keys and words
 * from it, and the JSON Schemas in {@code specs} are written from it. Depends on nothing.
 */
package lockwright.spec.form;
