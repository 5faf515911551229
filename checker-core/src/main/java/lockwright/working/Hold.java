package lockwright.working;

import java.util.Optional;
import lockwright.railway.locking.Entry;

/**
 * Why a movement is not free.
 *
 * @param words the rule, in words
 * @param entry the entry of the locking table, where the locking holds it
 */
public record Hold(String words, Optional<Entry> entry) {}
