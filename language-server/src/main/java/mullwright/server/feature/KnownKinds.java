package mullwright.server.feature;

import java.util.List;
import mullwright.server.Client;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.SymbolKind;

/**
 * The kinds a client knows: those it names, or else those of the first version of the protocol (LSP
 * 3.17, {@code symbolKind.valueSet}, {@code completionItemKind.valueSet}). Of a kind it does not
 * know the nearest takes the place.
 */
final class KnownKinds {
  private static final int LAST_FIRST_SYMBOL = SymbolKind.Array.getValue();
  private static final int LAST_FIRST_OFFER = CompletionItemKind.Reference.getValue();

  private final List<Integer> named;

  private KnownKinds(List<Integer> named) {
    this.named = named;
  }

  /**
   * What a client knows.
   *
   * @param path of the list below its capabilities
   */
  static KnownKinds of(Client client, String path) {
    return new KnownKinds(client.numbers(path));
  }

  SymbolKind symbol(SymbolKind kind) {
    if (knows(kind.getValue(), LAST_FIRST_SYMBOL)) {
      return kind;
    }
    return kind == SymbolKind.Struct ? SymbolKind.Class : SymbolKind.Variable;
  }

  /** The kind of an offer; null, which is none, if it knows nothing near. */
  CompletionItemKind offer(CompletionItemKind kind) {
    if (knows(kind.getValue(), LAST_FIRST_OFFER)) {
      return kind;
    }
    CompletionItemKind near =
        switch (kind) {
          case EnumMember, Constant -> CompletionItemKind.Value;
          case Struct -> CompletionItemKind.Class;
          default -> kind;
        };
    return knows(near.getValue(), LAST_FIRST_OFFER) ? near : null;
  }

  private boolean knows(int kind, int last) {
    return named.isEmpty() ? kind <= last : named.contains(kind);
  }
}
