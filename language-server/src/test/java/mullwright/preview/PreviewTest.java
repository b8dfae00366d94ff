package mullwright.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import mullwright.layout.VerticalPiece;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a page is sent, and how little of it after an edit; statuses by RFC 9110, section 15. */
class PreviewTest {
  private final Scenes scenes = new Scenes();
  private final PlainTables tables = new PlainTables();
  private Preview preview;
  private PageTalk page;

  @BeforeEach
  void start() throws IOException {
    preview = Preview.start(0, Opener.NONE, tables);
    Scene scene = scenes.laidOut();
    preview.edited(scene);
    preview.checked(Scenes.checked(scene));
    page = new PageTalk(preview.address());
    page.listen();
    page.wait("summary", "No findings");
  }

  @AfterEach
  void stop() {
    page.close();
    preview.close();
  }

  @Test
  void everyPieceOfTheWallIsDrawnUnderItsName() {
    String drawing = page.text("drawing");
    VerticalPiece first = scenes.laidOut().walls().get(0).layout().verticals().get(0);
    assertThat(drawing).contains("data-piece=\"vertical-0\"").contains(first.name());
    for (int at = 0; at < scenes.laidOut().walls().get(0).layout().cells().size(); at++) {
      assertThat(drawing).contains("data-piece=\"cell-" + at + "\"");
    }
  }

  @Test
  void anEditSendsOnlyThePiecesItChanges() {
    // one lite of a corner becomes another glass
    preview.edited(
        scenes.edited("spandrel S1  all", "spandrel S1  all\n    vision V1 rows R3..R4 bays A..B"));
    List<String> changed = page.nextChanged("drawing");
    assertThat(changed).isNotEmpty().hasSizeLessThan(20);
    assertThat(changed)
        .allMatch(
            key ->
                key.startsWith("lite/")
                    || key.contains("cell-")
                    || key.startsWith("hatch/")
                    || key.startsWith("mark/"));
  }

  @Test
  void fromAfarNoMarksAreSent() {
    assertThat(page.parts("drawing").keySet()).anyMatch(key -> key.startsWith("mark/"));
    page.look("far=1");
    page.nextChanged("drawing");
    assertThat(page.parts("drawing").keySet())
        .noneMatch(key -> key.startsWith("mark/"))
        .anyMatch(key -> key.startsWith("member/"));
  }

  @Test
  void tablesAreMadeForTheViewThatIsTurnedTo() {
    page.look("tab=findings");
    preview.edited(scenes.edited("row R5      at 9'-6\"", "row R5      at 9'-0\""));
    page.nextChanged("drawing");
    String section = page.text("section");
    page.look("tab=section");
    page.nextChanged("section");
    assertThat(page.text("section")).isNotEqualTo(section);
  }

  @Test
  void anEditThatChangesNoWallSendsNoDrawing() {
    preview.edited(scenes.edited("wall East {", "// a word\nwall East {"));
    preview.edited(scenes.edited("spandrel S1  all", "vision V1 all"));
    // the first message about the drawing is about the second edit: lites, not everything
    assertThat(page.nextChanged("drawing"))
        .noneMatch(key -> key.startsWith("member/") || key.startsWith("dimension/"));
  }

  @Test
  void findingsAreNumberedInTheListAndOnTheirPieces() {
    Scene broken = scenes.edited("gap 5/8\"", "gap 1/16\"");
    preview.edited(broken);
    preview.checked(Scenes.checked(broken));
    String list = page.wait("findings", "splice-gap-too-small");
    assertThat(list).contains("keynote 1").contains("data-pieces=\"splice-0 splice-1");
    assertThat(page.parts("pins").keySet()).contains("pin-1-splice-0", "pin-1-splice-4");
    assertThat(page.text("pins")).contains("<text x=\"7\" y=\"-13.2\">1</text>");
    assertThat(page.text("summary")).contains("1 error");
  }

