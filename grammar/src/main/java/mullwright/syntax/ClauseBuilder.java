package mullwright.syntax;

import static mullwright.syntax.PartBuilder.broken;
import static mullwright.syntax.PartBuilder.range;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import mullwright.syntax.antlr.WallParser.*;
import mullwright.syntax.antlr.WallParserBaseVisitor;
import org.antlr.v4.runtime.ParserRuleContext;

/** Builds clauses, one method a labelled alternative; null for a clause that was not read whole. */
final class ClauseBuilder extends WallParserBaseVisitor<Clause> {
  private final PartBuilder parts;

  ClauseBuilder(PartBuilder parts) {
    this.parts = parts;
  }

  /** The clause, or null if it is broken. */
  Clause build(ClauseContext clause) {
    return broken(clause) ? null : visit(clause);
  }

  /** Which clause it is, broken or not. */
  static ClauseWord word(ClauseContext clause) {
    return Keywords.clauseOf(clause.getStart().getType());
  }

  /** Builds all; null as soon as one is broken. */
  private static <C extends ParserRuleContext, T> List<T> all(
      List<C> contexts, Function<C, T> build) {
    List<T> all = new ArrayList<>(contexts.size());
    for (C context : contexts) {
      T built = build.apply(context);
      if (built == null) {
        return null;
      }
      all.add(built);
    }
    return all;
  }

  @Override
  public Clause visitAt(AtContext clause) {
    List<Place> places = all(clause.place(), parts::place);
    if (places == null) {
      return null;
    }
    boolean sloped = clause.to != null;
    List<Place> from = sloped ? places.subList(0, places.size() - 1) : places;
    Optional<Place> to = sloped ? Optional.of(places.get(places.size() - 1)) : Optional.empty();
    return new Clause.At(word(clause), from, to, range(clause));
  }

  @Override
  public Clause visitExtent(ExtentContext clause) {
    Place from = parts.place(clause.from);
    Place to = parts.place(clause.to);
    return from == null || to == null
        ? null
        : new Clause.Extent(word(clause), from, to, range(clause));
  }

  @Override
  public Clause visitSpaced(SpacedContext clause) {
    List<Clause.Spaced.Step> steps = all(clause.step(), this::step);
    return steps == null ? null : new Clause.Spaced(word(clause), steps, range(clause));
  }

  private Clause.Spaced.Step step(StepContext step) {
    if (broken(step)) {
      return null;
    }
    if (step instanceof RepeatedContext repeated) {
      Expression length = parts.expression(repeated.expression());
      return length == null || broken(repeated.spread())
          ? null
          : new Clause.Spaced.Step(
              Optional.of(PartBuilder.count(repeated.COUNT())),
              repeated.spread().EQUAL() != null,
              length,
              range(step));
    }
    Expression length = parts.expression(((SingleContext) step).expression());
    return length == null
        ? null
        : new Clause.Spaced.Step(Optional.empty(), false, length, range(step));
  }

  @Override
  public Clause visitSelecting(SelectingContext clause) {
    Selection selection = parts.selection(clause.selection());
    return selection == null ? null : new Clause.Selecting(word(clause), selection, range(clause));
  }

  @Override
  public Clause visitNamed(NamedContext clause) {
    return named(clause, clause.name());
  }

  @Override
  public Clause visitNamedBy(NamedByContext clause) {
    return named(clause, clause.name());
  }

  @Override
  public Clause visitNamedOn(NamedOnContext clause) {
    return named(clause, clause.name());
  }

  private Clause named(ClauseContext clause, NameContext context) {
    Word name = parts.name(context);
    return name == null ? null : new Clause.Named(word(clause), name, range(clause));
  }

  @Override
  public Clause visitMark(MarkContext clause) {
    return new Clause.Named(
        word(clause), PartBuilder.word(clause.STRING().getSymbol()), range(clause));
  }

  @Override
  public Clause visitCounted(CountedContext clause) {
    Word name = parts.name(clause.name());
    return name == null
        ? null
        : new Clause.Counted(word(clause), PartBuilder.count(clause.COUNT()), name, range(clause));
  }

  @Override
  public Clause visitValued(ValuedContext clause) {
    return valued(clause, clause.expression(), clause.direction());
  }

  @Override
  public Clause visitEdge(EdgeContext clause) {
    return clause.expression() == null
        ? new Clause.Flag(word(clause), range(clause))
        : valued(clause, clause.expression(), clause.direction());
  }

  private Clause valued(
      ClauseContext clause, ExpressionContext expression, DirectionContext direction) {
    Expression value = parts.expression(expression);
    return value == null
        ? null
        : new Clause.Valued(
            word(clause), value, Optional.ofNullable(parts.direction(direction)), range(clause));
  }

  @Override
  public Clause visitByOthers(ByOthersContext clause) {
    return new Clause.Flag(word(clause), range(clause));
  }

  @Override
  public Clause visitFlag(FlagContext clause) {
    return new Clause.Flag(word(clause), range(clause));
  }

  @Override
  public Clause visitLoads(LoadsContext clause) {
    List<Clause.Loads.Load> loads = all(clause.load(), this::load);
    return loads == null ? null : new Clause.Loads(word(clause), loads, range(clause));
  }

  private Clause.Loads.Load load(LoadContext load) {
    Expression force = parts.expression(load.force);
    Word direction = parts.direction(load.direction(0));
    if (broken(load) || force == null || direction == null) {
      return null;
    }
    if (load.arm == null) {
      return new Clause.Loads.Load(force, direction, Optional.empty(), Optional.empty());
    }
    Expression arm = parts.expression(load.arm);
    Word armDirection = parts.direction(load.armDirection);
    return arm == null || armDirection == null
        ? null
        : new Clause.Loads.Load(force, direction, Optional.of(arm), Optional.of(armDirection));
  }
}
