package mullwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Neovim's own protocol client opens a wall, sees the finding, takes the fix and saves. */
class NeovimIT {
  @TempDir Path workspace;

  @Test
  void opensAnExampleTakesTheFixAndSaves() throws Exception {
    Tools.needed("neovim", "nvim", "--version");
    Path wall = brokenExample("isolated by bituminous-paint\n", "\n");

    Tools.Ran ran = run(wall);

    assertThat(ran.output())
        .contains("isolation-missing", "fix ", "clean", "hover true", "saved")
        .doesNotContain("gave up");
    assertThat(Files.readString(wall)).contains("isolated by");
  }

  @Test
  void mendsAMisspeltName() throws Exception {
    Tools.needed("neovim", "nvim", "--version");
    Path wall = brokenExample("B..F    as mullion", "B..F    as mulion");

    Tools.Ran ran = run(wall);

    assertThat(ran.output()).contains("unknown-name", "clean", "saved").doesNotContain("gave up");
    assertThat(Files.readString(wall)).contains("as mullion").doesNotContain("mulion");
  }

  @Test
  void doesWhatADrafterDoes() throws Exception {
    Tools.needed("neovim", "nvim", "--version");
    EditorTalk talk = new EditorTalk("neovim", workspace);

    String said = script(talk, "features.lua");

    talk.hold(said);
    talk.keep();
  }

  @Test
  void asksHowFarAGridLineIsToMoveUntilTheServerTakesIt() throws Exception {
    Tools.needed("neovim", "nvim", "--version");
    EditorTalk talk = new EditorTalk("neovim", workspace);

    String said = script(talk, "move.lua");

    assertThat(said).contains("is no length with its unit", "moved").doesNotContain("gave up");
  }

  @Test
  void everyCommandShowsWhatItSaysAndStandsInTheHelp() throws Exception {
    Tools.needed("neovim", "nvim", "--version");
    EditorTalk talk = new EditorTalk("neovim", workspace);

    String said = script(talk, "commands.lua");

    assertThat(said)
        .contains("laid out", "shown Lengths", "shown Calculations", "completes Cut Calculations")
        .contains("refused", "opens http://127.0.0.1:", "help mullwright.txt *:MullwrightShow*")
        .doesNotContain("gave up");
  }

  @Test
  void theTagsOfTheHelpAreThoseNeovimMakes() throws Exception {
    Tools.needed("neovim", "nvim", "--version");
    Path kept = Tools.project().resolve("editor-clients/neovim/doc");
    Files.copy(kept.resolve("mullwright.txt"), workspace.resolve("mullwright.txt"));

    Tools.run(
        workspace,
        Map.of(),
        List.of("nvim", "--headless", "--clean", "-c", "helptags " + workspace, "-c", "quit"));

    assertThat(workspace.resolve("tags")).hasSameTextualContentAs(kept.resolve("tags"));
  }

  /** What a script of the client's own tests says. */
  private static String script(EditorTalk talk, String name) throws Exception {
    return talk.run(
        "nvim",
        "--headless",
        "--clean",
        "--cmd",
        "set runtimepath^=" + talk.client(),
        "-c",
        "luafile " + talk.client().resolve("test").resolve(name));
  }

  /** The ferry terminal's wall with its first {@code good} text made bad, its catalog beside it. */
  private Path brokenExample(String good, String bad) throws Exception {
    Path examples = Tools.project().resolve("examples");
    Path wall = workspace.resolve("ferry-terminal/east.wall");
    Files.createDirectories(wall.getParent());
    Files.createDirectories(workspace.resolve("catalog"));
    Files.createDirectory(workspace.resolve(".mullwright"));
    Files.copy(
        examples.resolve("catalog/captured.wall"), workspace.resolve("catalog/captured.wall"));
    String text = Files.readString(examples.resolve("ferry-terminal/east.wall"));
    int at = text.indexOf(good);
    assertThat(at).as("the example still says " + good).isGreaterThanOrEqualTo(0);
    Files.writeString(wall, text.substring(0, at) + bad + text.substring(at + good.length()));
    return wall;
  }

  private Tools.Ran run(Path wall) throws Exception {
    Path client = Tools.project().resolve("editor-clients/neovim");
    List<String> server = List.of("java", "-jar", Tools.jar().toString(), "serve");
    return Tools.run(
        workspace,
        Map.of(
            "WALL_FILE", wall.toString(),
            "WALL_SERVER", server.stream().collect(Collectors.joining("\n"))),
        List.of(
            "nvim",
            "--headless",
            "--clean",
            "--cmd",
            "set runtimepath^=" + client,
            "-c",
            "luafile " + client.resolve("test/mend.lua")));
  }
}
