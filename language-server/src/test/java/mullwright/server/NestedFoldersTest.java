package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.WorkspaceFoldersChangeEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of two folders, one inside the other, the outer one counts. */
class NestedFoldersTest {
  private static final String TEXT = "use \"../catalog/small.wall\"\nwall East {\n}\n";

  @TempDir Path folder;

  private final WorkspaceFolder outer = new WorkspaceFolder("", "outer");
  private final WorkspaceFolder inner = new WorkspaceFolder("", "inner");

  private String east() {
    Conversation.write(folder, SmallCatalog.PATH, SmallCatalog.TEXT);
    String east = Conversation.address(Conversation.write(folder, "walls/east.wall", TEXT));
    outer.setUri(Conversation.address(folder));
    inner.setUri(Conversation.address(folder.resolve("walls")));
    return east;
  }

  private static void change(
      Conversation talk, List<WorkspaceFolder> added, List<WorkspaceFolder> removed) {
    talk.server
        .getWorkspaceService()
        .didChangeWorkspaceFolders(
            new DidChangeWorkspaceFoldersParams(new WorkspaceFoldersChangeEvent(added, removed)));
  }

  private static List<String> rules(Conversation talk, String address) {
    return talk.heard.next(address).getDiagnostics().stream()
        .map(it -> it.getCode().getLeft())
        .toList();
  }

  @Test
  void aFileOfTheInnerFolderUsesThoseOfTheOuter() {
    String east = east();
    try (Conversation talk = Conversation.greeted("NestedFoldersTest", folder)) {
      change(talk, List.of(inner), List.of());
      talk.open(east, TEXT);
      assertThat(rules(talk, east)).doesNotContain("broken-use");
    }
  }

  @Test
  void theOuterFolderMayComeLaterAndGoAgain() {
    String east = east();
    try (Conversation talk = Conversation.greeted("NestedFoldersTest", folder.resolve("walls"))) {
      talk.open(east, TEXT);
      assertThat(rules(talk, east)).contains("broken-use");
      change(talk, List.of(outer), List.of());
      assertThat(rules(talk, east)).doesNotContain("broken-use");
      change(talk, List.of(), List.of(outer));
      assertThat(rules(talk, east)).contains("broken-use");
    }
  }
}
