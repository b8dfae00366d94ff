package mullwright.cli;

import java.util.concurrent.Callable;

/** Makes one command. Its class is found by itself ({@code @AutoService(CommandMaker.class)}). */
public interface CommandMaker {
  /** The command, annotated for picocli, over that shell. */
  Callable<Integer> make(Shell shell);
}
