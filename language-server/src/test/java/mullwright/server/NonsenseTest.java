package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What no editor should send costs an answer or ends the talk; it never breaks the server. */
class NonsenseTest {
  private static final String HOVER =
      "{'jsonrpc':'2.0','id':7,'method':'textDocument/hover','params':{'textDocument':"
          + "{'uri':'file:///nowhere.wall'},'position':{'line':0,'character':0}}}";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "null",
        "42",
        "[]",
        "{}",
        "[{}]",
        "{'jsonrpc':'2.0'",
        "not json",
        "{'jsonrpc':'2.0','id':5}",
        "{'jsonrpc':'2.0','id':5,'method':null}",
        "{'jsonrpc':'2.0','id':5,'method':17}",
        "{'jsonrpc':'2.0','id':null,'method':'textDocument/hover'}",
        "{'jsonrpc':'2.0','id':{},'method':'textDocument/hover'}",
        "{'jsonrpc':'2.0','id':99,'result':{}}",
        "{'jsonrpc':'2.0','id':99,'result':{},'error':{}}",
        "{'jsonrpc':'2.0','id':'x','error':{'code':1,'message':'no'}}",
        "{'jsonrpc':'1.0','id':5,'method':'textDocument/hover','params':[]}",
        "{'jsonrpc':'2.0','method':'textDocument/didOpen'}",
        "{'jsonrpc':'2.0','method':'textDocument/didOpen','params':null}",
        "{'jsonrpc':'2.0','method':'textDocument/didOpen','params':'text'}",
        "{'jsonrpc':'2.0','method':'textDocument/didOpen','params':{'textDocument':null}}",
        "{'jsonrpc':'2.0','method':'textDocument/didOpen','params':{'textDocument':{'uri':'a'}}}",
        "{'jsonrpc':'2.0','method':'textDocument/didChange','params':{'textDocument':{}}}",
        "{'jsonrpc':'2.0','method':'textDocument/didChange','params':{'contentChanges':[null]}}",
        "{'jsonrpc':'2.0','method':'textDocument/didClose','params':{}}",
        "{'jsonrpc':'2.0','method':'workspace/didChangeWorkspaceFolders','params':{}}",
        "{'jsonrpc':'2.0','method':'workspace/didChangeWorkspaceFolders'}",
        "{'jsonrpc':'2.0','method':'workspace/didChangeWatchedFiles','params':[1,2]}",
        "{'jsonrpc':'2.0','method':'$/cancelRequest'}",
        "{'jsonrpc':'2.0','method':'$/cancelRequest','params':{}}",
        "{'jsonrpc':'2.0','method':'$/cancelRequest','params':{'id':12345}}",
        "{'jsonrpc':'2.0','method':'$/cancelRequest','params':{'id':{}}}",
        "{'jsonrpc':'2.0','method':'$/setTrace','params':{'value':'loud'}}",
        "{'jsonrpc':'2.0','method':'no/such/notice','params':{}}",
        "{'jsonrpc':'2.0','id':5,'method':'no/such/request','params':{}}",
        "{'jsonrpc':'2.0','id':5,'method':'textDocument/hover'}",
        "{'jsonrpc':'2.0','id':5,'method':'textDocument/hover','params':{'position':'here'}}",
        "{'jsonrpc':'2.0','id':5,'method':'textDocument/inlayHint','params':{'range':{}}}",
        "{'jsonrpc':'2.0','id':5,'method':'textDocument/hover','params':{'position':"
            + "{'line':-3,'character':1e99},'textDocument':{'uri':'file:///nowhere.wall'}}}",
        "{'jsonrpc':'2.0','id':5,'method':'initialize','params':{}}"
      })
  void aMessageThatMeansNothingIsPassedOver(String nonsense) {
    RawTalk talk = begun();
    talk.say(nonsense).say(HOVER);
    assertThat(talk.answer(7).get("result")).isNotNull();
    leave(talk);
  }

  /** Told as what it is, and once; nothing in it is a fault of the server. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "textDocument/didOpen | null | lacks 'params'",
        "textDocument/didOpen | {'textDocument':null} | lacks 'textDocument'",
        "textDocument/didOpen | {'textDocument':{'uri':'a'}} | lacks 'textDocument.text'",
        "textDocument/didOpen | 'text' | cannot be read",
        "textDocument/didChange | {'textDocument':{}} | lacks 'textDocument.uri'",
        "textDocument/didChange | {'textDocument':{'uri':'a'},'contentChanges':[null]}"
            + " | lacks 'contentChanges'",
        "textDocument/didChange | {'textDocument':{'uri':'a'},'contentChanges':"
            + "[{'text':'x','range':{}}]} | lacks 'contentChanges.range.start'",
        "textDocument/didClose | {} | lacks 'textDocument'",
        "workspace/didChangeWorkspaceFolders | {} | lacks 'event'",
        "workspace/didChangeWorkspaceFolders | {'event':{'added':[7]}} | lacks 'event.added.uri'",
        "workspace/didChangeConfiguration | 'dark' | lacks 'settings'"
      })
  void aMalformedNoticeIsToldAsWhatItIs(String method, String parameters, String why) {
    RawTalk talk = new RawTalk();
    talk.say(RawTalk.INITIALIZE);
    talk.answer(1);
    String notice = "{'jsonrpc':'2.0','method':'" + method + "','params':" + parameters + "}";
    talk.say(notice).say(notice).say(HOVER);
    JsonObject told = talk.next();
    assertThat(told.get("method").getAsString()).isEqualTo("window/logMessage");
    JsonObject message = told.getAsJsonObject("params");
    // LSP 3.17, MessageType.Warning
    assertThat(message.get("type").getAsInt()).isEqualTo(2);
    assertThat(message.get("message").getAsString())
        .contains("'" + method + "'", "passed over")
        .contains(why.replace("lacks", "The parameters lack"))
        .doesNotContain("Exception:", "NullPointer");
    assertThat(talk.next().get("id").getAsInt()).as("told once").isEqualTo(7);
    leave(talk);
  }

  @Test
  void anUnknownRequestIsRefusedByNumber() {
    RawTalk talk = begun();
    talk.say("{'jsonrpc':'2.0','id':5,'method':'no/such/request','params':{}}");
    JsonObject error = talk.answer(5).getAsJsonObject("error");
    assertThat(error.get("code").getAsInt()).isEqualTo(-32601); // JSON-RPC 2.0, method not found
    assertThat(error.get("message").getAsString()).contains("no/such/request");
    leave(talk);
  }

  /** JSON-RPC 2.0, "Error object"; LSP 3.17, "Response Message". */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'jsonrpc':'2.0','id':5,'method':'textDocument/hover','params':'here'} | 5 | -32602",
        "{'jsonrpc':'2.0','id':5,'method':'textDocument/hover','params':{'workDoneToken':{}}}"
            + " | 5 | -32602",
        "{'jsonrpc':'2.0','method':'textDocument/hover','params':'here','id':5} | 5 | -32602",
        "{'jsonrpc':'2.0','id':'five','method':'workspace/symbol','params':[]} | five | -32602",
        "{'jsonrpc':'2.0','id':4294967296,'method':'workspace/symbol','params':{'query':''}}"
            + " | 4294967296 | -32600",
        "{'jsonrpc':'2.0','id':{},'method':'workspace/symbol'} | null | -32600",
        "[{'jsonrpc':'2.0','id':5,'method':'shutdown'}] | null | -32600",
        "42 | null | -32600",
        "{'jsonrpc':'2.0','id':5,'method':'workspace/symbol','params':{ | 5 | -32700",
        "{'jsonrpc':'2.0', | null | -32700",
        "{'jsonrpc':'2.0','id':5,'method':'workspace/symbol','params':{}}} | 5 | -32700",
        "no JSON | null | -32700"
      })
  void whoeverMayWaitForAnAnswerGetsAnError(String request, String id, int code) {
    RawTalk talk = begun();
    talk.say(request);
    JsonObject answer = talk.next();
    assertThat(answer.get("id").isJsonNull() ? "null" : answer.get("id").getAsString())
        .isEqualTo(id);
    JsonObject error = answer.getAsJsonObject("error");
    assertThat(error.get("code").getAsInt()).isEqualTo(code);
    assertThat(error.get("message").getAsString())
        .contains("cannot be read")
        .doesNotContain("Exception:", "JsonReader", "'null'");
    talk.say(HOVER);
    assertThat(talk.next().get("id").getAsInt()).as("nothing else is told").isEqualTo(7);
    leave(talk);
  }

  /** JSON-RPC 2.0, "Invalid params": whatever is left out, nothing in the server breaks. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "textDocument/selectionRange | 'positions':[null] | position",
        "textDocument/semanticTokens/range | 'range':{} | position",
        "textDocument/inlayHint | 'range':{} | position",
        "textDocument/rangeFormatting | 'range':{} | position",
        "textDocument/codeAction | 'range':{} | position",
        "textDocument/codeAction | 'range':{'start':{'line':0,'character':0},'end':{'line':0,"
            + "'character':0}},'context':{'diagnostics':[],'only':[null]} | context.only",
        "textDocument/rangesFormatting | 'ranges':[null] | ranges",
        "workspace/diagnostic | 'previousResultIds':[null] | previousResultIds",
        "workspace/willRenameFiles | 'files':[null] | files",
        "workspace/willRenameFiles | 'files':[{}] | files.oldUri"
      })
  void whatIsLeftOutInsideIsToldByItsName(String method, String parameters, String missing) {
    RawTalk talk = begun();
    talk.say(
        "{'jsonrpc':'2.0','method':'textDocument/didOpen','params':{'textDocument':{'uri':"
            + "'untitled:here','languageId':'wall','version':1,'text':'wall W {'}}}");
    talk.say(
        "{'jsonrpc':'2.0','id':5,'method':'"
            + method
            + "','params':{'textDocument':{'uri':'untitled:here'},"
            + parameters
            + "}}");
    JsonObject error = talk.answer(5).getAsJsonObject("error");
    assertThat(error.get("code").getAsInt()).isEqualTo(-32602);
    assertThat(error.get("message").getAsString())
        .isEqualTo("The parameters lack '" + missing + "'.");
    leave(talk);
  }

  /** Two that answer each other's errors would never end. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{'jsonrpc':'2.0','id':null,'error':{'code':-32700,'message':'what?'}}",
        "{'jsonrpc':'2.0','id':{},'result':null}",
        "{'jsonrpc':'2.0','method':'textDocument/didOpen','params':5}"
      })
  void anAnswerAndANoticeThatCannotBeReadAreNotAnswered(String unreadable) {
    RawTalk talk = begun();
    talk.say(unreadable);
    assertThat(talk.next().get("method").getAsString()).isEqualTo("window/logMessage");
    talk.say(HOVER);
    assertThat(talk.next().get("id").getAsInt()).isEqualTo(7);
    leave(talk);
  }

  @Test
  void anIdMayBeAText() {
    RawTalk talk = new RawTalk();
    talk.say(RawTalk.INITIALIZE.replace("'id':1", "'id':'first'"));
    assertThat(talk.next().get("id").getAsString()).isEqualTo("first");
    leave(talk);
  }

  @Test
  void bytesThatAreNoTextArePassedOver() {
    RawTalk talk = begun();
    byte[] bytes = {(byte) 0xFF, (byte) 0xFE, '{', (byte) 0xC3, '}', 0};
    talk.raw("Content-Length: " + bytes.length + "\r\n\r\n").raw(bytes).say(HOVER);
    assertThat(talk.answer(7).get("result")).isNotNull();
    leave(talk);
  }

  @Test
  void longTextThatIsNoJsonIsPassedOver() {
    RawTalk talk = begun();
    talk.say("}" + "x".repeat(100_000)).say(HOVER);
    assertThat(talk.answer(7).get("result")).isNotNull();
    leave(talk);
  }

  @Test
  void bracketsWithoutEndArePassedOver() {
    RawTalk talk = begun();
    talk.say(
        "{'jsonrpc':'2.0','method':'workspace/didChangeWatchedFiles','params':"
            + "[".repeat(200_000)
            + "]".repeat(200_000)
            + "}");
    talk.say(HOVER);
    assertThat(talk.answer(7).get("result")).isNotNull();
    leave(talk);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Content-Length: -5\r\n\r\n",
        "Content-Length: many\r\n\r\n",
        "Content-Length:\r\n\r\n",
        "Content-Type: application/json\r\n\r\n",
        "\r\n\r\n",
        "GET / HTTP/1.1\r\nHost: here\r\n\r\n"
      })
  void aHeaderThatSaysNothingIsPassedOver(String header) {
    RawTalk talk = begun();
    talk.raw(header).say(HOVER);
    assertThat(talk.answer(7).get("result")).isNotNull();
    leave(talk);
  }

  @Test
  void aHeaderOfBareLineFeedsIsRead() {
    RawTalk talk = new RawTalk();
    byte[] body = RawTalk.INITIALIZE.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
    talk.raw("content-type: text; charset=utf-8\ncontent-length: " + body.length + "\n\n");
    talk.raw(body);
    talk.answer(1);
    leave(talk);
  }

  @ParameterizedTest
  @ValueSource(strings = {"104857600", "2147483647", "4294967296", "99999999999999999999"})
  void aMessageBeyondTheLimitIsToldAndTheTalkEndsWithTheInput(String length) {
    RawTalk talk = begun();
    talk.raw("Content-Length: " + length + "\r\n\r\n{\"jsonrpc\":");
    JsonObject told = talk.next();
    assertThat(told.get("method").getAsString()).isEqualTo("window/logMessage");
    assertThat(told.getAsJsonObject("params").get("message").getAsString())
        .contains(length, "limit");
    talk.hangUp();
    assertThat(talk.end()).isEqualTo(1);
  }

  @Test
  void whatFollowsAMessageBeyondTheLimitIsRead() {
    RawTalk talk = begun();
    int length = MessageReader.LIMIT + 1;
    talk.raw("Content-Length: " + length + "\r\n\r\n");
    byte[] chunk = new byte[1 << 20];
    for (int sent = 0; sent < length; sent += chunk.length) {
      talk.raw(java.util.Arrays.copyOf(chunk, Math.min(chunk.length, length - sent)));
    }
    talk.say(HOVER);
    assertThat(talk.answer(7).get("result")).isNotNull();
    leave(talk);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "Content-Len",
        "Content-Length: 50\r\n",
        "Content-Length: 50\r\n\r\n",
        "Content-Length: 50\r\n\r\n{\"jsonrpc\":\"2.0\""
      })
  void halfAMessageEndsTheTalk(String half) {
    RawTalk talk = begun();
    talk.raw(half).hangUp();
    assertThat(talk.end()).isEqualTo(1);
  }

  @Test
  void aLengthThatIsTooShortOrTooLongCostsWhatItCoversAtMost() {
    RawTalk talk = begun();
    byte[] hover = HOVER.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
    // ten bytes too few: the rest is read as a header without an end, so an empty line follows
    talk.raw("Content-Length: " + (hover.length - 10) + "\r\n\r\n").raw(hover).raw("\r\n\r\n");
    talk.say(HOVER.replace("'id':7", "'id':8"));
    assertThat(talk.answer(8).get("result")).isNotNull();
    talk.raw("Content-Length: " + (hover.length + 9) + "\r\n\r\n").raw(hover);
    talk.raw("\r\n\r\nxxxxx");
    talk.say(HOVER.replace("'id':7", "'id':9"));
    assertThat(talk.answer(9).get("result")).isNotNull();
    leave(talk);
  }

  /** A talk in which the client has introduced itself. */
  private static RawTalk begun() {
    RawTalk talk = new RawTalk();
    talk.say(RawTalk.INITIALIZE);
    talk.answer(1);
    return talk;
  }

  private static void leave(RawTalk talk) {
    talk.say("{'jsonrpc':'2.0','id':90,'method':'shutdown'}");
    assertThat(talk.answer(90).get("result").isJsonNull()).isTrue();
    talk.say("{'jsonrpc':'2.0','method':'exit'}");
    assertThat(talk.end()).isZero();
  }
}
