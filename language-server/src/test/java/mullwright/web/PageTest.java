package mullwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The parts of the page: all there, and none from elsewhere. */
class PageTest {
  private static final Pattern NAMED =
      Pattern.compile(
          "(?:from \"\\./|src=\"|href=\"|new URL\\(\")([A-Za-z][A-Za-z./-]*\\.[a-z]+)\"");
  private static final Pattern ADDRESS = Pattern.compile("(?:https?|wss?):?//[^\\s\"'`]*");

  @TempDir Path folder;

  private static Set<Path> parts() throws IOException, URISyntaxException {
    Path all = Path.of(Site.class.getResource("page.html").toURI()).getParent();
    try (Stream<Path> files = Files.list(all)) {
      return new TreeSet<>(files.filter(file -> !file.toString().endsWith(".class")).toList());
    }
  }

  @Test
  void everyPartThatIsNamedIsGivenOut() throws Exception {
    try (WebDoor door = WebDoor.open(folder, 0)) {
      Set<String> named = new TreeSet<>(Set.of("page.html", "vs/editor/editor.main.js"));
      named.add("vs/editor/editor.main.css");
      named.add("vs/base/browser/ui/codicons/codicon/codicon.ttf");
      for (Path part : parts()) {
        Matcher matcher = NAMED.matcher(Files.readString(part));
        while (matcher.find()) {
          named.add(matcher.group(1));
        }
      }
      assertThat(named).contains("main.js", "wire.js", "vs/loader.js", "icon.svg");
      for (String name : named) {
        assertThat(Asked.of(door.address(), "GET", name).answer().status()).as(name).isEqualTo(200);
      }
      Set<String> there = new TreeSet<>();
      parts().forEach(part -> there.add(part.getFileName().toString()));
      assertThat(named).as("every part is used").containsAll(there);
    }
  }

  @Test
  void noPartNamesAnotherMachine() throws Exception {
    for (Path part : parts()) {
      Matcher matcher = ADDRESS.matcher(Files.readString(part));
      while (matcher.find()) {
        // the name of the language SVG is written in, which nobody fetches
        assertThat(matcher.group()).as(part.toString()).isEqualTo("http://www.w3.org/2000/svg");
      }
    }
  }

  @Test
  void theEditorsLicenceShipsAlong() throws Exception {
    String beside = Site.MONACO.replaceAll("min/$", "");
    for (String notice : Set.of("LICENSE", "ThirdPartyNotices.txt")) {
      try (InputStream in = Site.class.getResourceAsStream(beside + notice)) {
        assertThat(in).as(notice).isNotNull();
        assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
            .containsIgnoringCase("MIT");
      }
    }
  }
}
