package mullwright.server.schedule;

import com.google.auto.service.AutoService;
import mullwright.server.Command;

/** Shows cut lengths of every piece. */
@AutoService(Command.class)
public final class ShowLengths extends Show {
  /** The command {@code mullwright.showLengths}. */
  public ShowLengths() {
    super("lengths");
  }
}
