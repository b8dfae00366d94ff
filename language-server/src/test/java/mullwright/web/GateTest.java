package mullwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.ConnectException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Who is let in: only who has the token, names this host, and comes from the page itself. Statuses
 * by RFC 9110, section 15.
 */
class GateTest {
  private static final String WALL = "wall East {\n}\n";

  @TempDir Path folder;
  private WebDoor door;

  @BeforeEach
  void open() throws IOException {
    Files.writeString(folder.resolve("east.wall"), WALL);
    door = WebDoor.open(folder, 0);
  }

  @AfterEach
  void close() {
    door.close();
  }

  private Asked page(String method, String below) {
    return Asked.of(door.address(), method, below);
  }

  private Asked talk() {
    return Asked.of(door.talkAddress(), "GET", "")
        .with("Origin", door.address().replaceAll("/[^/]+/$", ""))
        .upgrade();
  }

  @Test
  void thePageItselfIsLetIn() throws IOException {
    assertThat(page("GET", "").answer().status()).isEqualTo(200);
    assertThat(page("GET", "file?path=east.wall").answer().body()).contains("wall East");
    assertThat(talk().answer().status()).isEqualTo(101);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "/", "/page.html", "/wrong/", "/wrong/files", "/wrong/file?path=east.wall"})
  void aWrongTokenOpensNothing(String path) throws IOException {
    Asked.Answer answer = page("GET", "").path(path.isEmpty() ? "/" : path).answer();
    assertThat(answer.status()).isEqualTo(403);
    assertThat(answer.body()).contains("token").doesNotContain("wall East");
  }

  @Test
  void aTokenOneLetterOffOpensNothing() throws IOException {
    String path = URI.create(door.address()).getRawPath();
    char first = path.charAt(1) == 'A' ? 'B' : 'A';
    String off = "/" + first + path.substring(2);
    assertThat(page("GET", "").path(off + "files").answer().status()).isEqualTo(403);
    assertThat(page("GET", "").path(path.substring(0, 12) + "/files").answer().status())
        .isEqualTo(403);
    assertThat(talk().path(off).answer().status()).isNotEqualTo(101);
    assertThat(talk().path("/").answer().status()).isNotEqualTo(101);
  }

  @Test
  void tokensAreLongAndNeverTheSame() throws IOException {
    try (WebDoor other = WebDoor.open(folder, 0)) {
      String token = URI.create(door.address()).getPath().replace("/", "");
      assertThat(token).hasSize(43); // 256 bits in base 64
      assertThat(other.address()).doesNotContain(token);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"attacker.test", "attacker.test:80", "127.0.0.1", "localhost", "0.0.0.0:1"})
  void aNameMadeToPointHereIsRefused(String host) throws IOException {
    assertThat(page("GET", "").with("Host", host).answer().status()).isEqualTo(403);
    assertThat(page("GET", "file?path=east.wall").with("Host", host).answer().body())
        .doesNotContain("wall East");
    assertThat(talk().with("Host", host).answer().status()).isNotEqualTo(101);
  }

  @ParameterizedTest
  @ValueSource(strings = {"http://attacker.test", "null", "https://127.0.0.1", "file://"})
  void anotherPageInTheBrowserIsRefused(String origin) throws IOException {
    assertThat(page("GET", "file?path=east.wall").with("Origin", origin).answer().status())
        .isEqualTo(403);
    assertThat(
            page("PUT", "file?path=new.wall").with("Origin", origin).body(WALL).answer().status())
        .isEqualTo(403);
    assertThat(folder.resolve("new.wall")).doesNotExist();
    assertThat(talk().with("Origin", origin).answer().status()).isNotEqualTo(101);
  }

  @Test
  void whoChangesSomethingMustSayWhereItComesFrom() throws IOException {
    assertThat(page("PUT", "file?path=new.wall").without("Origin").body(WALL).answer().status())
        .isEqualTo(403);
    assertThat(talk().without("Origin").answer().status()).isNotEqualTo(101);
  }

  @Test
  void anotherPortOfThisMachineIsAnotherPage() throws IOException {
    assertThat(talk().with("Origin", "http://127.0.0.1:1").answer().status()).isNotEqualTo(101);
    assertThat(page("GET", "files").with("Origin", "http://127.0.0.1:1").answer().status())
        .isEqualTo(403);
  }

  @Test
  void onlyLoopbackIsListenedOn() throws IOException {
    List<InetAddress> outward =
        NetworkInterface.networkInterfaces()
            .flatMap(NetworkInterface::inetAddresses)
            .filter(address -> address instanceof Inet4Address && !address.isLoopbackAddress())
            .toList();
    for (InetAddress address : outward) {
      for (String port : List.of(door.address(), door.talkAddress())) {
        assertThat(reaches(address, URI.create(port).getPort())).isFalse();
      }
    }
    assertThat(door.address()).startsWith("http://127.0.0.1:");
    assertThat(door.talkAddress()).startsWith("ws://127.0.0.1:");
  }

  private static boolean reaches(InetAddress address, int port) throws IOException {
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(address, port), 2000);
      return true;
    } catch (ConnectException refused) {
      return false;
    }
  }

  @Test
  void everyAnswerForbidsWhatThePageDoesNotNeed() throws IOException {
    for (Asked asked :
        List.of(page("GET", ""), page("GET", "files"), page("GET", "").path("/wrong/"))) {
      assertThat(asked.answer().head().toLowerCase(java.util.Locale.ROOT))
          .contains("default-src 'none'", "frame-ancestors 'none'", "script-src 'self';")
          .contains("x-content-type-options: nosniff", "referrer-policy: no-referrer")
          .doesNotContain("access-control-allow");
    }
  }

  @Test
  void nothingIsThereButThePageAndItsParts() throws IOException {
    for (String below :
        List.of(
            "nothing.js",
            "../web/page.html",
            "vs/../../../../../LICENSE",
            "vs/loader.js.map",
            "Gate.class",
            "vs/%2e%2e/loader.js",
            "file")) {
      assertThat(page("GET", below).answer().status()).as(below).isIn(403, 404);
    }
    assertThat(page("DELETE", "file?path=east.wall").answer().status()).isEqualTo(405);
    assertThat(folder.resolve("east.wall")).exists();
  }
}
