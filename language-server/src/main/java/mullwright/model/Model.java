package mullwright.model;

import java.util.List;
import java.util.Optional;

/**
 * What a file and the files it uses say.
 *
 * @param file the file the walls stand in
 * @param uses the files it uses, each once, in the order met
 * @param references every name in {@code file} and the files it uses that was found, in the order
 *     of the text
 * @param unusedNames names {@code file} defines that nothing names (lets, and parts of the file's
 *     own catalog when it holds walls)
 */
public record Model(
    String file,
    List<String> uses,
    Optional<Project> project,
    Catalog catalog,
    List<Wall> walls,
    List<Reference> references,
    List<Symbol> unusedNames,
    List<Remarked> remarks,
    List<ModelProblem> problems) {
  public Model {
    uses = List.copyOf(uses);
    walls = List.copyOf(walls);
    references = List.copyOf(references);
    unusedNames = List.copyOf(unusedNames);
    remarks = List.copyOf(remarks);
    problems = List.copyOf(problems);
  }

  /** The job. */
  public record Project(
      String name, Optional<Given<String>> revision, Criteria criteria, Origin origin) {}
}
