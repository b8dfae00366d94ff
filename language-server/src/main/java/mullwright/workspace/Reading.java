package mullwright.workspace;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import mullwright.check.Allowances;
import mullwright.check.Checker;
import mullwright.check.Finding;
import mullwright.check.Severities;
import mullwright.check.TextFacts;
import mullwright.check.WallFacts;
import mullwright.layout.WallLayout;
import mullwright.model.Model;
import mullwright.model.ModelReader;
import mullwright.model.Reference;
import mullwright.model.Sources;
import mullwright.model.Symbol;
import mullwright.model.Wall;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.StatementKind;

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
  private final List<Finding> damage;
  private final Memory memory;
  private final Frame frame;
  private List<WallChecks.Known> foundBefore;
  private final Files.Read settings;
  private final Severities severities;
  private final LaidOutWalls laidOut;
  private List<WallLayout> layouts;
  private List<WallDetails> details;
  private List<WallFacts> walls;
  private WallChecks checks;
  private TextFacts text;
  private Checker.Checked checked;
  private Allowances.Applied applied;
  private ReferenceIndex index;

  private Reading(
      String path,
      Map<String, Optional<ParsedFile>> sources,
      Model model,
      List<Finding> damage,
      Memory memory,
      Frame frame,
      List<WallChecks.Known> foundBefore,
      Files.Read settings,
      Severities severities,
      List<WallFacts> before) {
    this.path = path;
    this.sources = sources;
    this.model = model;
    this.damage = damage;
    this.memory = memory;
    this.frame = frame;
    this.foundBefore = foundBefore;
    this.settings = settings;
    this.severities = severities;
    this.laidOut = new LaidOutWalls(model, memory, before);
  }

  /**
   * Reads a file.
   *
   * @param last an earlier reading of the same file, or null; walls that come out the very same
   *     keep what was computed for them
   */
  static Reading of(String path, Snapshot snapshot, Reading last, Memory memory) {
    Map<String, Optional<ParsedFile>> asked = new HashMap<>();
    Sources sources =
        new Sources() {
          @Override
          public Optional<ParsedFile> find(String used) {
            return asked.computeIfAbsent(used, snapshot::file);
          }

          @Override
          public boolean placed() {
            return snapshot.placed();
          }
        };
    Model model = ModelReader.read(path, sources, memory.models());
    List<Finding> damage = Damage.findings(asked, snapshot);
    Frame frame = Frame.of(path, asked);
    List<WallChecks.Known> known = last == null ? List.of() : last.knownFindings(frame);
    List<WallFacts> before = last == null ? List.of() : last.known();
    Files.Read settings = snapshot.settled(Severities.FILE);
    Severities severities =
        last != null && settings.equals(last.settings)
            ? last.severities
            : severities(settings, memory);
    return new Reading(
        path, asked, model, damage, memory, frame, known, settings, severities, before);
  }

  private static Severities severities(Files.Read settings, Memory memory) {
    return settings instanceof Files.Read.Text text
        ? Severities.read(text.text(), memory.checker().rules())
        : Severities.USUAL;
  }

  /** True if it would come out the same in that snapshot, since its texts are the same. */
  boolean holdsIn(Snapshot snapshot) {
    if (!snapshot.settled(Severities.FILE).equals(settings)) {
      return false;
    }
    for (Map.Entry<String, Optional<ParsedFile>> source : sources.entrySet()) {
      ParsedFile now = snapshot.file(source.getKey()).orElse(null);
      if (now != source.getValue().orElse(null)) {
        return false;
      }
    }
    return true;
  }

  private synchronized List<WallFacts> known() {
    return laidOut.known();
  }

  /** The files it was made from, itself among them; those that are not there as well. */
  public Set<String> files() {
    return Collections.unmodifiableSet(sources.keySet());
  }

  /** The file it is of. */
  public String path() {
    return path;
  }

  /** What the file and those it uses say. */
  public Model model() {
    return model;
  }

  /** Its own parts that neither it nor what it uses names; another file that uses it may. */
  public List<Symbol> unnamedParts() {
    List<Symbol> parts = new ArrayList<>();
    for (Symbol symbol : model.unusedNames()) {
      if (symbol.kind() == Symbol.Kind.PART) {
        parts.add(symbol);
      }
    }
    return parts;
  }

  /** Its walls laid out, in the order of the text. */
  public synchronized List<WallLayout> layouts() {
    if (layouts == null) {
      List<WallLayout> all = new ArrayList<>();
      for (Wall wall : model.walls()) {
        all.add(laidOut.layout(wall));
      }
      layouts = List.copyOf(all);
    }
    return layouts;
  }

  /** Its walls with what nature does to them, in the order of the text. */
  public synchronized List<WallFacts> walls() {
    if (walls == null) {
      List<WallFacts> all = new ArrayList<>();
      for (Wall wall : model.walls()) {
        all.add(laidOut.facts(wall, text()));
      }
      walls = List.copyOf(all);
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

  private synchronized TextFacts text() {
    if (text == null) {
      Map<String, ParsedFile> files = new HashMap<>();
      sources.forEach((name, file) -> file.ifPresent(found -> files.put(name, found)));
      text = new TextFacts(model, files);
    }
    return text;
  }

  /**
   * What is found in it and in what it uses, in the order of the text.
   *
   * @throws java.util.concurrent.CancellationException if the answer is no longer wanted; the next
   *     question computes it anew
   */
  public List<Finding> findings(Cancel cancel) {
    return applied(cancel).findings();
  }

  /** What the text itself allows of what was found, with the reasons. */
  public List<Allowances.Allowed> allowed(Cancel cancel) {
    return applied(cancel).allowed();
  }

  private synchronized Allowances.Applied applied(Cancel cancel) {
    if (applied == null) {
      List<Finding> found = checked(cancel).findings();
      List<Finding> all =
          damage.isEmpty() ? found : Stream.concat(damage.stream(), found.stream()).toList();
      Allowances.Applied left =
          Allowances.apply(all, text().files(), path, memory.checker().rules());
      applied = new Allowances.Applied(severities.apply(left.findings()), left.allowed());
    }
    return applied;
  }

  /**
   * Lets go of layouts and of all that was worked out for them, which takes most of the memory;
   * what was found stays. For files that are only asked for their findings: anything else is worked
   * out anew.
   */
  public synchronized void rest() {
    laidOut.forget();
    layouts = null;
    details = null;
    walls = null;
    foundBefore = List.of();
    checks = null;
    text = null;
    checked = null;
  }

  /** What the rules find in one of its walls, without what they find in the text. */
  public synchronized List<Finding> findingsOf(WallFacts wall, Cancel cancel) {
    checked(cancel);
    Checker.Checked found = checks.of(wall.wall(), () -> wall, cancel);
    return Checker.together(List.of(found)).findings();
  }

  /** What the rules find in the text, and damage of files, without what they find in walls. */
  public List<Finding> findingsOfText(Cancel cancel) {
    List<Finding> found = memory.checker().checkText(text(), cancel::asked).findings();
    return Stream.concat(damage.stream(), found.stream()).toList();
  }

  /** Rules that broke while checking: faults of this program, not of the text. */
  public List<Checker.Failure> failures(Cancel cancel) {
    return checked(cancel).failures();
  }

  private synchronized Checker.Checked checked(Cancel cancel) {
    if (checked == null) {
      cancel.check();
      List<Checker.Checked> parts = new ArrayList<>();
      parts.add(memory.checker().checkText(text(), cancel::asked));
      if (checks == null) {
        checks = new WallChecks(memory, model.catalog(), text(), foundBefore);
      }
      for (Wall wall : model.walls()) {
        parts.add(checks.of(wall, () -> laidOut.facts(wall, text()), cancel));
      }
      checked = Checker.together(parts);
      checks.keep(model.walls());
      foundBefore = List.of();
      laidOut.letGo();
    }
    return checked;
  }

  /**
   * What was found in walls; where, if what stands beside them is not the very same, and what to
   * make of it is for the next reading to tell.
   */
  private synchronized List<WallChecks.Known> knownFindings(Frame now) {
    List<WallChecks.Known> known = checks == null ? foundBefore : checks.known();
    return frame.equals(now) ? known : known.stream().map(WallChecks.Known::outdated).toList();
  }

  /** The parts of the texts that stand beside the walls, and the text of each wall: by identity. */
  private record Frame(List<Object> parts) {
    static Frame of(String path, Map<String, Optional<ParsedFile>> sources) {
      List<Object> parts = new ArrayList<>();
      new TreeMap<>(sources)
          .forEach(
              (name, file) -> {
                if (!name.equals(path)) {
                  parts.add(file.orElse(null));
                } else {
                  file.ifPresent(found -> beside(found, parts));
                }
              });
      return new Frame(parts);
    }

    private static void beside(ParsedFile file, List<Object> parts) {
      for (Segment segment : file.segments()) {
        boolean wall =
            segment.statements().stream().allMatch(s -> s.kind() == StatementKind.WALL_BLOCK)
                && segment.problems().isEmpty();
        // a wall whose own text changed comes out as another wall
        parts.add(wall ? StatementKind.WALL_BLOCK : segment);
      }
    }

    @Override
    public boolean equals(Object other) {
      if (!(other instanceof Frame frame) || frame.parts.size() != parts.size()) {
        return false;
      }
      for (int i = 0; i < parts.size(); i++) {
        if (parts.get(i) != frame.parts.get(i)) {
          return false;
        }
      }
      return true;
    }

    @Override
    public int hashCode() {
      return parts.size();
    }
  }

  /** Every name of the file that was found, by where it stands. */
  synchronized List<Reference> referencesAt(int segment, int offset) {
    if (index == null) {
      index = ReferenceIndex.of(model.references(), path);
    }
    return index.at(segment, offset);
  }
}
