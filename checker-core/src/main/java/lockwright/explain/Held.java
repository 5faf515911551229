package lockwright.explain;

import java.util.Optional;
import lockwright.railway.locking.Entry;

/**
 * One thing that holds a lever.
 *
 * @param entry the entry of the locking table, if it is one; else another rule holds it
 * @param rule the entry or rule in words, with where its levers stand
 * @param seen how the entry holds this lever, seen from it: "back lock: 1 is reversed and ..."
 * @param unmarked whether it holds only as possibility reads the table: the entry has conditions,
 *     and is not marked to hold its levers (meaning.md 3.2)
 */
public record Held(Optional<Entry> entry, String rule, String seen, boolean unmarked) {}
