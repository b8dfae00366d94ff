package mullwright.workspace;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.check.Checker;
import mullwright.check.Portions;
import mullwright.check.TextFacts;
import mullwright.check.WallFacts;
import mullwright.layout.LayoutBuilder;
import mullwright.layout.WallLayout;
import mullwright.model.Catalog;
import mullwright.model.Wall;
import mullwright.model.WallDifference;
import mullwright.model.WallPortion;

/**
 * What rules found in the walls of one file, kept from one reading to the next.
 *
 * <p>A wall that stays what it is keeps its findings. Of a wide wall that changed in some bays,
 * only the portions around them are laid out and checked: where nothing was found and nothing
 * changed, nothing is found. Where something was found it is told anew, in the words of the present
 * text.
 */
final class WallChecks {
  private final Memory memory;
  private final Catalog catalog;
  private final TextFacts text;
  private List<Known> before;
  private final List<Known> now = new ArrayList<>();

  /**
   * What was found in a wall.
   *
   * @param checked what was found; null if that no longer holds
   * @param quiet the last state of it in which every rule spoke and nothing was found that hangs on
   *     the whole wall; null if there was none
   */
  record Known(Wall wall, Checker.Checked checked, Quiet quiet) {
    /**
     * The same when what stands beside the wall has changed. Where it was quiet still holds: a line
     * that cannot be read makes rules say less, and never more.
     */
    Known outdated() {
      return new Known(wall, null, quiet);
    }
  }

  /**
   * Where nothing was found.
   *
   * @param loud the lines where something was
   */
  record Quiet(Wall wall, Catalog catalog, BitSet loud) {}

  /**
   * @param before what was found when the file was last read, by the same rules
   */
  WallChecks(Memory memory, Catalog catalog, TextFacts text, List<Known> before) {
    this.memory = memory;
    this.catalog = catalog;
    this.text = text;
    this.before = before;
  }

  /** What is known of its walls, for the next reading; of those not asked for, from the last. */
  List<Known> known() {
    List<Known> known = new ArrayList<>(now);
    known.addAll(before);
    return known;
  }

  /** Lets go of what is known of walls that are not among these. */
  void keep(List<Wall> walls) {
    before = List.of();
    now.removeIf(known -> walls.stream().noneMatch(wall -> wall == known.wall()));
  }

  /**
   * What rules find in one of the walls.
   *
   * @param whole lays all of it out
   * @throws java.util.concurrent.CancellationException if the answer is no longer wanted
   */
  Checker.Checked of(Wall wall, Supplier<WallFacts> whole, Cancel cancel) {
    Known done = same(wall, now);
    if (done != null) {
      return done.checked();
    }
    Known known = same(wall, before);
    if (known == null) {
      Quiet quiet = quiet(wall);
      Optional<Known> some = quiet == null ? Optional.empty() : inPortions(wall, quiet, cancel);
      known = some.isPresent() ? some.get() : whole(wall, whole.get(), quiet, cancel);
    }
    now.add(new Known(wall, known.checked(), known.quiet()));
    return known.checked();
  }

  private Known same(Wall wall, List<Known> among) {
    for (Known known : among) {
      if (known.checked() != null && memory.isSame(known.wall(), wall)) {
        return known;
      }
    }
    return null;
  }

  private Quiet quiet(Wall wall) {
    for (Known known : before) {
      Quiet quiet = known.quiet();
      if (quiet != null && quiet.catalog() == catalog && quiet.wall().name().equals(wall.name())) {
        return quiet;
      }
    }
    return null;
  }

  private Known whole(Wall wall, WallFacts facts, Quiet last, Cancel cancel) {
    Checker.Checked checked = memory.checker().checkWall(facts, cancel::asked);
    Quiet quiet = last;
    if (memory.isWide(wall) && facts.settled()) {
      boolean told = !checked.foundOn().anywhere() && checked.failures().isEmpty();
      quiet = told ? new Quiet(wall, catalog, checked.foundOn().lines()) : last;
    }
    return new Known(wall, checked, quiet);
  }

  /** What is found around all that changed; empty if the whole wall has to be asked. */
  private Optional<Known> inPortions(Wall wall, Quiet quiet, Cancel cancel) {
    Optional<WallDifference> difference = WallDifference.of(quiet.wall(), wall);
    if (difference.isEmpty()) {
      return Optional.empty();
    }
    Optional<List<Portions.Portion>> portions = Portions.of(wall, difference.get(), quiet.loud());
    if (portions.isEmpty()) {
      return Optional.empty();
    }
    List<Checker.Checked> parts = new ArrayList<>();
    boolean settled = true;
    for (Portions.Portion portion : portions.get()) {
      WallFacts facts = facts(wall, portion);
      settled &= facts.settled();
      Optional<Checker.Checked> checked = memory.checker().checkPortion(facts, cancel::asked);
      if (checked.isEmpty() || !checked.get().failures().isEmpty()) {
        return Optional.empty();
      }
      parts.add(checked.get());
    }
    Checker.Checked all = Checker.together(parts);
    return Optional.of(
        new Known(wall, all, settled ? new Quiet(wall, catalog, all.foundOn().lines()) : quiet));
  }

  private WallFacts facts(Wall wall, Portions.Portion portion) {
    Wall cut = WallPortion.of(wall, portion.laidOut().first(), portion.laidOut().last());
    WallLayout layout = LayoutBuilder.layOut(cut, catalog);
    WallAnalysis analysis = WallAnalysis.ofPortion(layout, wall, memory.beams(), memory.glass());
    return new WallFacts(text, layout, analysis, portion.told());
  }
}
