package mullwright.server;

import com.google.gson.JsonElement;
import java.util.List;

/**
 * Something an editor may ask for by name ({@code workspace/executeCommand}).
 *
 * <p>A command is its own {@link CommandSource} (write {@code @AutoService(CommandSource.class)}
 * above it) unless another makes it. All are made when the talk begins, so a command holds nothing
 * heavy: what it needs is loaded when it is run.
 */
public interface Command extends CommandSource {
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

  /** Itself. */
  @Override
  default List<Command> commands() {
    return List.of(this);
  }
}
