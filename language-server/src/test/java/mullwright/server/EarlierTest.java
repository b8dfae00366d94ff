package mullwright.server;

import static java.util.concurrent.TimeUnit.MILLISECONDS;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.Gson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import mullwright.check.Rules;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What an earlier server found is shown before a wall is read, and only where it still holds. */
class EarlierTest {
  private static final Gson GSON = new MessageJsonHandler(Map.of()).getGson();

  /** Found in it: a line twice, with the place of the first; a name nobody uses; a name unknown. */
  private static final String WALL =
      WallTalk.WALL
          .text()
          .replace(
              "use \"../catalog/small.wall\"",
              "use \"../catalog/small.wall\"\nuse \"gone.wall\"\nlet bay = 5'-0\"")
          .replace("    floor L1", "    /* ö🙂 */ line B at 7'\n    floor L1")
          .replace("row   rail  at", "row   nobody at 2'-0\" above L1\n    row   rail  at");

  /** Something is wrong in what it uses, too. */
  private static final String CATALOG =
      SmallCatalog.TEXT.replace("6063-T6", "6063-T6\n    tint grey");

  @TempDir Path walls;
  @TempDir Path kept;

  private EarlierTalks talks;
  private String east;
  private String catalog;

  @BeforeEach
  void write() {
    Conversation.write(walls, SmallCatalog.PATH, CATALOG);
    talks = new EarlierTalks(walls, kept);
    east = Conversation.address(walls.resolve("walls/east.wall"));
    catalog = Conversation.address(walls.resolve(SmallCatalog.PATH));
  }

  private static ClientCapabilities client(String json) {
    return GSON.fromJson(json, ClientCapabilities.class);
  }

  private static ClientCapabilities able() {
    return client(
        """
        {"textDocument": {"publishDiagnostics": {"relatedInformation": true, "dataSupport": true}}}
        """);
  }

  /** A server checks the wall and goes. */
  private Map<String, List<Diagnostic>> checked(ClientCapabilities client) {
    try (Conversation first = talks.begin(client)) {
      first.open(east, WALL);
      return EarlierTalks.shown(first);
    }
  }

  private Map<String, List<Diagnostic>> cold(ClientCapabilities client, String text) {
    try (Conversation cold = talks.cold(client)) {
      cold.open(east, text);
      return EarlierTalks.shown(cold);
    }
  }

  @Test
  void theSameTextsFindingsAreThereBeforeItIsCheckedAndAreSaidOnce() {
    Map<String, List<Diagnostic>> cold = cold(able(), WALL);
    assertThat(cold).containsOnlyKeys(east, catalog);
    assertThat(cold.get(east))
        .extracting(it -> it.getCode().getLeft())
        .contains("duplicate", "unused", "broken-use");
    assertThat(checked(able())).isEqualTo(cold);
    HeldRules rules = new HeldRules();
    try (Conversation second = talks.held(able(), rules)) {
      second.open(east, WALL);
      PublishDiagnosticsParams early = second.heard.next(east);
      assertThat(early.getDiagnostics()).isEqualTo(cold.get(east));
      assertThat(early.getVersion()).isEqualTo(1);
      PublishDiagnosticsParams beside = second.heard.next(catalog);
      assertThat(beside.getDiagnostics()).isEqualTo(cold.get(catalog));
      assertThat(beside.getVersion()).isNull();
      rules.letGo();
      EarlierTalks.settle(second);
      assertThat(second.heard.diagnostics).isEmpty();
      int version = second.replace(east, WALL.replace("nobody", "rail"));
      assertThat(second.heard.of(east, version).getDiagnostics())
          .isEqualTo(cold(able(), WALL.replace("nobody", "rail")).get(east));
      assertThat(second.heard.logged).isEmpty();
    }
  }

  @Test
  void noFindingsAreShownEarlyToo() {
    String clean = "project \"Larkhaven Annexe\" {\n  units inches\n}\n";
    for (int time = 0; time < 2; time++) {
      HeldRules rules = new HeldRules();
      try (Conversation talk = talks.held(able(), rules)) {
        talk.open(east, clean);
        EarlierTalks.hearAll(talk, rules);
        assertThat(EarlierTalks.said(talk, east)).hasSize(time);
        rules.letGo();
        EarlierTalks.settle(talk);
        assertThat(EarlierTalks.said(talk, east)).hasSize(1 - time);
      }
    }
  }

