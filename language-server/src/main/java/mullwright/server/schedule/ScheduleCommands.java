package mullwright.server.schedule;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import mullwright.server.Command;
import mullwright.server.CommandSource;

/** A command for each schedule an editor may want beside the text. */
@AutoService(CommandSource.class)
public final class ScheduleCommands implements CommandSource {
  private static final List<String> SCHEDULES =
      List.of(
          "calculations", "cut", "explain", "glass", "lengths", "sequence", "takeoff", "tickets");

  @Override
  public List<Command> commands() {
    ScheduleTexts texts = new ScheduleTexts();
    List<Command> commands = new ArrayList<>(SCHEDULES.size());
    for (String schedule : SCHEDULES) {
      commands.add(new Show(schedule, texts));
    }
    return commands;
  }
}
