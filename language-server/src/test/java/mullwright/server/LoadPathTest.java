package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.util.List;
import org.eclipse.lsp4j.CallHierarchyIncomingCall;
import org.eclipse.lsp4j.CallHierarchyIncomingCallsParams;
import org.eclipse.lsp4j.CallHierarchyItem;
import org.eclipse.lsp4j.CallHierarchyOutgoingCall;
import org.eclipse.lsp4j.CallHierarchyOutgoingCallsParams;
import org.eclipse.lsp4j.CallHierarchyPrepareParams;
import org.junit.jupiter.api.Test;

/** The load path of a wall, walked as a hierarchy of calls. */
class LoadPathTest extends WallTalk {
  private List<CallHierarchyItem> prepare(String mark) {
    return await(text.prepareCallHierarchy(new CallHierarchyPrepareParams(which, WALL.at(mark))));
  }

  private List<CallHierarchyItem> onto(CallHierarchyItem item) {
    return await(text.callHierarchyOutgoingCalls(new CallHierarchyOutgoingCallsParams(item)))
        .stream()
        .map(CallHierarchyOutgoingCall::getTo)
        .toList();
  }

  private List<CallHierarchyItem> from(CallHierarchyItem item) {
    return await(text.callHierarchyIncomingCalls(new CallHierarchyIncomingCallsParams(item)))
        .stream()
        .map(CallHierarchyIncomingCall::getFrom)
        .toList();
  }

  private static CallHierarchyItem named(List<CallHierarchyItem> items, String name) {
    return items.stream().filter(it -> it.getName().equals(name)).findFirst().orElseThrow();
  }

  /**
   * By hand: 5'-0" less 2 1/2" plus two bites of 1/2" is 58 1/2" (1485.9 mm), 34" less 2 1/2" plus
   * 1" is 32 1/2" (825.5 mm). Two plies of 1/4", 6 mm each (ASTM C1036, from memory), of 2500 kg/m³
   * (EN 572-1) weigh 30 kg/m²: 36.80 kg. A length has one dead-load anchor, which takes all of its
   * weight: both details tell the same force.
   */
  @Test
  void walksFromALiteToTheBuilding() {
    CallHierarchyItem lite = prepare("useRail").get(0);
    assertThat(lite.getName()).startsWith("lite in bay A-B");
    assertThat(lite.getDetail())
        .startsWith("V1, 4'-10 1/2\" (1485.9 mm) × 2'-8 1/2\" (825.5 mm), ")
        .contains("(36.8 kg)");
    List<CallHierarchyItem> horizontals = onto(lite);
    assertThat(horizontals)
        .extracting(CallHierarchyItem::getName)
        .containsExactly("horizontal sill, bay A-B");
    assertThat(horizontals.get(0).getDetail()).contains("weight of the lites on it");
    List<CallHierarchyItem> verticals = onto(horizontals.get(0));
    assertThat(verticals)
        .extracting(CallHierarchyItem::getName)
        .containsExactly("vertical A", "vertical B");
    List<CallHierarchyItem> anchors = onto(verticals.get(1));
    assertThat(anchors)
        .extracting(CallHierarchyItem::getName)
        .containsExactly("clip of vertical B at sill", "dead-load anchor of vertical B at L2");
    String weight = verticals.get(1).getDetail().replaceAll(".*hangs on it (.*) \\(aid.*", "$1");
    assertThat(anchors.get(1).getDetail()).contains("angle-s, ").contains(weight + " down");
    assertThat(onto(anchors.get(1))).isEmpty();
  }

  @Test
  void walksBackFromAnAnchorToTheGlass() {
    CallHierarchyItem anchor = named(prepare("useL2"), "dead-load anchor of vertical B at L2");
    CallHierarchyItem vertical = named(from(anchor), "vertical B");
    List<CallHierarchyItem> horizontals = from(vertical);
    assertThat(horizontals).hasSize(6);
    CallHierarchyItem sill = named(horizontals, "horizontal sill, bay B-C");
    assertThat(from(sill)).extracting(CallHierarchyItem::getName).hasSize(1);
    assertThat(from(from(sill).get(0))).isEmpty();
  }

  @Test
  void putsThePieceThatCarriesMostFirst() {
    assertThat(prepare("vertical").get(0).getName()).isEqualTo("vertical B");
  }

  @Test
  void pointsAtTheStatementThatMadeThePiece() {
    CallHierarchyItem vertical = prepare("vertical").get(0);
    assertThat(vertical.getUri()).isEqualTo(address);
    assertThat(vertical.getSelectionRange().getStart()).isEqualTo(WALL.at("vertical"));
    assertThat(vertical.getRange().getEnd()).isEqualTo(WALL.at("verticalEnd"));
  }

  @Test
  void answersNothingForAPieceThatIsGoneAndForNonsense() {
    CallHierarchyItem lite = prepare("useRail").get(0);
    talk.replace(address, "wall East {\n}\n");
    assertThat(onto(lite)).isEmpty();
    assertThat(from(lite)).isEmpty();
    JsonObject nonsense = new JsonObject();
    nonsense.addProperty("wall", 7);
    lite.setData(nonsense);
    assertThat(onto(lite)).isEmpty();
    lite.setData(null);
    assertThat(from(lite)).isEmpty();
  }
}
