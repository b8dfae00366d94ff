package mullwright.server.schedule;

import com.google.auto.service.AutoService;
import mullwright.server.Command;

/** Shows the calculations. */
@AutoService(Command.class)
public final class ShowCalculations extends Show {
  /** The command {@code mullwright.showCalculations}. */
  public ShowCalculations() {
    super("calculations");
  }
}
