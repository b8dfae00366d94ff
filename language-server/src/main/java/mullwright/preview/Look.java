package mullwright.preview;

/**
 * What one page wants to see.
 *
 * @param wall by its name in the page; "" follows the editor
 * @param at the piece that was chosen, by its name in the page; "" for none
 * @param base true to lay over what the wall was in the last commit
 */
record Look(String wall, String at, boolean base) {}
