package mullwright.server.schedule;

import com.google.auto.service.AutoService;
import mullwright.server.Command;

/** Shows the defaults the walls lean on. */
@AutoService(Command.class)
public final class ShowExplain extends Show {
  /** The command {@code mullwright.showExplain}. */
  public ShowExplain() {
    super("explain");
  }
}
