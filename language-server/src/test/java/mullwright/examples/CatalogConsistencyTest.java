package mullwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import mullwright.check.Rules;
import mullwright.model.Given;
import mullwright.model.Outline;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.Quantity;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Snapshot;
import mullwright.workspace.Workspace;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the example catalogs state of a profile follows from its outline: area, second moments and
 * section moduli by adding rectangles about the common centroid (textbook, parallel-axis theorem),
 * mass by 2700 kg/m³ of aluminium (EN 1999-1-1, from memory).
 */
class CatalogConsistencyTest {
  private static final Path EXAMPLES = Path.of("").toAbsolutePath().getParent().resolve("examples");

  /** Stated values are rounded to about four figures. */
  private static final double RELATIVE = 5e-4;

  /** Area and second moments of an outline, in metres. */
  private record Section(
      double area, double ix, double iy, double outer, double inner, double side) {
    static Section of(Outline outline) {
      double area = sum(outline, r -> 1);
      double z = sum(outline, Section::middleZ) / area;
      double x = sum(outline, Section::middleX) / area;
      double ix = sum(outline, r -> depth(r) * depth(r) / 12 + square(middleZ(r) - z));
      double iy = sum(outline, r -> width(r) * width(r) / 12 + square(middleX(r) - x));
      double front = extreme(outline, r -> r.z().toMetres() + depth(r) - z);
      double back = extreme(outline, r -> z - r.z().toMetres());
      double side =
          Math.max(
              extreme(outline, r -> r.x().toMetres() + width(r) - x),
              extreme(outline, r -> x - r.x().toMetres()));
      return new Section(area, ix, iy, front, back, side);
    }

    private static double sum(Outline outline, ToDoubleFunction<Outline.Rectangle> each) {
      return outline.rectangles().stream()
          .mapToDouble(r -> (r.hole() ? -1 : 1) * width(r) * depth(r) * each.applyAsDouble(r))
          .sum();
    }

    private static double extreme(Outline outline, ToDoubleFunction<Outline.Rectangle> each) {
      return outline.rectangles().stream()
          .filter(r -> !r.hole())
          .mapToDouble(each)
          .max()
          .orElseThrow();
    }

    private static double width(Outline.Rectangle r) {
      return r.width().toMetres();
    }

    private static double depth(Outline.Rectangle r) {
      return r.depth().toMetres();
    }

    private static double middleX(Outline.Rectangle r) {
      return r.x().toMetres() + width(r) / 2;
    }

    private static double middleZ(Outline.Rectangle r) {
      return r.z().toMetres() + depth(r) / 2;
    }

    private static double square(double value) {
      return value * value;
    }
  }

  @TestFactory
  Stream<DynamicTest> statedPropertiesFollowFromTheOutline() {
    Snapshot snapshot = new Workspace(new DiskFiles(EXAMPLES), Rules.find()).snapshot();
    return snapshot.walls().stream()
        .filter(path -> path.startsWith("catalog/"))
        .flatMap(
            path ->
                snapshot
                    .reading(path)
                    .orElseThrow()
                    .model()
                    .catalog()
                    .all(PartKind.PROFILE)
                    .stream())
        .map(Part.Profile.class::cast)
        .map(profile -> DynamicTest.dynamicTest(profile.name(), () -> hold(profile)));
  }

  private static void hold(Part.Profile profile) {
    Section section = Section.of(profile.outline().orElseThrow().value());
    agree("area", profile.area(), section.area());
    agree("Ix", profile.ix(), section.ix());
    agree("Iy", profile.iy(), section.iy());
    agree("Sx outside", profile.sxOutside(), section.ix() / section.outer());
    agree("Sx inside", profile.sxInside(), section.ix() / section.inner());
    agree("Sy", profile.sy(), section.iy() / section.side());
    agree("mass", profile.massPerLength(), section.area() * 2700);
  }

  private static void agree(String what, Optional<Given<Quantity>> stated, double computed) {
    assertThat(stated).as(what).isPresent();
    double value = stated.get().value().toSi();
    assertThat(value).as(what).isCloseTo(computed, within(RELATIVE * computed));
  }

  /** The adding-up itself, held against closed forms: solid and hollow rectangles. */
  @ParameterizedTest
  @CsvSource({
    // solid b × d: b·d³/12 (textbook)
    "60, 150, 0, 16875000",
    // hollow: (b·d³ − (b−2t)(d−2t)³)/12 (textbook)
    "60, 150, 3, 3438072",
  })
  void addsRectanglesAsTheTextbookDoes(double width, double depth, double wall, double ix) {
    var outer = rectangle(-width / 2, 0, width, depth, false);
    var inner = rectangle(-width / 2 + wall, wall, width - 2 * wall, depth - 2 * wall, true);
    Outline outline =
        new Outline(wall == 0 ? java.util.List.of(outer) : java.util.List.of(outer, inner));
    assertThat(Section.of(outline).ix() * 1e12).isCloseTo(ix, within(1.0));
  }

  private static Outline.Rectangle rectangle(
      double x, double z, double width, double depth, boolean hole) {
    return new Outline.Rectangle(mm(x), mm(z), mm(width), mm(depth), hole);
  }

  private static mullwright.quantity.Length mm(double value) {
    return mullwright.quantity.Length.nearest(value / 1000);
  }
}
