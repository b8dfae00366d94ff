package mullwright.preview;

/**
 * What one page wants to see.
 *
 * @param wall by its name in the page; "" follows the editor
 * @param at the piece that was chosen, by its name in the page; "" for none
 * @param base true to lay over what the wall was in the last commit
 * @param tab which of the views beside the drawing is turned to: {@code section}, {@code schedule};
 *     "" for all, as a page says that shows them all
 * @param far true if the drawing is seen from so far that marks cannot be read
 */
record Look(String wall, String at, boolean base, String tab, boolean far) {
  /** True if that view beside the drawing is seen. */
  boolean sees(String view) {
    return tab.isEmpty() || tab.equals(view);
  }
}
