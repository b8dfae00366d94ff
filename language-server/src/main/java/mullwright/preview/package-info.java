/**
 * The live drawing: a page on loopback that shows walls as they are edited.
 *
 * <p>Begin with {@link mullwright.preview.Preview}. Whoever has texts hands in a {@link
 * mullwright.preview.Scene} whenever they change; every page that listens is sent the parts that
 * differ from what it shows. A page that is slow is sent the newest state, never a queue of old
 * ones. Nothing here knows the editor's protocol, computes a wall, or writes to a disk.
 */
package mullwright.preview;
