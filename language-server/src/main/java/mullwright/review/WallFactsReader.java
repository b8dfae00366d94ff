package mullwright.review;

import java.util.Locale;
import java.util.TreeMap;
import mullwright.check.WallFacts;
import mullwright.model.Catalog;
import mullwright.model.Installation;
import mullwright.model.Remarked;
import mullwright.model.Wall;
import mullwright.syntax.Remark;

/** Reads a wall into a sheet of facts. */
public final class WallFactsReader {
  private WallFactsReader() {}

  /** The facts of a wall by itself, with those of the parts it is made of. */
  public static FactSheet read(WallFacts facts) {
    return read(facts, WallNames.of(facts.wall()));
  }

  static FactSheet read(WallFacts facts, WallNames names) {
    SheetWriter to = new SheetWriter(names);
    Wall wall = facts.wall();
    new GridFacts(wall, to).write();
    new MemberFacts(wall, to).write();
    wall(facts, to);
    new CriteriaFacts(wall.criteria(), to).write();
    new ShopFacts(wall.fabrication(), to).write();
    installation(wall, to);
    remarks(facts, to);
    Catalog catalog = facts.catalog();
    new PartFacts(catalog, to).write(to.sheet());
    return to.sheet();
  }

  private static void wall(WallFacts facts, SheetWriter to) {
    Wall wall = facts.wall();
    Subject subject = to.begin(Topic.WALL);
    to.words(subject, "name", wall.name());
    wall.system().ifPresent(system -> to.words(subject, "system", system.name()));
    new TreeMap<>(wall.finish())
        .forEach((side, word) -> to.words(subject, ("finish " + side).strip(), word.value()));
    facts
        .text()
        .model()
        .project()
        .ifPresent(
            project -> {
              to.words(subject, "project", project.name());
              to.word(subject, "revision", project.revision());
            });
  }

  private static void installation(Wall wall, SheetWriter to) {
    for (Installation.Stretch stretch : wall.installation().stretches()) {
      Subject subject =
          to.begin(
              Topic.INSTALLATION,
              Name.line(to.names().lines().get(stretch.firstLine())),
              Name.line(to.names().lines().get(stretch.lastLine())));
      to.words(subject, "by", stretch.method().name().toLowerCase(Locale.ROOT));
      to.words(subject, "start", stretch.fromRight() ? "right" : "left");
    }
  }

  /** Remarks of the wall's own text; those of the catalog are the catalog's business. */
  private static void remarks(WallFacts facts, SheetWriter to) {
    for (Remarked remark : facts.text().model().remarks()) {
      boolean own =
          remark.origin().file().equals(facts.wall().origin().file())
              && remark.origin().segment() == facts.wall().origin().segment();
      if (own && remark.kind() != Remark.Kind.NOTE) {
        to.begin(
            Topic.REMARK,
            Name.other(remark.kind().name().toLowerCase(Locale.ROOT)),
            Name.other(remark.text()));
      }
    }
  }
}
