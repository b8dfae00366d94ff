package mullwright.installation;

import java.util.ArrayList;
import java.util.List;
import mullwright.layout.WallLayout;

/**
 * The steps of a wall and what must come before what.
 *
 * @param precedences none joins a step with itself
 */
public record WorkGraph(List<WorkStep> steps, List<Precedence> precedences) {
  public WorkGraph {
    steps = List.copyOf(steps);
    precedences = List.copyOf(precedences);
  }

  /** All steps of a wall, from the anchors to the seal round it. */
  public static WorkGraph of(WallLayout layout) {
    WorkGraphBuilder builder = new WorkGraphBuilder(layout);
    FrameWork frame = new FrameWork(layout, builder);
    frame.add();
    new GlassWork(layout, builder, frame).add();
    return builder.graph();
  }

  /**
   * What stands alone, lengths, ladders and horizontals: only there can the method stand in its own
   * way, since anchors and clips wait for none of them, and none of them waits for squaring or
   * glass.
   */
  public static WorkGraph standing(WallLayout layout) {
    WorkGraphBuilder builder = new WorkGraphBuilder(layout);
    new FrameWork(layout, builder).standing();
    return builder.graph();
  }

  /** The same graph with one precedence more. */
  public WorkGraph with(Precedence more) {
    List<Precedence> all = new ArrayList<>(precedences);
    all.add(more);
    return new WorkGraph(steps, all);
  }

  /** What each step waits for, by index. */
  List<List<Precedence>> waiting() {
    List<List<Precedence>> waiting = new ArrayList<>(steps.size());
    steps.forEach(step -> waiting.add(new ArrayList<>(4)));
    precedences.forEach(each -> waiting.get(each.after()).add(each));
    return waiting;
  }

  /** What waits for each step, by index. */
  List<List<Precedence>> following() {
    List<List<Precedence>> following = new ArrayList<>(steps.size());
    steps.forEach(step -> following.add(new ArrayList<>(4)));
    precedences.forEach(each -> following.get(each.before()).add(each));
    return following;
  }
}
