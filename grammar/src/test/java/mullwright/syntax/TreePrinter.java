package mullwright.syntax;

import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Collectors;

/**
 * Prints what was read from a file, one statement a line and the problems after each segment, for
 * tests to compare; ranges are left out, so equal prints mean equal trees but for their places.
 */
public final class TreePrinter {
  private final StringBuilder out = new StringBuilder();

  private TreePrinter() {}

  /** Statements and problems. */
  public static String print(ParsedFile file) {
    TreePrinter printer = new TreePrinter();
    for (Segment segment : file.segments()) {
      printer.statements(segment.statements(), 0);
      for (SyntaxProblem problem : segment.problems()) {
        printer.out.append(problem(problem, segment.text())).append('\n');
      }
    }
    return printer.out.toString();
  }

  /** Statements only. */
  public static String tree(ParsedFile file) {
    TreePrinter printer = new TreePrinter();
    file.segments().forEach(segment -> printer.statements(segment.statements(), 0));
    return printer.out.toString();
  }

  private void statements(List<Statement> statements, int depth) {
    for (Statement statement : statements) {
      String indent = "  ".repeat(depth);
      statement
          .documentation()
          .ifPresent(
              text ->
                  text.lines().forEach(line -> out.append(indent).append("/// " + line + "\n")));
      out.append(indent).append(statement(statement)).append('\n');
      statement
          .block()
          .ifPresent(
              block -> {
                statements(block.statements(), depth + 1);
                out.append(indent).append(block.closed() ? "}\n" : "} missing\n");
              });
    }
  }

  private static String statement(Statement statement) {
    StringJoiner line = new StringJoiner(" ");
    line.add(statement.kind().name());
    if (!statement.keyword().text().equals(statement.kind().spelling())) {
      line.add("'" + statement.keyword().text() + "'");
    }
    statement.arguments().forEach(argument -> line.add(argument(argument)));
    statement.clauses().forEach(clause -> line.add(clause.word() + "(" + clause(clause) + ")"));
    statement
        .remarks()
        .forEach(remark -> line.add(remark.kind() + "(\"" + remark.text().text() + "\")"));
    statement.block().ifPresent(block -> line.add("{ " + block.kind()));
    return line.toString();
  }

  private static String argument(Argument argument) {
    if (argument instanceof Argument.Name name) {
      return "name(" + word(name.word()) + ")";
    } else if (argument instanceof Argument.Text text) {
      return "text(" + word(text.string()) + ")";
    } else if (argument instanceof Argument.Value value) {
      return "value(" + expression(value.expression()) + ")";
    } else if (argument instanceof Argument.Select select) {
      return "select(" + selection(select.selection()) + ")";
    }
    Argument.Phrase phrase = (Argument.Phrase) argument;
    return phrase.parts().stream()
        .map(TreePrinter::part)
        .collect(Collectors.joining(" ", "phrase(", ")"));
  }

  private static String part(Argument.Phrase.Part part) {
    if (part instanceof Argument.Phrase.Part.Measured measured) {
      return expression(measured.expression());
    } else if (part instanceof Argument.Phrase.Part.Plain plain) {
      return "'" + plain.word().text() + "'";
    }
    return word(((Argument.Phrase.Part.Quoted) part).string());
  }

  private static String clause(Clause clause) {
    if (clause instanceof Clause.At at) {
      String places =
          at.places().stream().map(TreePrinter::place).collect(Collectors.joining(" & "));
      return places + at.to().map(to -> " to " + place(to)).orElse("");
    } else if (clause instanceof Clause.Extent extent) {
      return place(extent.from()) + " to " + place(extent.to());
    } else if (clause instanceof Clause.Spaced spaced) {
      return spaced.steps().stream().map(TreePrinter::step).collect(Collectors.joining(" & "));
    } else if (clause instanceof Clause.Named named) {
      return word(named.name());
    } else if (clause instanceof Clause.Selecting selecting) {
      return selection(selecting.selection());
    } else if (clause instanceof Clause.Valued valued) {
      return expression(valued.value())
          + valued.direction().map(way -> " '" + way.text() + "'").orElse("");
    } else if (clause instanceof Clause.Counted counted) {
      return expression(counted.count()) + " x " + word(counted.name());
    } else if (clause instanceof Clause.Loads loads) {
      return loads.loads().stream().map(TreePrinter::load).collect(Collectors.joining(" & "));
    }
    return "";
  }

