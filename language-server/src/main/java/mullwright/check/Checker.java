package mullwright.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.model.Origin;

/**
 * Runs rules over facts.
 *
 * <p>Findings come back in the order of the text, whatever the order of the rules. A rule that
 * fails costs its own answer only: what the others found is kept, and the failure is told beside
 * it.
 */
public final class Checker {
  /** Walls of fewer cells are checked sooner than a second thread wakes. */
  private static final int WORTH_SHARING = 100;

  private final Rules rules;

  public Checker(Rules rules) {
    this.rules = rules;
  }

  /** The rules it runs. */
  public Rules rules() {
    return rules;
  }

  /**
   * What was found, and which rules failed.
   *
   * @param findings in the order of the text, none twice
   * @param failures rules that broke, with what broke them
   * @param foundOn where in the wall it was found
   */
  public record Checked(List<Finding> findings, List<Failure> failures, FoundOn foundOn) {
    public Checked {
      findings = List.copyOf(findings);
      failures = List.copyOf(failures);
    }
  }

  /** A rule that broke: a fault of this program, not of the wall. */
  public record Failure(String rule, RuntimeException cause) {}

  /**
   * Runs every rule.
   *
   * @param cancelled asked between rules and pieces
   * @throws CancellationException as soon as {@code cancelled} says so
   */
  public Checked check(TextFacts text, List<WallFacts> walls, BooleanSupplier cancelled) {
    List<Checked> parts = new ArrayList<>();
    parts.add(checkText(text, cancelled));
    walls.forEach(wall -> parts.add(checkWall(wall, cancelled)));
    return together(parts);
  }

  /**
   * Runs the rules about the text.
   *
   * @throws CancellationException as soon as {@code cancelled} says so
   */
  public Checked checkText(TextFacts text, BooleanSupplier cancelled) {
    return new RuleRun(
            rules.all(),
            (rule, found) -> {
              if (rule instanceof TextRule textRule) {
                textRule.check(text, found);
              }
            },
            cancelled)
        .alone();
  }

  /**
   * Runs the rules about a wall and its pieces. What comes out depends on that wall, its part of
   * the text and its catalog only, so whoever has those unchanged may keep it.
   *
   * <p>Rules that lean on a block with a line that could not be read are left out: they would tell
   * the same mistake again by its consequences.
   *
   * @throws CancellationException as soon as {@code cancelled} says so
   */
  public Checked checkWall(WallFacts wall, BooleanSupplier cancelled) {
    Set<Group> waiting = wall.waiting();
    RuleRun run =
        new RuleRun(
            rules.all(),
            (rule, found) -> {
              if (!waiting.contains(rule.about().group())) {
                check(rule, wall, found, cancelled);
              }
            },
            cancelled);
    return wall.layout().cells().size() < WORTH_SHARING
        ? run.alone()
        : run.shared(wall.analysis()::solveFrame);
  }

  /**
   * Runs the rules about a wall on a portion of it.
   *
   * @return what they find in the pieces to be told of; empty if any finding, or its mend, may hang
   *     on the rest of the wall
   * @throws CancellationException as soon as {@code cancelled} says so
   */
  public Optional<Checked> checkPortion(WallFacts portion, BooleanSupplier cancelled) {
    Checked checked = checkWall(portion, cancelled);
    return checked.foundOn().anywhere() ? Optional.empty() : Optional.of(checked);
  }

  /** All that was found in parts, in the order of the text. */
  public static Checked together(List<Checked> parts) {
    List<Finding> findings = new ArrayList<>();
    List<Failure> failures = new ArrayList<>();
    FoundOn foundOn = FoundOn.nothing();
    for (Checked part : parts) {
      findings.addAll(part.findings());
      failures.addAll(part.failures());
      foundOn = foundOn.and(part.foundOn());
    }
    List<Finding> all = new ArrayList<>(new LinkedHashSet<>(findings));
    all.sort(Checker::inOrder);
    return new Checked(all, failures, foundOn);
  }

  private static int inOrder(Finding one, Finding other) {
    int order = Origin.inText(one.origin(), other.origin());
    if (order == 0) {
      order = one.rule().compareTo(other.rule());
    }
    if (order == 0) {
      order = one.piece().compareTo(other.piece());
    }
    return order == 0 ? one.what().compareTo(other.what()) : order;
  }

  private static void check(Rule rule, WallFacts facts, Findings found, BooleanSupplier cancelled) {
    if (rule instanceof WallRule wallRule) {
      wallRule.check(facts, found);
    }
    if (rule instanceof MemberRule memberRule) {
      for (VerticalPiece piece : facts.verticals()) {
        RuleRun.ask(cancelled);
        found.near(piece.line(), piece.line());
        memberRule.check(piece, facts, found);
      }
    }
    if (rule instanceof HorizontalRule horizontalRule) {
      for (HorizontalPiece piece : facts.horizontals()) {
        RuleRun.ask(cancelled);
        found.near(piece.leftLine(), piece.rightLine());
        horizontalRule.check(piece, facts, found);
      }
    }
    if (rule instanceof SpliceRule spliceRule) {
      for (SpliceJoint joint : facts.splices()) {
        RuleRun.ask(cancelled);
        found.near(joint.line(), joint.line());
        spliceRule.check(joint, facts, found);
      }
    }
    if (rule instanceof AnchorRule anchorRule) {
      for (PlacedAnchor anchor : facts.anchors()) {
        RuleRun.ask(cancelled);
        found.near(anchor.use().line(), anchor.use().line());
        anchorRule.check(anchor, facts, found);
      }
    }
    if (rule instanceof LiteRule liteRule) {
      for (Cell cell : facts.cells()) {
        RuleRun.ask(cancelled);
        found.near(facts.leftOf(cell), facts.rightOf(cell));
        liteRule.check(cell, facts, found);
      }
    }
  }
}
