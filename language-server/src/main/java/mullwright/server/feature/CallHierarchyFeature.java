package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mullwright.layout.PieceRef;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.server.piece.PieceData;
import mullwright.server.piece.PieceWords;
import mullwright.server.piece.PiecesAt;
import mullwright.server.piece.StatementPlace;
import mullwright.server.piece.WallPieces;
import mullwright.workspace.Cancel;
import mullwright.workspace.Cursor;
import mullwright.workspace.LoadPath;
import org.eclipse.lsp4j.CallHierarchyIncomingCall;
import org.eclipse.lsp4j.CallHierarchyIncomingCallsParams;
import org.eclipse.lsp4j.CallHierarchyItem;
import org.eclipse.lsp4j.CallHierarchyOutgoingCall;
import org.eclipse.lsp4j.CallHierarchyOutgoingCallsParams;
import org.eclipse.lsp4j.CallHierarchyPrepareParams;
import org.eclipse.lsp4j.SymbolKind;

/**
 * The load path as a tree: a lite "calls" the horizontal it stands on, a horizontal the verticals
 * at its ends, a length of vertical its anchors. Outgoing calls go towards the building, incoming
 * ones towards the glass. The detail of each piece tells its size, mass and reaction.
 *
 * <p>Answers {@code textDocument/prepareCallHierarchy}, {@code callHierarchy/incomingCalls} and
 * {@code callHierarchy/outgoingCalls} (LSP 3.17). Of many pieces of one statement the one that
 * carries most comes first, since some clients show that one alone.
 */
@AutoService(Feature.class)
public final class CallHierarchyFeature implements Feature {
  /** More pieces than this nobody picks from. */
  static final int MOST = 64;

  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofPlace(
            "textDocument/prepareCallHierarchy",
            CallHierarchyPrepareParams.class,
            (parameters, document, offset, desk) -> prepare(document, offset, desk.cancel())),
        new Route<>(
            "callHierarchy/incomingCalls",
            CallHierarchyIncomingCallsParams.class,
            (parameters, desk) -> incoming(Route.needed(parameters.getItem(), "item"), desk)),
        new Route<>(
            "callHierarchy/outgoingCalls",
            CallHierarchyOutgoingCallsParams.class,
            (parameters, desk) -> outgoing(Route.needed(parameters.getItem(), "item"), desk)));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("callHierarchyProvider", true);
  }

  static List<CallHierarchyItem> prepare(Document document, int offset, Cancel cancel) {
    Cursor cursor = document.cursor(offset);
    List<CallHierarchyItem> items = new ArrayList<>();
    for (WallPieces wall : WallPieces.of(document)) {
      cancel.check();
      LoadPath path = wall.details().loads(wall.facts());
      PiecesAt.of(wall, cursor).stream()
          .filter(piece -> piece.kind() != PieceRef.Kind.SPLICE)
          .sorted(Comparator.comparingDouble(piece -> -weight(piece, wall, path)))
          .limit(MOST)
          .forEach(piece -> item(wall, piece).ifPresent(items::add));
    }
    return items.isEmpty() ? null : items;
  }

  /** What it carries, for the order only: to a thousandth, so that equals keep theirs. */
  private static double weight(PieceRef piece, WallPieces wall, LoadPath path) {
    return Math.rint(1000 * carried(piece, wall, path));
  }

  private static double carried(PieceRef piece, WallPieces wall, LoadPath path) {
    return switch (piece.kind()) {
      case VERTICAL ->
          wall.facts().analysis().weightOf(wall.layout().verticals().get(piece.index()));
      case HORIZONTAL ->
          wall.facts()
              .analysis()
              .spanOf(wall.layout().horizontals().get(piece.index()))
              .glassWeight();
      case ANCHOR ->
          wall.facts()
              .analysis()
              .loadOn(wall.layout().anchors().get(piece.index()))
              .map(load -> Math.max(load.down(), Math.max(load.in(), load.out())))
              .orElse(0.0);
      case CELL -> {
        var cell = wall.layout().cells().get(piece.index());
        yield cell.glassWidth().toMetres() * cell.glassHeight().toMetres();
      }
      case SPLICE, COVER -> 0;
    };
  }

  private static Optional<CallHierarchyItem> item(WallPieces wall, PieceRef piece) {
    return wall.place(piece).map(place -> item(wall, piece, place));
  }

  private static CallHierarchyItem item(WallPieces wall, PieceRef piece, StatementPlace place) {
    CallHierarchyItem item =
        new CallHierarchyItem(
            wall.index().name(piece), kind(piece), place.address(), place.whole(), place.shown());
    item.setDetail(new PieceWords(wall).of(piece));
    item.setData(PieceData.of(wall, piece).json());
    return item;
  }

  private static SymbolKind kind(PieceRef piece) {
    return switch (piece.kind()) {
      case CELL -> SymbolKind.Object;
      case HORIZONTAL, VERTICAL -> SymbolKind.Field;
      case ANCHOR -> SymbolKind.Interface;
      case SPLICE, COVER -> SymbolKind.Property;
    };
  }

  private static List<CallHierarchyIncomingCall> incoming(CallHierarchyItem item, Desk desk) {
    List<CallHierarchyIncomingCall> calls = new ArrayList<>();
    PieceData.read(item.getData())
        .flatMap(data -> data.find(desk))
        .ifPresent(
            found -> {
              WallPieces wall = found.wall();
              for (PieceRef piece : path(wall).from(found.piece())) {
                desk.cancel().check();
                item(wall, piece)
                    .ifPresent(
                        from ->
                            calls.add(
                                new CallHierarchyIncomingCall(
                                    from, List.of(from.getSelectionRange()))));
              }
            });
    return calls;
  }

  private static List<CallHierarchyOutgoingCall> outgoing(CallHierarchyItem item, Desk desk) {
    List<CallHierarchyOutgoingCall> calls = new ArrayList<>();
    PieceData.read(item.getData())
        .flatMap(data -> data.find(desk))
        .ifPresent(
            found -> {
              WallPieces wall = found.wall();
              wall.place(found.piece())
                  .ifPresent(
                      place -> {
                        for (PieceRef piece : path(wall).onto(found.piece())) {
                          desk.cancel().check();
                          item(wall, piece)
                              .ifPresent(
                                  to ->
                                      calls.add(
                                          new CallHierarchyOutgoingCall(
                                              to, List.of(place.shown()))));
                        }
                      });
            });
    return calls;
  }

  private static LoadPath path(WallPieces wall) {
    return wall.details().loads(wall.facts());
  }
}
