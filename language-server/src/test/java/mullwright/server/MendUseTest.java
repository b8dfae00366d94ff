package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.eclipse.lsp4j.CodeAction;
import org.junit.jupiter.api.Test;

/** A file that is used and is not where the text says is offered from where it is. */
class MendUseTest extends ProtocolTalk {
  private static final String WALL = WallTalk.WALL.text();

  @Test
  void theFilesOfThatNameAreOfferedAndTheFindingGoes() {
    String wrong = WALL.replace("../catalog/small.wall", "small.wall");
    String address = open("walls/east.wall", wrong);
    assertThat(rules(address)).contains("broken-use");
    CodeAction mend = titled(actions(address, wrong, "\"small"), "Write \"../catalog/small.wall\"");
    assertThat(mend.getKind()).isEqualTo("quickfix");
    assertThat(after(picked(mend), address, wrong)).isEqualTo(WALL);
    talk.replace(address, WALL);
    assertThat(rules(address)).doesNotContain("broken-use");
  }

  @Test
  void noMoreThanThreeAreOfferedNorTheFileItself() {
    for (String place : List.of("a", "b", "c", "d")) {
      Conversation.write(folder, place + "/east.wall", "wall " + place + " {\n}\n");
    }
    String text = "use \"north/east.wall\"\nwall East {\n}\n";
    String address = open("east.wall", text);
    List<String> offered =
        titles(actions(address, text, "north")).stream()
            .filter(title -> title.startsWith("Write"))
            .toList();
    assertThat(offered)
        .containsExactly("Write \"a/east.wall\"", "Write \"b/east.wall\"", "Write \"c/east.wall\"");
  }

  /** One letter off, without its ending, and the file of that very name before those near it. */
  @Test
  void filesOfANearNameAreOfferedToo() {
    for (String wrong : List.of("../catalog/smal.wall", "../catalog/Small.wall", "small")) {
      String text = WALL.replace("../catalog/small.wall", wrong);
      String address = open("walls/" + wrong.replaceAll("\\W", "_") + ".wall", text);
      assertThat(rules(address)).as(wrong).contains("broken-use");
      CodeAction mend = titled(actions(address, text, "\"" + wrong), "Write \"../catalog/small");
      assertThat(after(picked(mend), address, text)).as(wrong).isEqualTo(WALL);
    }
    Conversation.write(folder, "a/smell.wall", "wall A {\n}\n");
    Conversation.write(folder, "b/smell.wall", "wall B {\n}\n");
    String text = WALL.replace("../catalog/small.wall", "smell.wall");
    String address = open("walls/east.wall", text);
    List<String> offered =
        titles(actions(address, text, "\"smell")).stream()
            .filter(title -> title.startsWith("Write"))
            .toList();
    assertThat(offered)
        .containsExactly(
            "Write \"../a/smell.wall\"",
            "Write \"../b/smell.wall\"",
            "Write \"../catalog/small.wall\"");
  }

  @Test
  void aFileThatIsThereAndMayNotBeUsedIsNotOfferedForItself() {
    Conversation.write(folder, "a.wall", "use \"b.wall\"\nwall A {\n}\n");
    String text = "use \"a.wall\"\nwall B {\n}\n";
    String address = open("b.wall", text);
    assertThat(rules(address)).contains("broken-use");
    assertThat(titles(actions(address, text, "a.wall"))).noneMatch(it -> it.startsWith("Write"));
  }

  @Test
  void nothingIsOfferedWhereThereIsNoSuchFile() {
    String text = "use \"nowhere.wall\"\nwall East {\n}\n";
    String address = open("walls/east.wall", text);
    assertThat(rules(address)).contains("broken-use");
    assertThat(titles(actions(address, text, "nowhere"))).noneMatch(it -> it.startsWith("Write"));
  }

  private List<String> rules(String address) {
    return talk.heard.next(address).getDiagnostics().stream()
        .map(it -> it.getCode().getLeft())
        .toList();
  }
}
