package mullwright.server.schedule;

import com.google.auto.service.AutoService;
import mullwright.server.Command;

/** Shows the order of work. */
@AutoService(Command.class)
public final class ShowSequence extends Show {
  /** The command {@code mullwright.showSequence}. */
  public ShowSequence() {
    super("sequence");
  }
}
