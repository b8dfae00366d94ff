package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import mullwright.drawing.Paper;
import mullwright.drawing.Scale;
import mullwright.drawing.Sheet;
import mullwright.drawing.dxf.Dxf;
import mullwright.drawing.pdf.Pdf;
import mullwright.drawing.svg.Svg;
import mullwright.quantity.UnitSystem;
import mullwright.report.DrawingSet;
import mullwright.report.DrawingView;
import mullwright.report.DrawnWall;
import mullwright.report.Report;
import mullwright.report.WallsAtHand;
import mullwright.workspace.Cancel;
import mullwright.workspace.Snapshot;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Draws walls. */
@Command(
    name = "draw",
    description = "Drawings of walls: sheets as PDF or SVG, or whole and at full size as DXF.",
    mixinStandardHelpOptions = true)
final class DrawCommand implements Callable<Integer> {
  /** Forms drawings come in. */
  enum Output {
    PDF,
    SVG,
    DXF
  }

  private final Shell shell;

  @Mixin private Targets targets = new Targets();

  @Option(
      names = "--output",
      paramLabel = "FORM",
      description =
          "pdf (all sheets in one file), svg (one file a sheet) or dxf (one file a drawing, uncut and"
              + " at full size; --scale sizes its letters).")
  private Output output = Output.PDF;

  @Option(
      names = {"-o", "--to"},
      paramLabel = "PATH",
      description =
          "File to write, or folder where there are several; standard output if none is given and"
              + " there is only one.")
  private String to;

  @Option(
      names = "--sheet",
      paramLabel = "SIZE",
      description =
          "A4 to A0, ANSI-A to ANSI-E, ARCH-A to ARCH-E; ANSI-D for walls in inches, else A1.")
  private String sheet;

  @Option(
      names = "--scale",
      paramLabel = "SCALE",
      description =
          "Of elevations: 1:50, or 1/4\" for 1/4\" = 1'-0\"; else the largest usual one that fits a sheet, down to 1:100"
              + " or 1/8\" = 1'-0\", beyond which the wall is cut into several sheets.")
  private String scale;

  @Option(
      names = "--view",
      split = ",",
      paramLabel = "NAME",
      description =
          "Which drawings: elevation, details, pieces, order; all of them if none is named.")
  private List<String> views = new ArrayList<>();

  @Option(
      names = "--wall",
      paramLabel = "NAME",
      description = "Only the wall of that name; may be given several times.")
  private List<String> names = new ArrayList<>();

  @Option(
      names = "--without-findings",
      description = "Leave out the keynotes of what the rules found.")
  private boolean withoutFindings;

  @Option(
      names = "--uncut",
      description = "SVG of the whole drawing without a sheet, however large.")
  private boolean uncut;

  DrawCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    if (output == Output.PDF && to == null && shell.terminal()) {
      throw new CannotException("A PDF is no text for a terminal: name a file, “--to walls.pdf”.");
    }
    Opened opened = targets.open(shell);
    Opened.Readable readable = opened.readable(shell);
    List<DrawnWall> walls =
        ChosenWalls.of(
            drawn(opened, readable.paths()), names, wall -> wall.layout().wall().name(), "draw");
    DrawingSet set = new DrawingSet(walls, chosenViews(), wanted(walls));
    write(files(set, walls));
    boolean errors = walls.stream().anyMatch(wall -> wall.wall().errors() > 0);
    if (errors) {
      Say.wrong(shell, "Errors stand in these walls: what is drawn may be wrong or missing.");
    }
    return !readable.all() ? Exit.COULD_NOT : errors ? Exit.FINDINGS : Exit.CLEAN;
  }

  private List<DrawnWall> drawn(Opened opened, List<String> paths) throws CannotException {
    Snapshot snapshot = opened.workspace().snapshot();
    Ledgers ledgers = new Ledgers(shell, false);
    List<DrawnWall> drawn = new ArrayList<>();
    for (String path : paths) {
      for (Report.WallAtHand wall :
          ledgers.with(WallsAtHand.of(snapshot, List.of(path), opened::shown, Cancel.NEVER))) {
        drawn.add(DrawnWall.of(wall, snapshot, path));
      }
    }
    return drawn;
  }

  private List<DrawingView> chosenViews() throws CannotException {
    List<DrawingView> all = DrawingSet.views();
    for (String name : views) {
      if (all.stream().noneMatch(view -> view.name().equals(name))) {
        throw new CannotException(
            "There is no drawing called “"
                + name
                + "”; there are "
                + all.stream().map(DrawingView::name).collect(Collectors.joining(", "))
                + ".");
      }
    }
    return all.stream().filter(view -> views.isEmpty() || views.contains(view.name())).toList();
  }

  private DrawingView.Wanted wanted(List<DrawnWall> walls) throws CannotException {
    boolean metric = walls.stream().allMatch(wall -> wall.wall().units() == UnitSystem.SI);
    String size = sheet == null ? metric ? "A1" : "ANSI-D" : sheet;
    Paper paper =
        Paper.named(size)
            .orElseThrow(
                () ->
                    new CannotException(
                        "There is no sheet “"
                            + size
                            + "”; there are "
                            + Paper.ALL.stream().map(Paper::name).collect(Collectors.joining(", "))
                            + "."));
    Optional<Scale> chosen = Optional.empty();
    if (scale != null) {
      chosen =
          Optional.of(
              Scale.read(scale)
                  .orElseThrow(
                      () ->
                          new CannotException(
                              "“"
                                  + scale
                                  + "” is no scale from 1:1 to 1:5000: write 1:50, or 1/4\" for 1/4\""
                                  + " = 1'-0\".")));
    }
    return new DrawingView.Wanted(paper, chosen, !withoutFindings);
  }

  private Map<String, byte[]> files(DrawingSet set, List<DrawnWall> walls) throws CannotException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    switch (output) {
      case PDF -> files.put("walls.pdf", pdf(set.sheets(), walls));
      case DXF -> {
        for (DrawingSet.Uncut drawing : set.uncut()) {
          String text = Dxf.of(drawing.drawing(), drawing.wall().wall().units());
          put(files, drawing.name() + ".dxf", text);
        }
      }
      case SVG -> {
        if (uncut) {
          set.uncut().forEach(one -> put(files, one.name() + ".svg", Svg.file(one.drawing())));
        } else {
          for (Sheet one : set.sheets()) {
            put(files, String.format("sheet-%02d.svg", one.number()), Svg.file(one));
          }
        }
      }
    }
    return files;
  }

  // two walls of one name in two files: the second gets a number
  private static void put(Map<String, byte[]> files, String name, String text) {
    String free = name;
    for (int i = 2; files.containsKey(free); i++) {
      int dot = name.lastIndexOf('.');
      free = name.substring(0, dot) + "-" + i + name.substring(dot);
    }
    files.put(free, text.getBytes(StandardCharsets.UTF_8));
  }

  private static byte[] pdf(List<Sheet> sheets, List<DrawnWall> walls) throws CannotException {
    String title =
        walls.stream()
            .map(wall -> wall.layout().wall().name())
            .distinct()
            .collect(Collectors.joining(", "));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      Pdf.write(title, sheets, bytes);
    } catch (IOException failed) {
      throw new CannotException("The PDF cannot be written: " + failed.getMessage() + ".");
    }
    return bytes.toByteArray();
  }

  private void write(Map<String, byte[]> files) throws CannotException {
    if (to == null) {
      if (files.size() > 1) {
        throw new CannotException(
            "These are " + files.size() + " files: name a folder for them, “--to FOLDER”.");
      }
      files.values().forEach(bytes -> shell.out().write(bytes, 0, bytes.length));
      return;
    }
    Path target = WallFinder.path(shell.directory(), to);
    try {
      if (files.size() == 1 && !Files.isDirectory(target)) {
        Files.write(target, files.values().iterator().next());
        return;
      }
      Files.createDirectories(target);
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Files.write(target.resolve(file.getKey()), file.getValue());
      }
    } catch (IOException failed) {
      throw new CannotException(
          "“"
              + to
              + "” cannot be written: "
              + failed.getClass().getSimpleName()
              + ", "
              + failed.getMessage()
              + ".");
    }
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new DrawCommand(shell);
    }
  }
}
