package mullwright.server.schedule;

import com.google.auto.service.AutoService;
import mullwright.server.Command;

/** Shows everything to be bought. */
@AutoService(Command.class)
public final class ShowTakeoff extends Show {
  /** The command {@code mullwright.showTakeoff}. */
  public ShowTakeoff() {
    super("takeoff");
  }
}
