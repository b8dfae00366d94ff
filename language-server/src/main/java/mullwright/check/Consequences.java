package mullwright.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import mullwright.model.ModelProblem;
import mullwright.model.NearNames;
import mullwright.model.Origin;
import mullwright.syntax.Block;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.SyntaxProblem;
import mullwright.syntax.TextRange;

/**
 * Tells mistakes from what only follows from them: a name that stands in a line that could not be
 * read is unknown elsewhere, and one mistake is told once.
 *
 * <p>Costs nothing while the text has no mistake.
 */
final class Consequences {
  /** Made when something is wrong. */
  private static final class Patterns {
    static final Pattern WORD_ENDS = Pattern.compile("[^\\p{L}\\p{N}_.-]+");

    /** A line of units, inside a block of which the first line may be what could not be read. */
    static final Pattern UNITS = Pattern.compile("(?m)^\\s*units\\b");
  }

  private static final Set<String> UNIT_SYSTEMS =
      Set.of("units", "inches", "feet", "millimetres", "metres");

  /** Names that no other file brings in. */
  private static final Set<String> OWN = Set.of("line", "floor", "row", "floor or row");

  private final TextFacts facts;

  /** Lines that could not be read. */
  private final LineSet broken = new LineSet();

  /** Lines that could be, and say something that cannot be. */
  private final LineSet doubtful = new LineSet();

  /** Lines that name what nothing has. */
  private final LineSet misnamed = new LineSet();

  /** Lines that give the same names. */
  private final LineSet doubled = new LineSet();

  /** Whether where things are is unclear, by segment. */
  private final Map<LineSet.Place, Boolean> unclear = new HashMap<>();

  /** The blocks that hold a line in which something is wrong, by segment. */
  private final Map<LineSet.Place, Set<TextRange>> spoilt = new HashMap<>();

  /** All words of lines that could not be read, and of parts of no known kind. */
  private final Set<String> words = new HashSet<>();

  /** Kinds of part of which one lacks its name. */
  private final Set<String> nameless = new HashSet<>();

  /** Files whose line of units could not be read. */
  private final Set<String> unitless = new HashSet<>();

  private boolean useLost;

  private Consequences(TextFacts facts) {
    this.facts = facts;
    facts.files().forEach(this::collect);
    for (ModelProblem problem : facts.model().problems()) {
      Origin at = problem.origin();
      if (problem instanceof ModelProblem.BadUse) {
        useLost = true;
      } else if (isKindOfPart(problem)) {
        facts.segment(at).ifPresent(it -> addWords(at.file(), LineSet.text(it, at)));
      } else if (problem instanceof ModelProblem.Duplicate twice) {
        facts.segment(at).ifPresent(it -> doubled.add(it, at));
        facts.segment(twice.first()).ifPresent(it -> doubled.add(it, twice.first()));
      } else if (problem instanceof ModelProblem.BadProperty
          || problem instanceof ModelProblem.CommaAtEnd
          || problem instanceof ModelProblem.WrongUnit
          || problem instanceof ModelProblem.UnitMissing
          || problem instanceof ModelProblem.UnknownName) {
        facts.segment(at).ifPresent(it -> doubtful.add(it, at));
      }
      if (problem instanceof ModelProblem.UnknownName || problem instanceof ModelProblem.Garbled) {
        facts.segment(at).ifPresent(it -> misnamed.add(it, at));
      }
    }
  }

  /** The problems of the model but those that follow from another mistake. */
  static List<ModelProblem> without(TextFacts facts) {
    List<ModelProblem> all = facts.model().problems();
    if (all.isEmpty()) {
      return all;
    }
    Consequences consequences = new Consequences(facts);
    Set<Object> told = new HashSet<>();
    return all.stream()
        .filter(problem -> !consequences.follows(problem))
        .filter(problem -> told.add(consequences.mistake(problem)))
        .filter(problem -> told.add(sameName(problem)))
        .toList();
  }

  /** A name that nothing has is one mistake in a file, however often it stands there. */
  private static Object sameName(ModelProblem problem) {
    return problem instanceof ModelProblem.UnknownName unknown
        ? List.of("name", unknown.name(), unknown.origin().file())
        : List.of(problem);
  }

  private void collect(String path, ParsedFile file) {
    for (int i = 0; i < file.segments().size(); i++) {
      Segment segment = file.segments().get(i);
      for (SyntaxProblem problem : segment.problems()) {
        if (problem instanceof SyntaxProblem.Garbled slip) {
          slip.meant().forEach(meant -> addWords(path, meant));
        }
        Origin at = new Origin(path, i, problem.range());
        broken.add(segment, at);
        String text = LineSet.text(segment, at);
        addWords(path, text);
        useLost |= text.contains(".wall");
        if (text.contains("{") && Patterns.UNITS.matcher(segment.text()).find()) {
          unitless.add(path);
        }
        facts
            .statementAt(at)
            .filter(it -> it.kind() == StatementKind.CATALOG_PART && it.arguments().isEmpty())
            .ifPresent(it -> nameless.add(it.keyword().text()));
      }
    }
  }

  private void addWords(String path, String line) {
    for (String word : Patterns.WORD_ENDS.split(line)) {
      words.add(word);
      if (UNIT_SYSTEMS.contains(word)) {
        unitless.add(path);
      }
    }
  }

