package mullwright.editor;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Vim with ALE opens a wall, takes the fix, hovers, completes, renames and saves. */
class VimIT {
  @TempDir Path folder;

  @Test
  void doesWhatADrafterDoes() throws Exception {
    Tools.needed("vim", "vim", "--version");
    Tools.needed("vim-ale", "vim", "-u", "NONE", "-N", "-es", "-c", "packadd ale", "-c", "qa!");
    EditorTalk talk = new EditorTalk("vim", folder);

    String said =
        talk.run("vim", "-u", "NONE", "-N", "-es", "-S", talk.client() + "/test/features.vim");

    talk.hold(said);
    talk.keep();
  }
}
