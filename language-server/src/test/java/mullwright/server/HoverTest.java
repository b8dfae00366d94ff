package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.api.Test;

/** What each noun of a wall says on hover. */
class HoverTest extends WallTalk {
  private String hover(String mark) {
    Hover hover = await(text.hover(new HoverParams(which, WALL.at(mark))));
    return hover == null ? "" : hover.getContents().getRight().getValue();
  }

  @Test
  void findsNothingWrongInTheFixtureButItsSingleSpan() {
    List<Diagnostic> found = talk.heard.next(address).getDiagnostics();
    assertThat(found).noneMatch(it -> it.getCode().getLeft().equals("unknown-name"));
    assertThat(found).noneMatch(it -> it.getCode().getLeft().equals("unreadable"));
  }

  /** Sill at 2" and head at 12'-8", faces 2 1/2": 0'-3/4" to 12'-9 1/4", counted by hand. */
  @Test
  void hoversAMemberWithItsPiecesLengthsAndMarks() {
    assertThat(hover("vertical"))
        .contains("vertical B: V2, mullion-s, cut length 12'-8 1/2\" (3873.5 mm)", "vertical C: V3")
        .contains("= upper end − lower end", "face of rail-s = 2 1/2\"", "stated");
  }

  /** Bay 5'-0" less two half faces of 2 1/2" is 57 1/2"; with two bites of 1/2" 58 1/2". */
  @Test
  void hoversALiteWithSizeAreaAndMass() {
    assertThat(hover("vision"))
        .contains("size 4'-10 1/2\"", "daylight 4'-9 1/2\"", "area", "mass")
        .contains("default (common practice)");
  }

  @Test
  void hoversPlaces() {
    assertThat(hover("floor")).contains("floor L2", "13'-0\" (3962.4 mm)", "slab: 10\"");
    assertThat(hover("row")).contains("row rail", "3'-0\" (914.4 mm) above L1", "2 × (horizontal");
    assertThat(hover("lines")).contains("line A");
    assertThat(hover("useB")).contains("line B", "5'-0\" (1524 mm) from the first line");
    assertThat(hover("wall")).contains("wall East", "system: small", "lites: 4");
  }

  /** Bays of 4'-0" and 6'-0": from the other end the line between them stands at 6'-0". */
  @Test
  void hoversALineWhereItStandsInTheWallItIsNamedIn() {
    String east = WALL.text().replace("2 @ 5'-0\"", "4'-0\", 6'-0\"");
    String west = "wall West like East mirrored {\n  members { vertical B as mullion }\n}\n";
    String both = east + west;
    talk.replace(address, both);
    int at = both.lastIndexOf("B as mullion");
    HoverParams here = new HoverParams(which, ProtocolTalk.position(both, at));
    assertThat(await(text.hover(here)).getContents().getRight().getValue())
        .contains("6'-0\" (1828.8 mm) from the first line");
    String own = "use \"../catalog/small.wall\"\nuse \"east.wall\"\n" + west;
    talk.replace(address, east);
    String other = Conversation.address(folder.resolve("walls/west.wall"));
    talk.open(other, own);
    HoverParams there =
        new HoverParams(
            new TextDocumentIdentifier(other),
            ProtocolTalk.position(own, own.indexOf("B as mullion")));
    assertThat(await(text.hover(there)).getContents().getRight().getValue())
        .contains("1828.8 mm (6'-0\") from the first line");
  }

  /** 1 psf is 47.88 Pa (0.45359237 kg × 9.80665 m/s² over 0.09290304 m²), so 36 are 1.724 kPa. */
  @Test
  void hoversANumberInBothSystems() {
    assertThat(hover("psf")).contains("36 psf (1.724 kPa)");
  }

  @Test
  void hoversPartsWithTheirPropertiesAndDefaults() {
    assertThat(hover("part")).contains("anchor angle-s", "bolt-line: 8\" (203.2 mm) below");
    assertThat(hover("system")).contains("system small", "mullion: mullion-s");
    assertThat(hover("role")).contains("role mullion", "mullion-s");
  }
}
