package mullwright.server.schedule;

import com.google.auto.service.AutoService;
import mullwright.server.Command;

/** Shows the cutting plan. */
@AutoService(Command.class)
public final class ShowCut extends Show {
  /** The command {@code mullwright.showCut}. */
  public ShowCut() {
    super("cut");
  }
}
