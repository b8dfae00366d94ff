package mullwright.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The syntax files of editors know every fixed word of the language, and no other. */
class EditorWordsTest {
  private final LanguageWords language = new LanguageWords();

  @Test
  void vim() {
    hold("vim/syntax/wall.vim", EditorWords::vim);
  }

  @Test
  void emacs() {
    hold("emacs/wall-mode.el", EditorWords::emacs);
  }

  @Test
  void kate() {
    hold("kate/wall.xml", EditorWords::kate);
  }

  @Test
  void sublime() {
    hold("sublime/Wall.sublime-syntax", EditorWords::sublime);
  }

  @Test
  void textMate() {
    hold("vscode/syntaxes/wall.tmLanguage.json", EditorWords::textMate);
  }

  @ParameterizedTest
  @ValueSource(strings = {"syntax/wall.vim", "ftplugin/wall.vim", "ftdetect/wall.vim"})
  void neovimReadsTheFilesOfVim(String file) {
    assertThat(EditorWords.text("neovim/" + file))
        .isEqualTo(
            "\" Neovim reads the file Vim has for this, beside this folder.\n"
                + "execute 'source' fnameescape(expand('<sfile>:p:h:h:h') . '/vim/"
                + file
                + "')\n");
    assertThat(EditorWords.path("vim/" + file)).exists();
  }

  private void hold(String file, Function<String, EditorWords.File> reader) {
    Assumptions.assumeTrue(Files.exists(EditorWords.path(file)), file + " is not here yet");
    EditorWords.File written = reader.apply(file);
    for (LanguageWords.Group group : LanguageWords.Group.values()) {
      Set<String> words = new TreeSet<>(written.words(group));
      if (group == LanguageWords.Group.STATEMENTS) {
        // shown as a statement or as a property: both are right
        words.removeAll(LanguageWords.propertiesAmongStatements());
      }
      assertThat(words).as(file + ": " + group).isEqualTo(language.of(group));
    }
  }
}
