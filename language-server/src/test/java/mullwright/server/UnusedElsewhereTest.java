package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.eclipse.lsp4j.CodeAction;
import org.junit.jupiter.api.Test;

/** A part is unused only if no file of the workspace names it. */
class UnusedElsewhereTest extends ProtocolTalk {
  /**
   * A part that only a wall of another file uses is unused in its own file, not in the workspace.
   */
  @Test
  void aWallMovesAwayFromThePartsItUses() {
    String catalog = "catalog {\n  glass V9 {\n    ply 1/4\" annealed clear\n  }\n}\n";
    String west = ActionTest.EAST.substring(28).replace("wall East", "wall West");
    String text =
        ActionTest.EAST.substring(0, 28)
            + catalog
            + ActionTest.EAST.substring(28)
            + "\n"
            + west.replace("V1", "V9");
    String address = open("walls/both.wall", text);
    assertThat(rules(address)).doesNotContain("unused");
    CodeAction split =
        picked(titled(actions(address, text, "wall West"), "Move wall West to a file"));
    String made = Conversation.address(folder.resolve("walls/west.wall"));
    String left = after(split, address, text);
    talk.open(made, after(split, made, ""));
    talk.replace(address, left);
    assertThat(rules(address)).doesNotContain("unused");
    assertThat(titles(actions(address, left, "V9"))).noneMatch(it -> it.startsWith("Take"));
    assertThat(rules(made)).doesNotContain("unknown-name");
    talk.replace(made, "wall West {\n}\n");
    assertThat(rules(address)).contains("unused");
    assertThat(titles(actions(address, left, "V9"))).contains("Take V9 out");
  }

  @Test
  void aPartNobodyUsesYetMovesToTheCatalog() {
    String part = "  glass V9 {\n    ply 1/4\" annealed clear\n  }\n";
    String text =
        ActionTest.EAST.substring(0, 28)
            + "catalog {\n"
            + part
            + "}\n"
            + ActionTest.EAST.substring(28);
    String address = open("walls/east.wall", text);
    CodeAction move =
        picked(
            titled(actions(address, text, "glass V9", "refactor.extract"), "Move glass V9 to the"));
    assertThat(after(move, address, text)).isEqualTo(text.replace(part, ""));
  }

  private List<String> rules(String address) {
    return talk.heard.next(address).getDiagnostics().stream()
        .map(it -> it.getCode().getLeft())
        .toList();
  }
}
