package mullwright.cli;

import java.util.Locale;
import java.util.concurrent.Callable;

/** Makes one command. Its class is found by itself ({@code @AutoService(CommandMaker.class)}). */
public interface CommandMaker {
  /** The name of the command, which is that of the class round this: DrawCommand makes draw. */
  default String name() {
    return getClass()
        .getEnclosingClass()
        .getSimpleName()
        .replaceFirst("Command$", "")
        .toLowerCase(Locale.ROOT);
  }

  /** The command, annotated for picocli, over that shell. */
  Callable<Integer> make(Shell shell);
}
