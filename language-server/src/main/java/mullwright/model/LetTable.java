package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.syntax.Argument;
import mullwright.syntax.Expression;
import mullwright.syntax.Statement;
import mullwright.syntax.Word;

/** The {@code let} statements of one scope, as they are met. */
final class LetTable {
  private final String owner;
  private final Scope scope;
  private final Collector collector;
  private final List<Symbol> symbols = new ArrayList<>();

  /**
   * @param owner the wall the lets belong to, or ""
   * @param scope takes the lets
   */
  LetTable(String owner, Scope scope, Collector collector) {
    this.owner = owner;
    this.scope = scope;
    this.collector = collector;
  }

  void add(Statement statement, Spot spot) {
    add(statement, spot, scope, owner);
  }

  /**
   * Adds one that takes the place of another wall's of the same name.
   *
   * @param reads what the value's own names mean
   * @param wall the wall it belongs to
   */
  void add(Statement statement, Spot spot, Scope reads, String wall) {
    Optional<Word> name = statement.argument(Argument.Name.class).map(Argument.Name::word);
    Optional<Expression> value =
        statement.argument(Argument.Value.class).map(Argument.Value::expression);
    if (name.isEmpty()) {
      return;
    }
    Origin origin = spot.at(name.get());
    Symbol symbol = new Symbol(Symbol.Kind.LET, wall, name.get().text(), origin);
    Let before = scope.own().get(name.get().text());
    if (before != null && before.symbol.scope().equals(wall)) {
      collector.duplicate("name", name.get().text(), before.spot.at(before.name), origin);
      return;
    }
    collector.defines(symbol, origin);
    if (value.isPresent()) {
      symbols.add(symbol);
    }
    Let let = new Let(name.get(), spot, symbol, value.orElse(null), reads);
    // a let without a value was reported by the tree; its name is still known
    let.computed = value.isEmpty();
    scope.own().put(name.get().text(), let);
  }

  void compute() {
    new LetReader(collector).compute(scope.own().values());
  }

  List<Symbol> symbols() {
    return symbols;
  }
}
