package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintLabelPart;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
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
    InlayHint hint = at(hints(address), "lines A..C");
    assertThat(label(hint)).isEqualTo("10'-0\" over all");
    InlayHint told = await(talk.server.getTextDocumentService().resolveInlayHint(hint));
    assertThat(told.getTooltip().getRight().getValue()).endsWith("2 × 5'-0\"");
  }

  /** A face begins at the corner, which the face before it names: 5'-0" and 4'-0" are 9'-0". */
  @Test
  void spacingsOfAFaceBeginAtItsCorner() {
    String text =
        WALL.replace(
            "lines A..C  spaced 2 @ 5'-0\"",
            "face South lines A..B spaced 5'-0\"\n"
                + "      face East lines B..D spaced 5'-0\", 4'-0\"\n"
                + "      corner B 90 deg");
    String address = open("walls/east.wall", text);
    int line = WallTalk.lineOf(text, "face East");
    assertThat(hints(address))
        .filteredOn(hint -> hint.getPosition().getLine() == line)
        .singleElement()
        .satisfies(hint -> assertThat(label(hint)).isEqualTo("9'-0\" over all"));
  }

  /** A hint that jumps while one types is worse than none. */
  @Test
  void stayAtTheEndsOfTheirLinesWhileALineIsTyped() {
    String address = open("walls/east.wall", WALL);
    List<Integer> lines = hints(address).stream().map(it -> it.getPosition().getLine()).toList();
    int typed = WallTalk.lineOf(WALL, "vertical   all");
    StringBuilder text = new StringBuilder(WALL);
    for (char letter : "  // for the shop".toCharArray()) {
      int end = text.indexOf("\n", text.indexOf("vertical   all"));
      Position at = position(text.toString(), end);
      talk.change(address, new Range(at, at), String.valueOf(letter));
      text.insert(end, letter);
      List<InlayHint> now = hints(address);
      assertThat(now).allSatisfy(hint -> assertThat(isAtEnd(hint, text.toString())).isTrue());
      // a lone slash cannot be read; the other lines keep theirs all the same
      assertThat(now.stream().map(it -> it.getPosition().getLine()).filter(it -> it != typed))
          .containsExactlyElementsOf(lines.stream().filter(it -> it != typed).toList());
    }
    assertThat(hints(address)).hasSameSizeAs(lines);
  }

  private static boolean isAtEnd(InlayHint hint, String text) {
    String line = text.split("\n", -1)[hint.getPosition().getLine()];
    return hint.getPosition().getCharacter() == line.length();
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

  /** A catalog that another file uses, open beside it; hints and lenses of that file are shown. */
  private String openWithCatalog(String address) {
    String catalog = Conversation.address(folder.resolve(SmallCatalog.PATH));
    talk.open(catalog, SmallCatalog.TEXT);
    hints(address);
    await(
        talk.server
            .getTextDocumentService()
            .codeLens(new CodeLensParams(new TextDocumentIdentifier(address))));
    return catalog;
  }

  private String refreshed() {
    try {
      return talk.heard.refreshes.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException stopped) {
      throw new AssertionError(stopped);
    }
  }

  @Test
  void areFetchedAgainOnlyWhenAnEditElsewhereMakesThemOthers() {
    String address = open("walls/east.wall", WALL);
    String catalog = openWithCatalog(address);
    int remark = talk.replace(catalog, "// a remark\n" + SmallCatalog.TEXT);
    talk.heard.of(catalog, remark);
    // a heavier profile changes what is carried and no length
    int heavier =
        talk.replace(
            catalog, "// a remark\n" + SmallCatalog.TEXT.replace("2.414 lb/ft", "2.5 lb/ft"));
    talk.heard.of(catalog, heavier);
    assertThat(refreshed()).isEqualTo("codeLenses");
    assertThat(talk.heard.refreshes).isEmpty();
    // a wider one makes horizontals shorter
    String wider =
        SmallCatalog.TEXT.replace(
            "role   mullion\n    face   2 1/2\"", "role   mullion\n    face   3\"");
    assertThat(wider).isNotEqualTo(SmallCatalog.TEXT);
    talk.replace(catalog, wider);
    assertThat(refreshed()).isEqualTo("inlayHints");
    // told once: nobody has asked for them again
    int narrower = talk.replace(catalog, SmallCatalog.TEXT);
    talk.heard.of(catalog, narrower);
    await(
        talk.server
            .getWorkspaceService()
            .executeCommand(new ExecuteCommandParams("mullwright.showLengths", List.of(address))));
    assertThat(talk.heard.refreshes).isEmpty();
  }

  @Test
  void areFetchedAgainWhenTheProjectSwitchesThem() {
    String address = open("walls/east.wall", WALL);
    openWithCatalog(address);
    Conversation.write(
        folder, "mullwright.properties", "editor.hints.glass = off\neditor.lens = off\n");
    talk.server
        .getWorkspaceService()
        .didChangeWatchedFiles(new org.eclipse.lsp4j.DidChangeWatchedFilesParams(List.of()));
    assertThat(List.of(refreshed(), refreshed()))
        .containsExactlyInAnyOrder("codeLenses", "inlayHints");
  }

  /**
   * What a reader is told of a hint is worked out from its own pieces: it says what the hint says.
   */
  @Test
  void eachIsToldAsItIsShown() {
    String address = open("walls/east.wall", WALL);
    List<InlayHint> hints = hints(address);
    assertThat(hints).hasSize(5);
    for (InlayHint hint : hints) {
      String label = label(hint).replaceAll(" [↑↓↔↕]+$", "");
      InlayHint told = await(talk.server.getTextDocumentService().resolveInlayHint(hint));
      assertThat(told.getTooltip().getRight().getValue().replace("\\", "")).contains(label);
      assertThat(told.getLabel())
          .isEqualTo(hint.getLabel().isLeft() ? hint.getLabel() : told.getLabel());
    }
  }
}