  private static String step(Clause.Spaced.Step step) {
    String count = step.count().map(number -> expression(number) + " ").orElse("");
    return count + (step.equal() ? "equal in " : "") + expression(step.length());
  }

  private static String load(Clause.Loads.Load load) {
    String arm =
        load.arm()
            .map(
                value -> " at " + expression(value) + " '" + load.armDirection().get().text() + "'")
            .orElse("");
    return expression(load.force()) + " '" + load.direction().text() + "'" + arm;
  }

  private static String place(Place place) {
    if (place instanceof Place.FromDatum datum) {
      return "datum " + expression(datum.length());
    } else if (place instanceof Place.AtNames names) {
      String offset =
          names
              .offset()
              .map(length -> expression(length) + " " + names.direction() + " ")
              .orElse("");
      return offset + "[" + selection(names.names()) + "]";
    }
    return "FloorBelowSplices";
  }

  private static String selection(Selection selection) {
    StringBuilder text = new StringBuilder(selection.all() ? "all" : items(selection.items()));
    selection.every().ifPresent(count -> text.append(" every ").append(expression(count)));
    if (!selection.except().isEmpty()) {
      text.append(" except ").append(items(selection.except()));
    }
    return text.toString();
  }

  private static String items(List<Selection.Item> items) {
    return items.stream()
        .map(item -> word(item.first()) + (item.isRange() ? ".." + word(item.last()) : ""))
        .collect(Collectors.joining(", "));
  }

  private static String expression(Expression expression) {
    if (expression instanceof Expression.Literal literal) {
      return literal.number() + (literal.unit() == null ? "" : " " + literal.unit().text());
    } else if (expression instanceof Expression.Reference reference) {
      return "$" + reference.name().text();
    } else if (expression instanceof Expression.Binary binary) {
      return "("
          + expression(binary.left())
          + " "
          + binary.operator()
          + " "
          + expression(binary.right())
          + ")";
    } else if (expression instanceof Expression.Negation negation) {
      return "-" + expression(negation.operand());
    }
    return "group" + expression(((Expression.Group) expression).inner());
  }

  private static String word(Word word) {
    return word.quoted() ? "\"" + word.text() + "\"" : word.text();
  }

  /** A problem with the stretch of text it stands at. */
  static String problem(SyntaxProblem problem, String text) {
    String at = text.substring(problem.range().start(), problem.range().end());
    return "! " + about(problem) + " at <" + at.replace("\r", "\\r").replace("\n", "\\n") + ">";
  }

  private static String about(SyntaxProblem problem) {
    String name = problem.getClass().getSimpleName();
    if (problem instanceof SyntaxProblem.Unexpected unexpected) {
      return name
          + " in '"
          + unexpected.inside()
          + "': "
          + unexpected.found()
          + ", not "
          + String.join(" | ", unexpected.expected());
    } else if (problem instanceof SyntaxProblem.Garbled slip) {
      return slip.how() + " in '" + slip.inside() + "': " + String.join(" | ", slip.meant());
    } else if (problem instanceof SyntaxProblem.UnknownKeyword unknown) {
      return name + " in " + unknown.block() + ", nearest " + unknown.known().get(0);
    } else if (problem instanceof SyntaxProblem.MinusUnclear minus) {
      return name + ": <" + minus.asLiteral() + "> or <" + minus.asMinus() + ">";
    } else if (problem instanceof SyntaxProblem.CommaBetweenDigits comma) {
      return name + ": <" + comma.asOne() + "> or <" + comma.asTwo() + ">";
    } else if (problem instanceof SyntaxProblem.NotClosed open) {
      return name + " " + open.what();
    } else if (problem instanceof SyntaxProblem.BlockNotClosed open) {
      return name + " of '" + open.block() + "' up to " + open.end();
    } else if (problem instanceof SyntaxProblem.BraceMissing missing) {
      return name + (missing.alone() ? " and no block" : "");
    } else if (problem instanceof SyntaxProblem.BraceExtra extra) {
      return name + " in '" + extra.block() + "'";
    } else if (problem instanceof SyntaxProblem.TooMuch much) {
      return name + " " + much.limit() + " " + much.allowed();
    } else if (problem instanceof SyntaxProblem.ClauseNotTaken taken) {
      return name + " " + taken.clause() + " by " + taken.statement();
    } else if (problem instanceof SyntaxProblem.ClauseTwice twice) {
      return name + " " + twice.clause();
    }
    return name;
  }
}