  /** One thing that findings hang on. */
  enum Other {
    TEXT {
      @Override
      String text() {
        return WALL + "\n";
      }
    },
    TEXT_OF_WHAT_IS_USED {
      @Override
      void prepare(EarlierTest test) {
        Conversation.write(test.walls, SmallCatalog.PATH, CATALOG + "\n");
      }
    },
    USED_FILE_APPEARS {
      @Override
      void prepare(EarlierTest test) {
        Conversation.write(test.walls, "walls/gone.wall", "");
      }
    },
    USED_FILE_VANISHES {
      @Override
      void prepare(EarlierTest test) throws IOException {
        Files.delete(test.walls.resolve(SmallCatalog.PATH));
      }
    },
    USED_FILE_IS_DAMAGED {
      @Override
      void prepare(EarlierTest test) throws IOException {
        Path file = test.walls.resolve(SmallCatalog.PATH);
        byte[] bytes = CATALOG.getBytes(StandardCharsets.UTF_8);
        bytes[bytes.length - 1] = (byte) 0xff;
        Files.write(file, bytes);
      }
    },
    SETTINGS_OF_THE_PROJECT {
      @Override
      void prepare(EarlierTest test) {
        Conversation.write(test.walls, "mullwright.properties", "severity.unused = off\n");
      }
    },
    PLACES_THAT_HAVE_A_PART {
      @Override
      ClientCapabilities client() {
        return EarlierTest.client(
            "{'textDocument': {'publishDiagnostics': {'dataSupport': true}}}");
      }
    },
    NUMBER_OF_MENDS {
      @Override
      ClientCapabilities client() {
        return EarlierTest.client(
            "{'textDocument': {'publishDiagnostics': {'relatedInformation': true}}}");
      }
    },
    ENCODING {
      @Override
      ClientCapabilities client() {
        ClientCapabilities client = able();
        client.setGeneral(
            EarlierTest.client("{'general': {'positionEncodings': ['utf-8']}}").getGeneral());
        return client;
      }
    },
    PROGRAM {
      @Override
      String build() {
        return "another build";
      }
    },
    DAMAGE {
      @Override
      void prepare(EarlierTest test) throws IOException {
        try (Stream<Path> files = Files.list(test.kept)) {
          for (Path file : files.toList()) {
            byte[] bytes = Files.readAllBytes(file);
            bytes[bytes.length / 2]++;
            Files.write(file, bytes);
          }
        }
      }
    };

    void prepare(EarlierTest test) throws IOException {}

    String text() {
      return WALL;
    }

    ClientCapabilities client() {
      return able();
    }

    String build() {
      return "this build";
    }
  }

  @ParameterizedTest
  @EnumSource
  void whereAnythingIsOtherwiseNothingIsShownEarly(Other other) throws IOException {
    checked(able());
    other.prepare(this);
    HeldRules rules = new HeldRules();
    try (Conversation second = talks.held(other.client(), rules, other.build())) {
      second.open(east, other.text());
      EarlierTalks.hearAll(second, rules);
      assertThat(second.heard.diagnostics).isEmpty();
      rules.letGo();
      assertThat(EarlierTalks.shown(second)).isEqualTo(cold(other.client(), other.text()));
      assertThat(second.heard.logged).isEmpty();
    }
    // and what is found now is what the next one shows
    HeldRules again = new HeldRules();
    try (Conversation third = talks.held(other.client(), again, other.build())) {
      third.open(east, other.text());
      EarlierTalks.hearAll(third, again);
      assertThat(EarlierTalks.said(third, east)).hasSize(1);
      again.letGo();
    }
  }

  @Test
  void aTextThatIsOpenCountsBeforeWhatIsSaved() {
    List<Diagnostic> kept = checked(able()).get(east);
    String edited = CATALOG.replace("anchor angle-s", "anchor angle-t");
    List<Diagnostic> now;
    try (Conversation cold = talks.cold(able())) {
      cold.open(catalog, edited);
      cold.open(east, WALL);
      now = EarlierTalks.shown(cold).get(east);
    }
    assertThat(now).isNotEqualTo(kept);
    try (Conversation second = talks.begin(able())) {
      second.open(catalog, edited);
      EarlierTalks.settle(second);
      second.open(east, WALL);
      EarlierTalks.settle(second);
      // what was shown early would have been mended by another
      assertThat(EarlierTalks.said(second, east))
          .singleElement()
          .satisfies(it -> assertThat(it.getDiagnostics()).isEqualTo(now));
    }
  }

