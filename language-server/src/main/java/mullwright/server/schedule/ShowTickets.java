package mullwright.server.schedule;

import com.google.auto.service.AutoService;
import mullwright.server.Command;

/** Shows tickets for the shop. */
@AutoService(Command.class)
public final class ShowTickets extends Show {
  /** The command {@code mullwright.showTickets}. */
  public ShowTickets() {
    super("tickets");
  }
}
