package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.junit.jupiter.api.Test;

/** A part is unused only if no file of the workspace names it. */
class UnusedElsewhereTest extends ProtocolTalk {
  /** The rules of the findings of each file as last told. */
  private final Map<String, List<String>> told = new HashMap<>();

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
    comes(address, rules -> !rules.contains("unused"));
    CodeAction split =
        picked(titled(actions(address, text, "wall West"), "Move wall West to a file"));
    String made = Conversation.address(folder.resolve("walls/west.wall"));
    String left = after(split, address, text);
    talk.open(made, after(split, made, ""));
    talk.replace(address, left);
    assertThat(titles(actions(address, left, "V9"))).noneMatch(it -> it.startsWith("Take"));
    comes(address, rules -> !rules.contains("unused"));
    comes(made, rules -> !rules.contains("unknown-name"));
    talk.replace(made, "wall West {\n}\n");
    comes(address, rules -> rules.contains("unused"));
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

  /** Waits until a file's findings are right; those of two files come in any order. */
  private void comes(String address, Predicate<List<String>> right) {
    while (!told.containsKey(address) || !right.test(told.get(address))) {
      PublishDiagnosticsParams next = talk.heard.next();
      told.put(
          next.getUri(), next.getDiagnostics().stream().map(it -> it.getCode().getLeft()).toList());
    }
  }
}
