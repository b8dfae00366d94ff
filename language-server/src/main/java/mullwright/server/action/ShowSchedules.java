package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;

/** On the line that begins a wall: its live drawing and what can be told of the file as a text. */
@AutoService(ActionSource.class)
public final class ShowSchedules implements ActionSource {
  /** What is shown by each command. */
  private static Map<String, String> shown() {
    Map<String, String> shown = new LinkedHashMap<>();
    shown.put("mullwright.preview", "Show the live drawing");
    shown.put("mullwright.showLengths", "Show the cut lengths");
    shown.put("mullwright.showGlass", "Show the glass to order");
    shown.put("mullwright.showCut", "Show the cutting plan");
    shown.put("mullwright.showTickets", "Show the piece tickets");
    shown.put("mullwright.showTakeoff", "Show the takeoff");
    shown.put("mullwright.showSequence", "Show the order of work");
    shown.put("mullwright.showCalculations", "Show the calculations");
    shown.put("mullwright.showExplain", "Show what is taken by default");
    return shown;
  }

  @Override
  public String kind() {
    return ShowLoads.KIND;
  }

  @Override
  public List<Action> offers(Selected selected) {
    Statement statement = selected.statement();
    if (statement == null || statement.kind() != StatementKind.WALL_BLOCK || !onKeyword(selected)) {
      return List.of();
    }
    List<Action> offers = new ArrayList<>();
    List<Object> which = List.of(selected.document().address());
    shown().forEach((command, title) -> offers.add(Action.running(title, command, which)));
    return offers;
  }

  /** True on the line the wall's block begins on. */
  private static boolean onKeyword(Selected selected) {
    int base = selected.document().file().segmentStart(selected.cursor().segment());
    int keyword = base + selected.statement().keyword().range().start();
    return selected.document().file().lines().line(keyword)
        == selected.document().file().lines().line(selected.start());
  }
}
