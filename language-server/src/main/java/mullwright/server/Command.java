package mullwright.server;

import com.google.gson.JsonElement;
import java.util.List;

/**
 * Something an editor may ask for by name ({@code workspace/executeCommand}).
 *
 * <p>A command is found by standing in {@code META-INF/services} (write
 * {@code @AutoService(Command.class)} above it). All are made when the talk begins, so a command
 * holds nothing heavy: what it needs is loaded when it is run.
 */
public interface Command {
  /** What it is asked for by; begins with {@code mullwright.}. */
  String name();

  /**
   * Does it. Runs between edits, so it must not wait for the editor's answer to anything.
   *
   * @param arguments as the editor sent them; with none, the command is about {@link Desk#touched}
   * @return the answer, null where there is none
   * @throws org.eclipse.lsp4j.jsonrpc.ResponseErrorException if it cannot be done, with the
   *     sentence for the user
   */
  Object run(List<JsonElement> arguments, Desk desk);
}
