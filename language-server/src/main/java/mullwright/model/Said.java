package mullwright.model;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Statement;
import mullwright.syntax.TextRange;

/**
 * A statement as a wall takes it: the tree's statement, where it stands and how it is to be read.
 *
 * @param scope what its names and bare numbers mean
 * @param wall the wall it stands in; names it defines belong to that one
 * @param layer 0 for the wall at the bottom of a {@code like} chain; a higher layer wins
 * @param mirrored true if left and right are exchanged on the way to the wall that takes it
 */
record Said(Statement statement, Spot spot, Scope scope, String wall, int layer, boolean mirrored) {
  /**
   * True if another says the same in the same words at the same place, what a name means being the
   * same for both.
   */
  boolean saysSame(Said other) {
    return layer == other.layer
        && mirrored == other.mirrored
        && wall.equals(other.wall)
        && spot.file().equals(other.spot.file())
        && spot.index() == other.spot.index()
        && statement.equals(other.statement)
        && spot.text(statement.range()).equals(other.spot.text(statement.range()))
        && spot.problemsIn(statement.range()).equals(other.spot.problemsIn(statement.range()));
  }

  /** From keyword to last token. */
  Origin origin() {
    return spot.at(statement.range());
  }

  /** Where the name after the keyword stands; the statement if there is none. */
  Origin nameOrigin() {
    return argument(Argument.Name.class).map(name -> spot.at(name.range())).orElse(origin());
  }

  ExpressionReader values(Collector collector) {
    return new ExpressionReader(scope, spot, collector);
  }

  <A extends Argument> Optional<A> argument(Class<A> form) {
    return statement.argument(form);
  }

  /** The clause of that word, if it has that form. */
  <C extends Clause> Optional<C> clause(ClauseWord word, Class<C> form) {
    return statement.clause(word).filter(form::isInstance).map(form::cast);
  }

  boolean has(ClauseWord word) {
    return statement.clause(word).isPresent();
  }

  /** True if something in its block is no statement. */
  boolean strays() {
    return spot.strays(statement);
  }

  /** True if a syntax error stands in it: what it lacks was reported. */
  boolean broken() {
    return spot.broken(statement.range());
  }

  /**
   * True if one of the places it gives lies further from the datum than a wall may reach, which is
   * reported once.
   */
  boolean beyondReach(List<Length> places, Collector collector) {
    for (Length place : places) {
      if (place.isLongerThan(Length.LIMIT) || place.isShorterThan(Length.LIMIT.negated())) {
        TextRange range =
            statement
                .clause(has(ClauseWord.SPACED) ? ClauseWord.SPACED : ClauseWord.AT)
                .map(Clause::range)
                .orElse(statement.range());
        collector.bad(ModelProblem.BadValue.Reason.OUT_OF_RANGE, spot.text(range), spot.at(range));
        return true;
      }
    }
    return false;
  }

  /** Keyword and first argument, {@code floor L2}, for problems. */
  String words() {
    int end =
        statement.arguments().isEmpty()
            ? statement.keyword().range().end()
            : statement.arguments().get(0).range().end();
    return spot.text(new TextRange(statement.keyword().range().start(), end));
  }
}
