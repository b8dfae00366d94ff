package mullwright.analysis.lite;

import java.util.Optional;
import mullwright.analysis.wall.BeamMemory;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.layout.Cell;
import mullwright.layout.LayoutBuilder;
import mullwright.layout.WallLayout;
import mullwright.model.Model;
import mullwright.model.ModelMemory;
import mullwright.model.ModelReader;
import mullwright.syntax.ParsedFile;

/** A wall of one lite, from its text: the glass is as wide and as high as the test says. */
record OneLite(Model model, WallAnalysis analysis, Cell cell) {
  /**
   * @param width of the glass, a length with its unit
   * @param height of the glass
   * @param glass lines of the glass in the catalog
   * @param criteria lines of the criteria
   */
  static OneLite of(String width, String height, String glass, String criteria) {
    String text =
        String.join(
            "\n",
            "units millimetres",
            "catalog \"One\" {",
            "  system one {",
            "    mullion bar",
            "    jamb bar",
            "    sill bar",
            "    head bar",
            "    intermediate bar",
            "    glass-plane 150",
            "  }",
            "  profile bar {",
            "    face 50",
            "    depth 150",
            "    bite 10",
            "    edge-clearance 6",
            "  }",
            "  glass G {",
            glass,
            "  }",
            "}",
            "wall One {",
            "  system one",
            "  criteria {",
            criteria,
            "  }",
            "  grid {",
            "    lines A, B at 0, " + width + " + 30",
            "    floor L1 at 0",
            "    row sill at 100",
            "    row head at 100 + " + height + " + 30",
            "  }",
            "  members {",
            "    vertical all as jamb",
            "    horizontal all",
            "  }",
            "  lites {",
            "    vision G all",
            "  }",
            "}",
            "");
    ParsedFile file = ParsedFile.parse(text);
    Model model = ModelReader.read("one.wall", name -> Optional.of(file), new ModelMemory());
    if (!model.problems().isEmpty()) {
      throw new AssertionError(model.problems().toString());
    }
    WallLayout layout = LayoutBuilder.layOut(model.walls().get(0), model.catalog());
    WallAnalysis analysis = WallAnalysis.of(layout, new BeamMemory());
    return new OneLite(model, analysis, layout.cells().get(0));
  }

  LiteBearing bearing() {
    return LiteBearing.of(analysis, cell).orElseThrow();
  }
}
