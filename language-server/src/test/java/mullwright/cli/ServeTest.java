package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be served is said in a sentence, before anything listens. */
class ServeTest {
  @TempDir Path folder;

  private Ran refused(String... arguments) {
    Ran ran = Ran.in(folder, arguments);
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(ran.out()).isEmpty();
    return ran;
  }

  @Test
  void aFolderIsForTheBrowserOnly() {
    assertThat(refused("serve", "walls").err()).contains("A folder and --port are for --web");
    assertThat(refused("serve", "--port", "4000").err()).contains("are for --web");
  }

  @Test
  void whatIsNoFolderIsSaid() throws IOException {
    Files.writeString(folder.resolve("east.wall"), "");
    assertThat(refused("serve", "--web", "gone").err()).contains("gone is no folder");
    assertThat(refused("serve", "--web", "east.wall").err()).contains("east.wall is no folder");
  }

  @Test
  void aPortThatCannotBeIsSaid() throws IOException {
    assertThat(refused("serve", "--web", "--port", "65536").err()).contains("65536 is not between");
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
      String port = Integer.toString(taken.getLocalPort());
      assertThat(refused("serve", "--web", "--port", port).err())
          .contains("The page cannot be served");
    }
  }
}
