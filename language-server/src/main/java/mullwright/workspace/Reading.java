package mullwright.workspace;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.check.Checker;
import mullwright.check.Finding;
import mullwright.check.TextFacts;
import mullwright.check.WallFacts;
import mullwright.layout.LayoutBuilder;
import mullwright.layout.WallLayout;
import mullwright.model.Model;
import mullwright.model.ModelReader;
import mullwright.model.Reference;
import mullwright.model.Sources;
import mullwright.model.Wall;
import mullwright.syntax.ParsedFile;

/**
 * One file read with all it uses: its model, the layout of its walls, what is found in them.
 *
 * <p>It remembers every text it was made from, those included that were asked for and are not
 * there. As long as those are the very same it holds, whatever else changes. Model, layout and
 * findings are each computed when first asked for.
 */
public final class Reading {
  private final String path;
  private final Map<String, Optional<ParsedFile>> sources;
  private final Model model;
  private final Memory memory;
  private List<WallFacts> before;
  private List<WallLayout> layouts;
  private List<WallDetails> details;
  private List<WallFacts> walls;
  private Checker.Checked checked;
  private ReferenceIndex index;

  private Reading(
      String path,
      Map<String, Optional<ParsedFile>> sources,
      Model model,
      Memory memory,
      List<WallFacts> before) {
    this.path = path;
    this.sources = sources;
    this.model = model;
    this.memory = memory;
    this.before = before;
  }

  /**
   * Reads a file.
   *
   * @param last an earlier reading of the same file, or null; walls that come out the very same
   *     keep what was computed for them
   */
  static Reading of(String path, Snapshot snapshot, Reading last, Memory memory) {
    Map<String, Optional<ParsedFile>> asked = new HashMap<>();
    Sources sources = used -> asked.computeIfAbsent(used, snapshot::file);
    Model model = ModelReader.read(path, sources, memory.models());
    return new Reading(path, asked, model, memory, last == null ? List.of() : last.known());
  }

  /** True if it would come out the same in that snapshot, since its texts are the same. */
  boolean holdsIn(Snapshot snapshot) {
    for (Map.Entry<String, Optional<ParsedFile>> source : sources.entrySet()) {
      ParsedFile now = snapshot.file(source.getKey()).orElse(null);
      if (now != source.getValue().orElse(null)) {
        return false;
      }
    }
    return true;
  }

  private synchronized List<WallFacts> known() {
    return walls == null ? before : walls;
  }

  /** The file it is of. */
  public String path() {
    return path;
  }

  /** What the file and those it uses say. */
  public Model model() {
    return model;
  }

  /** Its walls laid out, in the order of the text. */
  public synchronized List<WallLayout> layouts() {
    if (layouts == null) {
      List<WallLayout> all = new ArrayList<>();
      for (Wall wall : model.walls()) {
        WallFacts same = same(wall);
        all.add(same != null ? same.layout() : LayoutBuilder.layOut(wall, model.catalog()));
      }
      layouts = List.copyOf(all);
    }
    return layouts;
  }

  /** Its walls with what nature does to them, in the order of the text. */
  public synchronized List<WallFacts> walls() {
    if (walls == null) {
      TextFacts text = text();
      List<WallFacts> all = new ArrayList<>();
      for (WallLayout layout : layouts()) {
        WallFacts same = same(layout.wall());
        WallAnalysis analysis =
            same != null ? same.analysis() : WallAnalysis.of(layout, memory.beams());
        all.add(new WallFacts(text, layout, analysis));
      }
      walls = List.copyOf(all);
      // what was taken over is taken over; the rest would only be kept alive
      before = List.of();
    }
    return walls;
  }

  /** The same with what can be looked up in each. */
  public synchronized List<WallDetails> details() {
    if (details == null) {
      details = layouts().stream().map(WallDetails::new).toList();
    }
    return details;
  }

  private WallFacts same(Wall wall) {
    for (WallFacts facts : before) {
      if (facts.catalog() == model.catalog() && facts.wall().equals(wall)) {
        return facts;
      }
    }
    return null;
  }

  private TextFacts text() {
    Map<String, ParsedFile> files = new HashMap<>();
    sources.forEach((name, file) -> file.ifPresent(found -> files.put(name, found)));
    return new TextFacts(model, files);
  }

  /**
   * What is found in it and in what it uses, in the order of the text.
   *
   * @throws java.util.concurrent.CancellationException if the answer is no longer wanted; the next
   *     question computes it anew
   */
  public List<Finding> findings(Cancel cancel) {
    return checked(cancel).findings();
  }

  /** Rules that broke while checking: faults of this program, not of the text. */
  public List<Checker.Failure> failures(Cancel cancel) {
    return checked(cancel).failures();
  }

  private synchronized Checker.Checked checked(Cancel cancel) {
    if (checked == null) {
      cancel.check();
      List<WallFacts> facts = walls();
      checked =
          memory
              .checker()
              .check(facts.isEmpty() ? text() : facts.get(0).text(), facts, cancel::asked);
    }
    return checked;
  }

  /** Every name of the file that was found, by where it stands. */
  synchronized List<Reference> referencesAt(int segment, int offset) {
    if (index == null) {
      index = ReferenceIndex.of(model.references(), path);
    }
    return index.at(segment, offset);
  }
}