  @Test
  void theStatementUnderTheCursorLightsItsPieces() {
    preview.cursor("east", Scenes.EAST, scenes.at("splice B..F") + 2);
    assertThat(page.wait("lit", "splice").split(" "))
        .containsExactly("splice-0", "splice-1", "splice-2", "splice-3", "splice-4");
    preview.cursor("east", Scenes.EAST, scenes.at("row R2") + 5);
    assertThat(page.wait("lit", "horizontal").split(" "))
        .hasSize(6)
        .allMatch(id -> id.startsWith("horizontal-"));
    preview.cursor("east", Scenes.EAST, scenes.at("wall East") + 1);
    while (!page.text("lit").isEmpty()) {
      page.next("parts");
    }
  }

  @Test
  void aNameInAStatementLightsWhatItNamesOfWhatTheStatementMade() {
    preview.cursor("east", Scenes.EAST, scenes.at("V1  rows R1..R2") + 1);
    List<String> lit = Arrays.asList(page.wait("lit", "cell").split(" "));
    assertThat(lit).hasSize(12).allMatch(id -> id.startsWith("cell-"));
  }

  @Test
  void theDiagramsOfAVerticalSayItsGreatestMoment() {
    page.look("at=vertical-1");
    String drawn = page.wait("diagrams", "diagram moment");
    SceneWall wall = Scenes.checked(scenes.laidOut()).walls().get(0);
    double most =
        wall
            .facts()
            .orElseThrow()
            .analysis()
            .runOf(wall.layout().verticals().get(1))
            .responses()
            .stream()
            .mapToDouble(response -> response.moments().largest().value())
            .map(Math::abs)
            .max()
            .orElseThrow();
    assertThat(drawn)
        .contains(QuantityPrinter.in(UnitSystem.US, Quantity.ofSi(most, Kind.MOMENT), Kind.MOMENT));
    assertThat(drawn).contains("diagram loads").contains("diagram deflection");
    assertThat(page.wait("numbers", "greatest moment")).contains("Aids to drafting.");
  }

  @Test
  void withoutAnEditorAClickIsAnsweredByTheText() {
    PageTalk.Answer answer = page.post("open?piece=splice-0");
    assertThat(answer.status()).isEqualTo(200);
    assertThat(answer.body()).contains("splice B..F").contains("\"meant\":true");
    assertThat(page.post("open?piece=splice-99").status()).isEqualTo(404);
    assertThat(page.post("open?piece=nonsense").status()).isEqualTo(404);
    assertThat(page.post("open?finding=1").status()).isEqualTo(404);
  }

  @Test
  void aPageThatDoesNotReadKeepsNobodyWaitingAndFindsTheNewestState() {
    try (PageTalk slow = new PageTalk(preview.address())) {
      slow.listen();
      slow.wait("summary", "No findings");
      slow.pause();
      String last = "";
      for (int at = 1; at <= 60; at++) {
        last = "East-" + at;
        preview.edited(scenes.edited("wall East {", "wall " + last + " {"));
      }
      assertThat(page.wait("title", last)).contains(last);
      slow.resume();
      assertThat(slow.wait("title", last)).contains(last);
    }
  }

  @Test
  void aFaultIsToldAndAllElseGoesOn() {
    tables.breaks = true;
    Scene scene = scenes.edited("gap 5/8\"", "gap 1/16\"");
    preview.edited(scene);
    preview.checked(Scenes.checked(scene));
    assertThat(page.wait("fault", "the schedule")).contains("no &lt;table&gt;");
    assertThat(page.text("findings")).contains("splice-gap-too-small");
    tables.breaks = false;
    Scene mended = scenes.edited("gap 5/8\"", "gap 3/4\"");
    preview.edited(mended);
    preview.checked(Scenes.checked(mended));
    while (!page.text("fault").isEmpty()) {
      page.next("parts");
    }
  }

  @Test
  void itTellsItsPagesWhenItIsOver() {
    preview.close();
    assertThat(page.next("over")).isNotNull();
  }

  @Test
  void namesOfTheTextCannotBreakOutOfTheMarkup() {
    Scene scene = scenes.edited("wall East {", "wall \"<img src=x onerror=alert(1)>\" {");
    preview.edited(scene);
    page.wait("title", "&lt;img");
    assertThat(page.text("title")).doesNotContain("<img");
    assertThat(page.text("walls")).doesNotContain("<img");
    assertThat(page.text("drawing")).doesNotContain("<img");
  }
}
