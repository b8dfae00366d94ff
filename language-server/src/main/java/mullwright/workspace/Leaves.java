package mullwright.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mullwright.syntax.Argument;
import mullwright.syntax.Argument.Phrase.Part;
import mullwright.syntax.Clause;
import mullwright.syntax.Expression;
import mullwright.syntax.Place;
import mullwright.syntax.Remark;
import mullwright.syntax.Selection;
import mullwright.syntax.Statement;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;

/** Lists the leaves of a statement, those of the statements in its block left out. */
final class Leaves {
  private static final Pattern NEXT_WORD = Pattern.compile("\\s*[^\\s{}(),]+");

  private final String text;
  private final List<Leaf> found = new ArrayList<>();

  private Leaves(String text) {
    this.text = text;
  }

  /**
   * All leaves in the order of the tree: keyword, arguments, clauses, remarks.
   *
   * @param text of the segment the statement stands in
   */
  static List<Leaf> of(Statement statement, String text) {
    Leaves leaves = new Leaves(text);
    leaves.found.add(new Leaf.Keyword(statement));
    statement.arguments().forEach(leaves::argument);
    statement.clauses().forEach(leaves::clause);
    for (Remark remark : statement.remarks()) {
      leaves.found.add(new Leaf.Remarked(remark));
    }
    return leaves.found;
  }

  private void argument(Argument argument) {
    if (argument instanceof Argument.Name name) {
      name(name.word());
    } else if (argument instanceof Argument.Text string) {
      found.add(new Leaf.Text(string.string()));
    } else if (argument instanceof Argument.Value value) {
      expression(value.expression());
    } else if (argument instanceof Argument.Select select) {
      selection(select.selection());
    } else if (argument instanceof Argument.Phrase phrase) {
      phrase.parts().forEach(this::part);
    }
  }

  private void part(Part part) {
    if (part instanceof Part.Measured measured) {
      expression(measured.expression());
    } else if (part instanceof Part.Plain plain) {
      name(plain.word());
    } else if (part instanceof Part.Quoted quoted) {
      found.add(new Leaf.Text(quoted.string()));
    }
  }

  private void clause(Clause clause) {
    head(clause).ifPresent(range -> found.add(new Leaf.ClauseHead(clause, range)));
    if (clause instanceof Clause.At at) {
      at.places().forEach(this::place);
      at.to().ifPresent(this::place);
    } else if (clause instanceof Clause.Extent extent) {
      place(extent.from());
      place(extent.to());
    } else if (clause instanceof Clause.Spaced spaced) {
      for (Clause.Spaced.Step step : spaced.steps()) {
        step.count().ifPresent(count -> found.add(new Leaf.Count(count)));
        expression(step.length());
      }
    } else if (clause instanceof Clause.Named named) {
      name(named.name());
    } else if (clause instanceof Clause.Selecting selecting) {
      selection(selecting.selection());
    } else if (clause instanceof Clause.Valued valued) {
      expression(valued.value());
      valued.direction().ifPresent(this::name);
    } else if (clause instanceof Clause.Counted counted) {
      found.add(new Leaf.Count(counted.count()));
      name(counted.name());
    } else if (clause instanceof Clause.Loads loads) {
      for (Clause.Loads.Load load : loads.loads()) {
        expression(load.force());
        name(load.direction());
        load.arm().ifPresent(this::expression);
        load.armDirection().ifPresent(this::name);
      }
    }
  }

  /** Where the words that open the clause stand; point loads open with a number. */
  private Optional<TextRange> head(Clause clause) {
    String spelling = clause.word().spelling();
    if (spelling.isEmpty()) {
      return Optional.empty();
    }
    int start = clause.range().start();
    Matcher word = NEXT_WORD.matcher(text);
    int end = start;
    for (int words = spelling.split(" ").length; words > 0; words--) {
      word.region(end, Math.max(end, Math.min(clause.range().end(), text.length())));
      if (!word.lookingAt()) {
        break;
      }
      end = word.end();
    }
    return end > start ? Optional.of(new TextRange(start, end)) : Optional.empty();
  }

  private void place(Place place) {
    if (place instanceof Place.FromDatum datum) {
      expression(datum.length());
    } else if (place instanceof Place.AtNames names) {
      names.offset().ifPresent(this::expression);
      selection(names.names());
    }
  }

  private void selection(Selection selection) {
    for (Selection.Item item : selection.items()) {
      item(item);
    }
    selection.every().ifPresent(count -> found.add(new Leaf.Count(count)));
    for (Selection.Item item : selection.except()) {
      item(item);
    }
  }

  private void item(Selection.Item item) {
    name(item.first());
    if (item.isRange()) {
      name(item.last());
    }
  }

  private void expression(Expression expression) {
    if (expression instanceof Expression.Literal literal) {
      found.add(new Leaf.Value(literal));
    } else if (expression instanceof Expression.Reference reference) {
      name(reference.name());
    } else if (expression instanceof Expression.Binary binary) {
      expression(binary.left());
      expression(binary.right());
    } else if (expression instanceof Expression.Negation negation) {
      expression(negation.operand());
    } else if (expression instanceof Expression.Group group) {
      expression(group.inner());
    }
  }

  private void name(Word word) {
    found.add(new Leaf.Name(word));
  }
}