  /** The opened catalog is as it was saved, but its address is spelled in another way. */
  @Test
  void whatIsOpenUnderAnotherSpellingIsNotWhatWasShown() {
    checked(able());
    String spelled = catalog.replace("small.wall", "%73mall.wall");
    try (Conversation second = talks.begin(able())) {
      second.open(spelled, CATALOG);
      second.open(east, WALL);
      assertThat(EarlierTalks.shown(second)).containsKey(east).containsKey(spelled);
      assertThat(EarlierTalks.shown(second)).doesNotContainKey(catalog);
    }
  }

  @Test
  void whatIsKeptOfAWallSaysNothingNewOfACatalogThatIsOpen() {
    checked(able());
    try (Conversation second = talks.begin(able())) {
      second.open(catalog, CATALOG);
      EarlierTalks.settle(second);
      assertThat(EarlierTalks.said(second, catalog)).hasSize(1);
      second.open(east, WALL);
      EarlierTalks.settle(second);
      assertThat(EarlierTalks.said(second, east)).hasSize(1);
      assertThat(EarlierTalks.said(second, catalog)).isEmpty();
    }
  }

  @Test
  void nothingIsShownEarlyOfATextThatIsTypedInAlready() {
    checked(able());
    HeldRules rules = new HeldRules();
    try (Conversation second = talks.held(able(), rules)) {
      String other = Conversation.address(walls.resolve("walls/other.wall"));
      second.open(other, "wall Other {\n}\n");
      rules.awaitWorker();
      second.open(east, WALL);
      String typed = WALL.replace("nobody", "somebody");
      int version = second.replace(east, typed);
      // the reader has both before the worker goes on
      EarlierTalks.hearAll(second, rules);
      rules.letGo();
      EarlierTalks.settle(second);
      assertThat(EarlierTalks.said(second, east))
          .singleElement()
          .satisfies(
              it -> {
                assertThat(it.getVersion()).isEqualTo(version);
                assertThat(it.getDiagnostics()).isEqualTo(cold(able(), typed).get(east));
              });
    }
  }

  @Test
  void aBurstOfOpenedWallsIsShownWholeAndFirst() {
    String west = Conversation.address(walls.resolve("walls/west.wall"));
    try (Conversation first = talks.begin(able())) {
      first.open(east, WALL);
      first.open(west, WALL);
      EarlierTalks.settle(first);
    }
    HeldRules rules = new HeldRules();
    try (Conversation second = talks.held(able(), rules)) {
      second.open(east, WALL);
      second.open(west, WALL);
      second.heard.next(east);
      rules.letGo();
      second.heard.next(west);
      EarlierTalks.settle(second);
      assertThat(EarlierTalks.said(second, east)).isEmpty();
      assertThat(EarlierTalks.said(second, west)).isEmpty();
    }
  }

  /** Some editors forget what they were told of a text when it is closed. */
  @Test
  void aTextThatIsClosedAndOpenedAgainIsToldOfAnew() {
    checked(able());
    HeldRules rules = new HeldRules();
    try (Conversation second = talks.held(able(), rules)) {
      second.open(east, WALL);
      second.heard.next(east);
      second.closeDocument(east);
      second.open(east, WALL);
      rules.letGo();
      assertThat(second.heard.of(east, 2).getDiagnostics()).isEqualTo(cold(able(), WALL).get(east));
    }
  }

  /** One drafter, two editors: what is kept for one does not take the other's away. */
  @Test
  void eachKindOfClientIsShownItsOwn() {
    ClientCapabilities modest = new ClientCapabilities();
    checked(able());
    checked(modest);
    for (ClientCapabilities client : List.of(able(), modest)) {
      HeldRules rules = new HeldRules();
      try (Conversation talk = talks.held(client, rules)) {
        talk.open(east, WALL);
        assertThat(talk.heard.next(east).getDiagnostics()).isEqualTo(cold(client, WALL).get(east));
        rules.letGo();
      }
    }
  }

