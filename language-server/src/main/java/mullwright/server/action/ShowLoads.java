package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.server.piece.LoadSummary;
import mullwright.syntax.Statement;

/**
 * Tells what the pieces of a statement carry: what the figures above the statement tell, for
 * editors that show none and for readers who have them off.
 */
@AutoService(ActionSource.class)
public final class ShowLoads implements ActionSource {
  /** Below no kind of the protocol's: it changes nothing. */
  static final String KIND = "show";

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public List<Action> offers(Selected selected) {
    Statement statement = selected.statement();
    if (statement == null || !LoadSummary.isToldOf(statement)) {
      return List.of();
    }
    int base = selected.document().file().segmentStart(selected.cursor().segment());
    return List.of(
        Action.running(
            "Tell what this statement's pieces carry",
            LoadSummary.COMMAND,
            List.of(
                selected.document().address(),
                selected.document().position(base + statement.keyword().range().start()))));
  }
}