  private static boolean isKindOfPart(ModelProblem problem) {
    return problem instanceof ModelProblem.UnknownName unknown
        && unknown.what().equals("kind of part");
  }

  private boolean follows(ModelProblem problem) {
    Origin at = problem.origin();
    if (isBroken(at)) {
      return true;
    }
    if (problem instanceof ModelProblem.UnknownName unknown) {
      return (OWN.contains(unknown.what()) ? gridIsUnclear(at) : useLost)
          || nameless.contains(unknown.what())
          || words.contains(unknown.name()) && !isKindOfPart(problem);
    }
    if (problem instanceof ModelProblem.UnitMissing) {
      return unitless.contains(at.file());
    }
    if (problem instanceof ModelProblem.Duplicate duplicate) {
      return isBroken(duplicate.first());
    }
    if (problem instanceof ModelProblem.Missing) {
      return holds(doubtful, at) || lacksALine(at);
    }
    if (problem instanceof ModelProblem.Conflict conflict) {
      return isBroken(conflict.first())
          || holds(misnamed, at)
          || holds(misnamed, conflict.first())
          || placesAreUnclear(at)
          || placesAreMisnamed(at);
    }
    if (problem instanceof ModelProblem.OutOfPlace && unitless.contains(at.file())) {
      return true;
    }
    if (problem instanceof ModelProblem.Shadowed) {
      return holds(doubled, at) || placesAreUnclear(at) || placesAreMisnamed(at);
    }
    return problem instanceof ModelProblem.OutOfPlace
        && (placesAreUnclear(at) || placesAreMisnamed(at));
  }

  /**
   * What stands for the mistake a problem tells of: names of one line that are unknown and no slips
   * of known ones are one, since rather the word before them is wrong; so are all names that a line
   * gives again.
   */
  private Object mistake(ModelProblem problem) {
    boolean one =
        problem instanceof ModelProblem.Duplicate
            || problem instanceof ModelProblem.UnknownName unknown
                && unknown.candidates().stream()
                    .limit(1)
                    .noneMatch(nearest -> NearNames.isNear(unknown.name(), nearest));
    if (!one) {
      return problem;
    }
    String what =
        problem instanceof ModelProblem.UnknownName unknown ? unknown.what() : "duplicate";
    return facts
        .segment(problem.origin())
        .<Object>map(segment -> List.of(what, LineSet.line(segment, problem.origin())))
        .orElse(problem);
  }

  private boolean isBroken(Origin at) {
    return holds(broken, at);
  }

  private boolean holds(LineSet lines, Origin at) {
    return !lines.isEmpty()
        && facts.segment(at).filter(segment -> lines.holds(segment, at)).isPresent();
  }

  /**
   * True if what a statement lacks may stand in a line of its block in which something is wrong.
   */
  private boolean lacksALine(Origin at) {
    if (broken.near(at).isEmpty() && doubtful.near(at).isEmpty()) {
      return false;
    }
    List<Statement> all = facts.segment(at).map(Segment::statements).orElse(List.of());
    Set<TextRange> blocks =
        spoilt.computeIfAbsent(
            LineSet.Place.of(at),
            place ->
                Stream.concat(broken.near(at).stream(), doubtful.near(at).stream())
                    .flatMap(line -> innermost(all, line.end(), Optional.empty()).stream())
                    .map(Block::range)
                    .collect(Collectors.toSet()));
    return facts
        .statementAt(at)
        .flatMap(Statement::block)
        .or(() -> innermost(all, at.range().start(), Optional.empty()))
        .filter(own -> blocks.contains(own.range()))
        .isPresent();
  }

  /** The innermost block round an offset. */
  private static Optional<Block> innermost(
      List<Statement> statements, int offset, Optional<Block> around) {
    for (Statement statement : statements) {
      Optional<Block> block = statement.block().filter(it -> it.range().touches(offset));
      if (block.isPresent()) {
        return innermost(block.get().statements(), offset, block);
      }
    }
    return around;
  }

  /** True if a line that could not be read may say what is where. */
  private boolean gridIsUnclear(Origin at) {
    return unclear.computeIfAbsent(LineSet.Place.of(at), place -> isUnclear(at, block -> true));
  }

  /** The same, also of a line in the same block. */
  private boolean placesAreUnclear(Origin at) {
    return gridIsUnclear(at) || isUnclear(at, block -> !block.range().touches(at.range().start()));
  }

  /** True if a line of the grid names what nothing has: things are not where they were meant. */
  private boolean placesAreMisnamed(Origin at) {
    return isUnclear(at, misnamed, block -> true);
  }

  /** True if a line that could not be read stands in none of the blocks that tell no places. */
  private boolean isUnclear(Origin at, Predicate<Statement> other) {
    return isUnclear(at, broken, other);
  }

  private boolean isUnclear(Origin at, LineSet lines, Predicate<Statement> other) {
    List<TextRange> near = lines.near(at);
    if (near.isEmpty()) {
      return false;
    }
    List<Statement> blocks =
        facts.segment(at).stream()
            .flatMap(segment -> segment.statements().stream())
            .flatMap(statement -> statement.block().stream())
            .flatMap(block -> block.statements().stream())
            .filter(statement -> statement.kind() != StatementKind.GRID_BLOCK)
            .filter(other)
            .toList();
    return near.stream()
        .anyMatch(line -> blocks.stream().noneMatch(it -> it.range().touches(line.end())));
  }
}
