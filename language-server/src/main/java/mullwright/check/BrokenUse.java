package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.model.ModelProblem;

/** A file that is used but cannot be: missing, in a circle, above the workspace, or no text. */
@AutoService(Rule.class)
public final class BrokenUse implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.BadUse use) {
        found.at(use.origin()).text().what(what(use)).mend(mend(use));
      }
    }
  }

  private static String what(ModelProblem.BadUse use) {
    return switch (use.reason()) {
      case NOT_FOUND -> "There is no file " + Words.quoted(use.path()) + ", seen from this one.";
      case NO_PLACE ->
          "This text is in no file yet, so that "
              + Words.quoted(use.path())
              + " leads nowhere from here.";
      case CIRCLE -> "Files use one another in a circle: " + String.join(" → ", use.chain()) + ".";
      case ABSOLUTE -> Words.quoted(use.path()) + " is not a relative path.";
      case ABOVE_ROOT -> Words.quoted(use.path()) + " leads above the workspace.";
      case NOT_TEXT -> Words.quoted(use.path()) + " is not wall text.";
    };
  }

  private static String mend(ModelProblem.BadUse use) {
    return switch (use.reason()) {
      case NOT_FOUND ->
          "Mend the path: it starts in this file's own folder, with / between folders.";
      case NO_PLACE -> "Save it first: the path starts in the folder it is saved in.";
      case CIRCLE -> "Take one use of the circle out.";
      case ABSOLUTE -> "Write the path from this file's own folder.";
      case ABOVE_ROOT ->
          "Open the folder that holds both files, or move the used file into it. An editor that opens"
              + " single files takes the nearest folder above with a .git or an empty .mullwright.";
      case NOT_TEXT -> "Use a file that ends in .wall.";
    };
  }
}
