package mullwright.server.action;

import java.util.List;
import java.util.function.Supplier;
import mullwright.server.Edits;
import org.eclipse.lsp4j.Diagnostic;

/**
 * Something that can be done to a text.
 *
 * @param title an order, told to the reader; no two at one place are the same
 * @param preferred true if it is the one obvious thing to do
 * @param refusal why it cannot be done here, a sentence; "" if it can
 * @param mended the diagnostics it does away with
 * @param change works out the edits, when somebody picks it
 */
public record Action(
    String title,
    boolean preferred,
    String refusal,
    List<Diagnostic> mended,
    Supplier<Edits> change) {
  public Action {
    mended = List.copyOf(mended);
  }

  /** One that can be done. */
  public static Action of(String title, Supplier<Edits> change) {
    return new Action(title, false, "", List.of(), change);
  }

  /** One that is offered here in other cases and why it is not in this. */
  public static Action refused(String title, String why) {
    return new Action(
        title,
        false,
        why,
        List.of(),
        () -> {
          throw new IllegalStateException("refused: " + why);
        });
  }
}
