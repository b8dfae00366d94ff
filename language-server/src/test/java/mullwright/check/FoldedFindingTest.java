package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FoldedFindingTest {
  @Test
  void theShownPieceIsNotNamedAgainAmongTheOthers() throws Exception {
    Path examples = Path.of("../examples");
    String catalog =
        Files.readString(examples.resolve("catalog/captured.wall"))
            .replace("Ix 9.3545 in4", "Ix 0.9 in4");
    String lobby = Files.readString(examples.resolve("first-wall/lobby.wall"));
    List<FoldedFinding> folded =
        FoldedFinding.fold(
            new CheckedText(
                    "first-wall/lobby.wall",
                    Map.of("first-wall/lobby.wall", lobby, "catalog/captured.wall", catalog),
                    Rules.find())
                .findings());
    Finding first = folded.get(0).shown();
    Finding other = folded.get(0).others().get(0);
    assertThat(first.piece()).isEqualTo("vertical A");
    assertThat(other.piece()).isEqualTo("vertical D");
    // as where its span and the edge of a lite on it both bend too far
    assertThat(new FoldedFinding(first, List.of(first, other)).more(9))
        .isEqualTo("and 2 more: vertical D");
    assertThat(new FoldedFinding(first, List.of(first)).more(9))
        .isEqualTo("and 1 more at the same piece");
    assertThat(new FoldedFinding(first, List.of()).more(9)).isEmpty();
  }
}
