package mullwright.server;

import org.eclipse.lsp4j.jsonrpc.messages.Message;
import org.eclipse.lsp4j.jsonrpc.messages.MessageIssue;
import org.eclipse.lsp4j.jsonrpc.messages.NotificationMessage;

/** What is wrong with a message, in words for people. */
final class Unreadable {
  /** So many letters of what a reader of messages says are passed on. */
  private static final int WORDS = 300;

  private Unreadable() {}

  static String sentence(Message message, MessageIssue issue) {
    String what =
        message instanceof NotificationMessage notice
            ? "The parameters of '" + notice.getMethod() + "' cannot be read"
            : "A message cannot be read";
    return what + ": " + words(issue) + ". It is passed over.";
  }

  /** What is wrong, without the names of exceptions and the advice for programmers. */
  static String words(MessageIssue issue) {
    return issue.getText() + " " + words(issue.getCause());
  }

  static String words(Throwable cause) {
    String why = cause == null || cause.getMessage() == null ? "" : cause.getMessage();
    String words = why.replaceFirst("^([a-z]+\\.)+\\w+: ", "").replaceFirst("(?s)[.]?(\n.*)?$", "");
    return words.length() > WORDS ? words.substring(0, WORDS) + "…" : words;
  }
}
