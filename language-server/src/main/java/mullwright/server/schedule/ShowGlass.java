package mullwright.server.schedule;

import com.google.auto.service.AutoService;
import mullwright.server.Command;

/** Shows the glass order. */
@AutoService(Command.class)
public final class ShowGlass extends Show {
  /** The command {@code mullwright.showGlass}. */
  public ShowGlass() {
    super("glass");
  }
}
