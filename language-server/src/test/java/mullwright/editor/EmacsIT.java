package mullwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Emacs with eglot opens a wall, takes the fix, hovers, completes, renames and saves. */
class EmacsIT {
  /** Where Debian puts packages of Emacs. */
  private static final Path PACKAGES = Path.of("/usr/share/emacs/site-lisp/elpa");

  @TempDir Path folder;

  @Test
  void doesWhatADrafterDoes() throws Exception {
    List<String> emacs = emacs();
    List<String> asked = new ArrayList<>(emacs);
    asked.addAll(List.of("--eval", "(require 'eglot)"));
    Tools.needed("emacs with eglot", asked.toArray(String[]::new));
    EditorTalk talk = new EditorTalk("emacs", folder);
    emacs.addAll(
        List.of("-L", talk.client().toString(), "-l", talk.client() + "/test/features.el"));

    String said = talk.run(emacs.toArray(String[]::new));

    talk.hold(said);
    talk.keep();
  }

  @Test
  void asksHowFarAGridLineIsToMoveUntilTheServerTakesIt() throws Exception {
    List<String> emacs = emacs();
    List<String> asked = new ArrayList<>(emacs);
    asked.addAll(List.of("--eval", "(require 'eglot)"));
    Tools.needed("emacs with eglot", asked.toArray(String[]::new));
    EditorTalk talk = new EditorTalk("emacs", folder);
    emacs.addAll(List.of("-L", talk.client().toString(), "-l", talk.client() + "/test/move.el"));

    String said = talk.run(emacs.toArray(String[]::new));

    assertThat(said).contains("is no length with its unit", "moved").doesNotContain("gave up");
  }

  @Test
  void theModeCompilesWithoutAWarningAndIndentsAsTheFormatterDoes() throws Exception {
    Tools.needed("emacs", "emacs", "--version");
    EditorTalk talk = new EditorTalk("emacs", folder);
    Path mode = Files.copy(talk.client().resolve("wall-mode.el"), folder.resolve("wall-mode.el"));
    String looked =
        "(progn (byte-compile-file \"%s\") (load \"%s\") (find-file \"%s\")"
            + " (indent-region (point-min) (point-max))"
            + " (princ (if (buffer-modified-p) \"changed\" \"as it was\")))";

    String said =
        talk.run("emacs", "--batch", "-Q", "--eval", looked.formatted(mode, mode, talk.wall()));

    assertThat(said).doesNotContain("Warning", "Error").endsWith("as it was");
  }

  private static List<String> emacs() throws IOException {
    List<String> command = new ArrayList<>(List.of("emacs", "--batch", "-Q"));
    if (Files.isDirectory(PACKAGES)) {
      try (Stream<Path> packages = Files.list(PACKAGES)) {
        packages
            .filter(Files::isDirectory)
            .sorted()
            .forEach(each -> command.addAll(List.of("-L", each.toString())));
      }
    }
    return command;
  }
}
