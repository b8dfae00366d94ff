package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mullwright.model.ModelProblem.BadUse;
import mullwright.model.ModelProblem.BadUse.Reason;
import org.junit.jupiter.api.Test;

/** Files that use files. */
class UsesTest {
  private static Seen read(Walls files) {
    return new Seen(files, files.read("walls/w.wall"));
  }

  private static String catalog(String... parts) {
    return "units inches\ncatalog {\n" + String.join("\n", parts) + "\n}\n";
  }

  @Test
  void pathsAreRelativeToTheFile() {
    Seen seen =
        read(
            new Walls()
                .with("walls/w.wall", "use \"../office/a.wall\"\nuse \"./b.wall\"")
                .with("office/a.wall", "use \"parts/c.wall\"")
                .with("office/parts/c.wall", catalog("finish bronze"))
                .with("walls/b.wall", ""));
    assertThat(seen.sound().model().uses())
        .containsExactly("office/a.wall", "office/parts/c.wall", "walls/b.wall");
    assertThat(seen.model().catalog().find(PartKind.FINISH, "bronze")).isPresent();
  }

  @Test
  void whatIsNotThere() {
    Seen seen = read(new Walls().with("walls/w.wall", "use \"none.wall\""));
    BadUse bad = seen.problem(BadUse.class);
    assertThat(bad.reason()).isEqualTo(Reason.NOT_FOUND);
    assertThat(bad.path()).isEqualTo("none.wall");
    assertThat(seen.text(bad)).isEqualTo("\"none.wall\"");
  }

  @Test
  void noAbsolutePathAndNoNetwork() {
    for (String path :
        List.of("/etc/a.wall", "C:/a.wall", "\\\\host\\a.wall", "https://a/b.wall", "~/a.wall")) {
      Seen seen = read(new Walls().with("walls/w.wall", "use \"" + path + "\""));
      assertThat(seen.problem(BadUse.class).reason()).isEqualTo(Reason.ABSOLUTE);
    }
  }

  @Test
  void nothingAboveTheRoot() {
    Seen seen = read(new Walls().with("walls/w.wall", "use \"../../a.wall\""));
    assertThat(seen.problem(BadUse.class).reason()).isEqualTo(Reason.ABOVE_ROOT);
    // up and down again inside the workspace is allowed
    read(new Walls().with("walls/w.wall", "use \"../a.wall\"").with("a.wall", "")).sound();
  }

  @Test
  void aCircleIsToldWithItsPath() {
    Seen seen =
        read(
            new Walls()
                .with("walls/w.wall", "use \"a.wall\"")
                .with("walls/a.wall", "use \"b.wall\"")
                .with("walls/b.wall", "use \"w.wall\""));
    BadUse bad = seen.problem(BadUse.class);
    assertThat(bad.reason()).isEqualTo(Reason.CIRCLE);
    assertThat(bad.chain())
        .containsExactly("walls/w.wall", "walls/a.wall", "walls/b.wall", "walls/w.wall");
    assertThat(bad.origin().file()).isEqualTo("walls/w.wall");
  }

  @Test
  void aFileThatUsesItself() {
    Seen seen = read(new Walls().with("walls/w.wall", "use \"w.wall\""));
    assertThat(seen.problem(BadUse.class).chain()).containsExactly("walls/w.wall", "walls/w.wall");
  }

  @Test
  void oneNameFromTwoCatalogsIsAnErrorAtBothUses() {
    Seen seen =
        read(
            new Walls()
                .with("walls/w.wall", "use \"a.wall\"\nuse \"b.wall\"")
                .with("walls/a.wall", catalog("finish bronze"))
                .with("walls/b.wall", catalog("finish bronze")));
    assertThat(seen.problems())
        .hasSize(2)
        .allMatch(ModelProblem.NameFromTwo.class::isInstance)
        .extracting(seen::text)
        .containsExactly("\"a.wall\"", "\"b.wall\"");
    ModelProblem.NameFromTwo first = (ModelProblem.NameFromTwo) seen.problems().get(0);
    assertThat(List.of(first.what(), first.name(), first.fileOne(), first.fileTwo()))
        .containsExactly("finish", "bronze", "walls/a.wall", "walls/b.wall");
  }

