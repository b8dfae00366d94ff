package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintLabelPart;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.api.Test;

/** What stands behind the lines, how it came about, and how a reader switches it. */
class HintTest extends ProtocolTalk {
  private static final String WALL = WallTalk.WALL.text();

  private List<InlayHint> hints(String address) {
    return await(
        talk.server
            .getTextDocumentService()
            .inlayHint(new InlayHintParams(new TextDocumentIdentifier(address), whole())));
  }

  private static String label(InlayHint hint) {
    if (hint.getLabel().isLeft()) {
      return hint.getLabel().getLeft();
    }
    StringBuilder label = new StringBuilder();
    hint.getLabel().getRight().forEach(part -> label.append(part.getValue()));
    return label.toString();
  }

  private static InlayHint at(List<InlayHint> hints, String words) {
    int line = WallTalk.lineOf(WALL, words);
    return hints.stream()
        .filter(hint -> hint.getPosition().getLine() == line)
        .findFirst()
        .orElseThrow();
  }

  /** 12'-8 1/2": head's upper edge (13' − 4" + 1 1/4") less sill's lower edge (2" − 1 1/4"). */
  @Test
  void tellHowTheyCameAboutAndLeadToWhatTheyHangOn() {
    String address = open("walls/east.wall", WALL);
    InlayHint vertical = at(hints(address), "vertical   all");
    assertThat(label(vertical)).isEqualTo("12'-8 1/2\" ↑↓");
    assertThat(vertical.getTooltip()).isNull();
    InlayHint told = await(talk.server.getTextDocumentService().resolveInlayHint(vertical));
    assertThat(told.getTooltip().getRight().getValue())
        .contains("cut length = 12'-8 1/2\"")
        .contains("upper end − lower end");
    List<InlayHintLabelPart> parts = told.getLabel().getRight();
    assertThat(parts.get(1).getLocation().getUri()).isEqualTo(address);
    assertThat(parts.get(1).getLocation().getRange().getStart().getLine())
        .isEqualTo(WallTalk.lineOf(WALL, "row   head"));
    assertThat(parts.get(2).getLocation().getRange().getStart().getLine())
        .isEqualTo(WallTalk.lineOf(WALL, "row   sill"));
  }

  /** Two bays of 5'-0" are 10'-0". */
  @Test
  void tellWhatSpacingsComeTo() {
    String address = open("walls/east.wall", WALL);
    assertThat(label(at(hints(address), "lines A..C"))).isEqualTo("10'-0\" over all");
  }

  @Test
  void aLineThatDoesNotReadHasNone() {
    String address = open("walls/east.wall", WALL);
    int before = hints(address).size();
    talk.change(address, WallTalk.WALL.range("role"), "(");
    assertThat(hints(address)).hasSizeLessThan(before);
  }

  @Test
  void areSwitchedByTheEditorAndByTheProject() {
    String address = open("walls/east.wall", WALL);
    assertThat(hints(address)).anyMatch(hint -> label(hint).contains("×"));
    talk.server
        .getWorkspaceService()
        .didChangeConfiguration(
            new DidChangeConfigurationParams(
                Map.of("mullwright", Map.of("hints", Map.of("glass", false)))));
    assertThat(hints(address)).isNotEmpty().noneMatch(hint -> label(hint).contains("×"));
    assertThat(talk.heard.refreshes).contains("inlayHints");
    Conversation.write(
        folder,
        "mullwright.properties",
        "editor.hints.lengths = off\neditor.units = millimetres\n");
    talk.server
        .getWorkspaceService()
        .didChangeWatchedFiles(new org.eclipse.lsp4j.DidChangeWatchedFilesParams(List.of()));
    // 10'-0" = 3048 mm, cut lengths are told to a tenth
    assertThat(hints(address)).extracting(HintTest::label).containsExactly("3048.0 mm over all");
    talk.server
        .getWorkspaceService()
        .didChangeConfiguration(
            new DidChangeConfigurationParams(
                Map.of("mullwright", Map.of("hints.lengths", true, "units", "inches"))));
    assertThat(label(at(hints(address), "vertical   all"))).startsWith("12'-8 1/2\"");
  }
}
