package mullwright.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import mullwright.analysis.wall.BeamMemory;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.layout.LayoutBuilder;
import mullwright.layout.WallLayout;
import mullwright.model.Model;
import mullwright.model.ModelMemory;
import mullwright.model.ModelReader;
import mullwright.model.Origin;
import mullwright.model.Wall;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.TextRange;

/** Texts in memory, read, laid out and checked, all the way from the text to the findings. */
final class CheckedText {
  private final Map<String, ParsedFile> files = new TreeMap<>();
  private final TextFacts text;
  private final List<WallFacts> walls = new ArrayList<>();
  private final Checker.Checked checked;

  /**
   * Checks a file.
   *
   * @param path of the file under check
   * @param texts of it and of the files it uses, by workspace path
   */
  CheckedText(String path, Map<String, String> texts, Rules rules) {
    texts.forEach((name, content) -> files.put(name, ParsedFile.parse(content)));
    Model model =
        ModelReader.read(
            path, name -> java.util.Optional.ofNullable(files.get(name)), new ModelMemory());
    text = new TextFacts(model, files);
    BeamMemory beams = new BeamMemory();
    for (Wall wall : model.walls()) {
      WallLayout layout = LayoutBuilder.layOut(wall, model.catalog());
      walls.add(new WallFacts(text, layout, WallAnalysis.of(layout, beams)));
    }
    checked = new Checker(rules).check(text, walls, () -> false);
  }

  List<Finding> findings() {
    return checked.findings();
  }

  /** Rules that broke; a test fails if there is one. */
  List<Checker.Failure> failures() {
    return checked.failures();
  }

  List<WallFacts> walls() {
    return walls;
  }

  /** Where an origin stands in its file. */
  TextRange place(Origin origin) {
    return files.get(origin.file()).absolute(origin.segment(), origin.range());
  }

  /** The texts after a fix. */
  Map<String, String> after(Fix fix) {
    Map<String, String> texts = new HashMap<>();
    files.forEach((name, file) -> texts.put(name, file.text()));
    List<Fix.Edit> edits = new ArrayList<>(fix.edits());
    edits.sort((a, b) -> place(b.origin()).start() - place(a.origin()).start());
    for (Fix.Edit edit : edits) {
      TextRange range = place(edit.origin());
      texts.computeIfPresent(
          edit.origin().file(),
          (name, old) ->
              old.substring(0, range.start()) + edit.text() + old.substring(range.end()));
    }
    return texts;
  }
}
