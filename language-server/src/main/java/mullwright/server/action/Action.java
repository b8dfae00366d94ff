package mullwright.server.action;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import mullwright.server.Edits;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Diagnostic;

/**
 * Something that can be done to a text, or shown of it.
 *
 * @param title an order, told to the reader; no two at one place are the same
 * @param preferred true if it is the one obvious thing to do
 * @param refusal why it cannot be done here, a sentence; "" if it can
 * @param mended the diagnostics it does away with
 * @param change works out the edits, when somebody picks it; there are none where it runs a command
 * @param command what the editor is to have run in place of edits
 */
public record Action(
    String title,
    boolean preferred,
    String refusal,
    List<Diagnostic> mended,
    Supplier<Edits> change,
    Optional<Command> command) {
  public Action {
    mended = List.copyOf(mended);
  }

  /** One that can be done. */
  public static Action of(String title, Supplier<Edits> change) {
    return new Action(title, false, "", List.of(), change, Optional.empty());
  }

  /**
   * One that mends what is found.
   *
   * @param preferred true if it is the one obvious thing to do
   */
  public static Action mending(
      String title, boolean preferred, List<Diagnostic> mended, Supplier<Edits> change) {
    return new Action(title, preferred, "", mended, change, Optional.empty());
  }

  /**
   * One that has a command of the server run.
   *
   * @param name of the command
   * @param arguments as the editor is to send them
   */
  public static Action running(String title, String name, List<Object> arguments) {
    return new Action(
        title,
        false,
        "",
        List.of(),
        none("runs " + name),
        Optional.of(new Command(title, name, arguments)));
  }

  /** One that is offered here in other cases and why it is not in this. */
  public static Action refused(String title, String why) {
    return new Action(title, false, why, List.of(), none("refused: " + why), Optional.empty());
  }

  private static Supplier<Edits> none(String why) {
    return () -> {
      throw new IllegalStateException(why);
    };
  }
}
