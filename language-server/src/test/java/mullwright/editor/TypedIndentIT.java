package mullwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lines typed in Vim and in Neovim stand where the layout puts them, before anybody lays out. */
class TypedIndentIT {
  private static final String TYPED =
      """
      project "A" {
        units inches
        criteria {
          wind service // {
        }
      }
      wall W {
        grid {
          lines A..C spaced 5'-0",
            6'-0"
          row sill at 2"
        }
      }
      """;

  @TempDir private Path folder;

  @Test
  void inVim() throws Exception {
    Tools.needed("vim", "vim", "--version");
    typed("vim", List.of("vim", "-N", "-u", "NONE", "-es"));
  }

  @Test
  void inNeovim() throws Exception {
    Tools.needed("neovim", "nvim", "--version");
    typed("neovim", List.of("nvim", "--headless", "--clean"));
  }

  private void typed(String client, List<String> editor) throws Exception {
    Path clients = Tools.project().resolve("editor-clients");
    Path typed = folder.resolve("typed");
    List<String> command = new ArrayList<>(editor);
    command.addAll(
        List.of(
            "--cmd",
            "set runtimepath^=" + clients.resolve(client),
            "-S",
            clients.resolve("vim/test/indent.vim").toString()));
    Tools.run(
        folder,
        Map.of("WALL_FILE", folder.resolve("a.wall").toString(), "WALL_TYPED", typed.toString()),
        command);
    assertThat(typed).hasContent(TYPED);
  }
}