  @Test
  void namesOfDifferentKindsDoNotClash() {
    read(new Walls()
            .with("walls/w.wall", "use \"a.wall\"\nuse \"b.wall\"")
            .with("walls/a.wall", catalog("finish x"))
            .with("walls/b.wall", catalog("isolation x")))
        .sound();
  }

  @Test
  void aFileUsedByTwoIsReadOnce() {
    read(new Walls()
            .with("walls/w.wall", "use \"a.wall\"\nuse \"b.wall\"")
            .with("walls/a.wall", "use \"c.wall\"")
            .with("walls/b.wall", "use \"c.wall\"")
            .with("walls/c.wall", catalog("finish bronze")))
        .sound();
  }

  @Test
  void ownAndUsedNamesClash() {
    Seen seen =
        read(
            new Walls()
                .with("walls/w.wall", "use \"a.wall\"\n" + catalog("finish bronze"))
                .with("walls/a.wall", catalog("finish bronze")));
    assertThat(seen.problems())
        .hasSize(2)
        .extracting(seen::text)
        .containsExactly("bronze", "\"a.wall\"");
  }

  @Test
  void aPartMayComeFromAnotherFileThanTheSystem() {
    Seen seen =
        read(new Walls()
                .with("walls/w.wall", "use \"a.wall\"\nuse \"b.wall\"")
                .with("walls/a.wall", catalog("system S { mullion m }"))
                .with("walls/b.wall", catalog("profile m {\nface 2\ndepth 7\n}")))
            .sound();
    Part.WallSystem system = seen.model().catalog().find(Part.WallSystem.class, "S").orElseThrow();
    assertThat(Seen.inches(system.glassPlane().value())).isEqualTo("7");
  }

  @Test
  void unitsAreNotInherited() {
    Seen seen =
        read(
            new Walls()
                .with("walls/w.wall", "use \"a.wall\"\nwall W { grid { floor L1 at 60 } }")
                .with("walls/a.wall", "units inches"));
    seen.problem(ModelProblem.UnitMissing.class);
  }

  @Test
  void letsAreNotInherited() {
    Seen seen =
        read(
            new Walls()
                .with("walls/w.wall", "use \"a.wall\"\nwall W { grid { floor L1 at h * 1 } }")
                .with("walls/a.wall", "let h = 60\""));
    assertThat(seen.problem(ModelProblem.UnknownName.class).name()).isEqualTo("h");
  }

  @Test
  void aProjectOfAUsedFileAsksOfTheWall() {
    Seen seen =
        read(new Walls()
                .with("walls/w.wall", "use \"p.wall\"\nwall W { }")
                .with(
                    "walls/p.wall",
                    "project \"Larkhaven Ferry Terminal\" { criteria { exposure coastal } }"))
            .sound();
    assertThat(seen.wall().criteria().exposure().value()).isEqualTo("coastal");
    assertThat(seen.model().project().orElseThrow().name()).isEqualTo("Larkhaven Ferry Terminal");
  }

  @Test
  void twoUsedProjectsAreAnErrorAtBothUses() {
    Seen seen =
        read(
            new Walls()
                .with("walls/w.wall", "use \"p.wall\"\nuse \"q.wall\"")
                .with("walls/p.wall", "project \"P\" { }")
                .with("walls/q.wall", "project \"Q\" { }"));
    assertThat(seen.problems())
        .hasSize(2)
        .extracting(seen::text)
        .containsExactly("\"p.wall\"", "\"q.wall\"");
  }

  @Test
  void problemsOfAUsedFileStandInThatFile() {
    Seen seen =
        read(
            new Walls()
                .with("walls/w.wall", "use \"a.wall\"")
                .with("walls/a.wall", catalog("profile m { face 2 }")));
    ModelProblem.Missing missing = seen.problem(ModelProblem.Missing.class);
    assertThat(missing.what()).isEqualTo("its depth");
    assertThat(missing.origin().file()).isEqualTo("walls/a.wall");
  }

  @Test
  void aFileThatIsNotThereIsEmpty() {
    Model model = new Walls().read("nothing.wall");
    assertThat(model.problems()).isEmpty();
    assertThat(model.walls()).isEmpty();
  }
}
