package mullwright.preview;

import mullwright.workspace.FilePlace;

/** The way from the page to the text: an editor that goes there. */
public interface Opener {
  /** There is no editor: the page shows the text itself. */
  Opener NONE =
      new Opener() {
        @Override
        public boolean able() {
          return false;
        }

        @Override
        public void open(SceneFile beside, FilePlace place) {
          throw new IllegalStateException("there is no editor");
        }
      };

  /** True if there is an editor that can be asked. */
  boolean able();

  /**
   * Asks the editor to go to a place; comes back at once. Called from any thread.
   *
   * @param beside a file of the same snapshot
   */
  void open(SceneFile beside, FilePlace place);
}