  @Test
  void whatIsTypedAfterwardsIsCheckedAsEver() {
    checked(able());
    HeldRules rules = new HeldRules();
    try (Conversation second = talks.held(able(), rules)) {
      second.open(east, WALL);
      second.heard.next(east);
      String typed = WALL.replace("nobody", "somebody");
      int version = second.replace(east, typed);
      rules.letGo();
      assertThat(second.heard.of(east, version).getDiagnostics())
          .isEqualTo(cold(able(), typed).get(east));
      // taken back before anything of it was saved: the words are those shown early, the version
      // new
      int back = second.replace(east, WALL);
      assertThat(second.heard.of(east, back).getDiagnostics())
          .isEqualTo(cold(able(), WALL).get(east));
    }
  }

  @Test
  void aClientThatFetchesIsToldNothing() {
    checked(able());
    ClientCapabilities puller =
        client(
            """
            {"textDocument": {"diagnostic": {}, "publishDiagnostics": {
              "relatedInformation": true, "dataSupport": true}},
             "workspace": {"diagnostics": {"refreshSupport": true}}}
            """);
    try (Conversation second = talks.begin(puller)) {
      second.open(east, WALL);
      EarlierTalks.settle(second);
      assertThat(second.heard.diagnostics).isEmpty();
    }
  }

  @Test
  void aFolderThatCannotBeWrittenCostsNothingAndSaysNothing() throws IOException {
    Path file = Files.writeString(walls.resolve("no-folder"), "");
    EarlierTalks nowhere = new EarlierTalks(walls, file.resolve("kept"));
    for (int time = 0; time < 2; time++) {
      try (Conversation talk = nowhere.begin(able())) {
        talk.open(east, WALL);
        assertThat(EarlierTalks.shown(talk)).isEqualTo(cold(able(), WALL));
        assertThat(talk.heard.logged).isEmpty();
      }
    }
    assertThat(file).isEmptyFile();
  }

  @Test
  void whatARuleWithAFaultLeftOutIsNotKept() {
    Rules broken =
        new Rules(
            Stream.concat(Rules.find().all().stream(), Stream.of(new BreaksOnPurpose())).toList());
    HeldRules rules = new HeldRules();
    try (Conversation first = talks.held(able(), rules)) {
      rules.letGo(broken);
      first.open(east, WALL);
      first.heard.next(east);
      EarlierTalks.settle(first);
      assertThat(first.heard.logged).hasSize(1);
    }
    assertThat(kept).isEmptyDirectory();
  }

  @Test
  @Timeout(60)
  void isKeptWhenNobodyTypesAnyMoreAndNotOnlyAtTheEnd() throws IOException {
    try (Conversation first = talks.begin(able())) {
      first.open(east, WALL);
      while (isEmpty(kept)) {
        LockSupport.parkNanos(MILLISECONDS.toNanos(10));
      }
      HeldRules rules = new HeldRules();
      try (Conversation second = talks.held(able(), rules)) {
        second.open(east, WALL);
        second.heard.next(east);
        rules.letGo();
      }
    }
  }

  private static boolean isEmpty(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.noneMatch(it -> it.getFileName().toString().startsWith("findings-"));
    }
  }

  /** Two editors on one file, each with its own text: what one keeps is never the other's. */
  @Test
  void twoServersOnOneFolderKeepWholeFindings() {
    UnaryOperator<String> others = text -> text.replace("nobody", "somebody");
    try (Conversation one = talks.begin(able());
        Conversation two = talks.begin(able())) {
      one.open(east, WALL);
      two.open(east, others.apply(WALL));
      EarlierTalks.settle(one);
      EarlierTalks.settle(two);
    }
    for (String text : List.of(WALL, others.apply(WALL))) {
      try (Conversation third = talks.begin(able())) {
        third.open(east, text);
        EarlierTalks.settle(third);
        List<PublishDiagnosticsParams> said = EarlierTalks.said(third, east);
        assertThat(said).hasSize(1);
        assertThat(said.get(0).getDiagnostics()).isEqualTo(cold(able(), text).get(east));
      }
    }
  }
}
