package mullwright.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who may ask the page's server for what; statuses by RFC 9110, section 15. */
class GateTest {
  private static final List<String> FILES =
      List.of("", "page.css", "page.js", "parts.js", "view.js", "icon.svg");

  private Preview preview;
  private PageTalk page;

  @BeforeEach
  void start() throws IOException {
    preview = Preview.start(0, Opener.NONE, new PlainTables());
    page = new PageTalk(preview.address());
  }

  @AfterEach
  void stop() {
    page.close();
    preview.close();
  }

  private String path() {
    return preview.address().substring(preview.address().indexOf('/', 8));
  }

  @Test
  void itIsBoundToLoopbackOnly() {
    assertThat(preview.bound().getAddress().isLoopbackAddress()).isTrue();
    assertThat(preview.bound().getAddress().isAnyLocalAddress()).isFalse();
    assertThat(preview.address()).startsWith("http://127.0.0.1:");
  }

  @Test
  void theTokenIsOf256BitsAndAnotherEachTime() throws IOException {
    try (Preview other = Preview.start(0, Opener.NONE, new PlainTables())) {
      assertThat(path()).matches("/[A-Za-z0-9_-]{43}/");
      assertThat(other.address().substring(other.address().indexOf('/', 8))).isNotEqualTo(path());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/", "/page.html", "/wrong/", "/wrong/events", "/wrong/open", "/%00/", "/../"})
  void withoutTheTokenThereIsNothing(String target) {
    PageTalk.Answer answer = page.ask("GET", target, Map.of("Host", page.host()));
    assertThat(answer.status()).isEqualTo(404);
    assertThat(answer.body()).isEqualTo("There is nothing here.");
  }

  @Test
  void aTokenCutShortOrMadeLongerIsNone() {
    String right = path().substring(1, path().length() - 1);
    for (String wrong :
        List.of(right.substring(1), right + "A", right.toLowerCase(java.util.Locale.ROOT))) {
      assertThat(page.ask("GET", "/" + wrong + "/", Map.of("Host", page.host())).status())
          .isEqualTo(404);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "example.invalid",
        "example.invalid:80",
        "127.0.0.1",
        "127.0.0.1:1",
        "127.0.0.1.example.invalid:80",
        "0.0.0.0"
      })
  void aForeignHostIsRefusedEvenWithTheToken(String host) {
    assertThat(page.ask("GET", path(), Map.of("Host", host)).status()).isEqualTo(403);
  }

  @ParameterizedTest
  @ValueSource(strings = {"http://example.invalid", "null", "https://127.0.0.1", "file://"})
  void aForeignOriginIsRefusedEvenWithTheToken(String origin) {
    for (String method : List.of("GET", "POST")) {
      Map<String, String> headers =
          Map.of("Host", page.host(), "Origin", origin, "Content-Length", "0");
      assertThat(page.ask(method, path(), headers).status()).isEqualTo(403);
      assertThat(page.ask(method, path() + "open?piece=cell-1", headers).status()).isEqualTo(403);
    }
  }

  @Test
  void anotherServerOfThisMachineIsAForeignOrigin() {
    Map<String, String> headers = Map.of("Host", page.host(), "Origin", "http://127.0.0.1:1");
    assertThat(page.ask("GET", path() + "events", headers).status()).isEqualTo(403);
  }

  @Test
  void whatChangesSomethingNeedsAnOrigin() {
    Map<String, String> headers = Map.of("Host", page.host(), "Content-Length", "0");
    assertThat(page.ask("POST", path() + "look?page=1", headers).status()).isEqualTo(403);
  }

  @Test
  void nothingButThePageIsServed() {
    for (String path : List.of("Gate.class", "../check/stock-exceeded.md", "page.html/", "x")) {
      assertThat(page.get(path).status()).as(path).isEqualTo(404);
    }
    assertThat(page.post("page.css").status()).isEqualTo(405);
  }

  @Test
  void everyAnswerForbidsWhatComesFromOutside() {
    for (String file : FILES) {
      PageTalk.Answer answer = page.get(file);
      assertThat(answer.status()).as(file).isEqualTo(200);
      Map<String, String> policy = policy(answer.headers().get("content-security-policy"));
      assertThat(policy).containsEntry("default-src", "'none'");
      assertThat(policy.remove("frame-ancestors").split(" "))
          .as("who may frame it")
          .allMatch(
              by -> by.matches("vscode-(file|webview):|http://(127\\.0\\.0\\.1|localhost):\\*"));
      assertThat(policy).containsEntry("base-uri", "'none'");
      policy.forEach((what, sources) -> assertThat(sources).as(what).isIn("'none'", "'self'"));
      assertThat(answer.headers())
          .containsEntry("x-content-type-options", "nosniff")
          .containsEntry("referrer-policy", "no-referrer")
          .containsEntry("cross-origin-resource-policy", "same-origin");
    }
  }

  private static Map<String, String> policy(String header) {
    Map<String, String> policy = new LinkedHashMap<>();
    for (String part : header.split(";")) {
      String[] words = part.strip().split(" ", 2);
      policy.put(words[0], words[1]);
    }
    return policy;
  }

  @Test
  void noFileOfThePageNamesAnythingOutside() throws IOException {
    Pattern address = Pattern.compile("(?:https?:)?//[A-Za-z0-9.-]+[^\\s\"'`]*");
    for (String file : List.of("page.html", "page.css", "page.js", "parts.js", "view.js")) {
      try (InputStream in = Preview.class.getResourceAsStream(file)) {
        String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        List<String> found = new ArrayList<>();
        Matcher matcher = address.matcher(text);
        while (matcher.find()) {
          found.add(matcher.group());
        }
        // the name of the language of drawings is an address nobody asks
        found.remove("http://www.w3.org/2000/svg");
        assertThat(found).as(file).isEmpty();
      }
    }
  }

  @Test
  void soManyPagesMayListenAndOneMoreIsTurnedAway() {
    Map<String, PageTalk> listening = new HashMap<>();
    try {
      for (int at = 0; at < Preview.LISTENER_LIMIT; at++) {
        PageTalk one = new PageTalk(preview.address());
        listening.put("page " + at, one);
        assertThat(one.listen()).isEqualTo(200);
      }
      assertThat(page.listen()).isEqualTo(503);
      assertThat(page.get("").status()).as("the others are served").isEqualTo(200);
    } finally {
      listening.values().forEach(PageTalk::close);
    }
  }
}
