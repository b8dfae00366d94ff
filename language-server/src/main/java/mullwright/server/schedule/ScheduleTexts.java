package mullwright.server.schedule;

import java.nio.file.Path;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.function.Function;
import mullwright.server.Apart;
import mullwright.server.Document;
import mullwright.server.Schedules;
import mullwright.workspace.Snapshot;

/** The way to the schedules, whose maker is looked for when the first is asked for. */
public final class ScheduleTexts {
  private Schedules schedules;

  /**
   * The text of a schedule as things stand now.
   *
   * @param told what becomes of the text
   */
  public Apart apart(String name, Document document, Function<String, Object> told) {
    Snapshot snapshot = document.snapshot();
    Optional<Path> file = document.onDisk();
    return cancel -> told.apply(text(name, snapshot, document.path(), file, cancel));
  }

  private String text(
      String name,
      Snapshot snapshot,
      String path,
      Optional<Path> file,
      mullwright.workspace.Cancel cancel) {
    Optional<Schedules> maker = maker();
    if (maker.isEmpty() || !maker.get().names().contains(name)) {
      return "There is no schedule “" + name + "”.\n";
    }
    return maker.get().text(name, snapshot, path, file, cancel);
  }

  private synchronized Optional<Schedules> maker() {
    if (schedules == null) {
      schedules =
          ServiceLoader.load(Schedules.class, Schedules.class.getClassLoader())
              .findFirst()
              .orElse(null);
    }
    return Optional.ofNullable(schedules);
  }
}
