package mullwright.server;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import mullwright.check.Rules;
import mullwright.check.Severities;
import mullwright.workspace.Cancel;
import mullwright.workspace.Workspace;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;

/**
 * What the client has told since it began the talk: its abilities, its folders, the documents it
 * has open. Only the worker touches it.
 */
final class Session {
  private final Client client;
  private final PositionEncoding encoding;
  private final Roots roots;
  private final Editor editor;
  private final Supplier<Optional<String>> liveView;
  private final Map<String, Open> open = new LinkedHashMap<>();
  private final Progresses progresses;

  /** Of documents that are opened and not checked yet; null if there are none. */
  private Progress reading;

  private final Shown shown = new Shown();
  private final Beside beside = new Beside();
  private Settings settings;
  private String touched = "";

  /** Made when the first is asked for, on the worker; ended after that. */
  private volatile ShownFiles files;

  /** A document the client has open, and its version. */
  record Open(String address, Roots.Held held, Integer version) {
    boolean isSameFileAs(Open other) {
      return other != null
          && held.root() == other.held.root()
          && held.path().equals(other.held.path());
    }
  }

  /**
   * @param rules asked for when the first text is read
   * @param liveView where the live view is to be seen
   */
  Session(
      Client client, Supplier<Rules> rules, Editor editor, Supplier<Optional<String>> liveView) {
    this.client = client;
    this.editor = editor;
    this.liveView = liveView;
    this.roots = new Roots(rules);
    this.encoding = PositionEncoding.chosen(client.words("general.positionEncodings"));
    this.progresses = new Progresses(editor);
    this.settings = Settings.read(client.options(), true);
    client.folders().forEach(roots::add);
  }

  Client client() {
    return client;
  }

  PositionEncoding encoding() {
    return encoding;
  }

  /** What the editor sent of its settings. */
  Settings settings() {
    return settings;
  }

  /** What the reader of a document has switched: what the editor sent goes before the project. */
  Settings settings(String address) {
    return roots
        .find(address)
        .map(held -> held.root().settings().editor().under(settings))
        .orElse(settings);
  }

  /** The editor sent other settings; what it does not name is as the editor had it at first. */
  void settings(Settings sent) {
    settings = Settings.read(client.options(), true).under(sent);
  }

  /** What the editor shows of the server's own. */
  Shown shown() {
    return shown;
  }

  /** What the editor shows beside its texts. */
  Beside beside() {
    return beside;
  }

  Progresses progresses() {
    return progresses;
  }

  /**
   * The progress of a check: it began with the reading of what was opened since the last one. It is
   * for whoever asks to end.
   */
  Progress checking() {
    Progress begun = reading == null ? progresses.begin(null, "Checking walls", client()) : reading;
    reading = null;
    return begun;
  }

  /** The documents the client has open, in the order they were opened. */
  List<Open> open() {
    return List.copyOf(open.values());
  }

  /** The document of that address, if it is open. */
  Optional<Open> open(String address) {
    return Optional.ofNullable(open.get(address));
  }

  /** Where a text belongs that is about to be opened. */
  Roots.Held hold(String address, String text) {
    return roots.hold(address, text);
  }

  void didOpen(String address, Integer version, String text) {
    if (VirtualDocument.at(address).isPresent()) {
      // its text came from here
      return;
    }
    Roots.Held held = roots.hold(address, text);
    held.root().spell(held.path(), address);
    if (held.path().equals(Severities.FILE)) {
      // some editors open all they show; it counts as it was saved
      return;
    }
    held.root().number(held.path(), version);
    open.put(address, new Open(address, held, version));
    touched = address;
    reading = checking();
    held.root().workspace().open(held.path(), text, reading::goesOn);
    // a client that watches no files still sees what changed on disk whenever it opens one
    held.root().workspace().lookAgain();
  }

  /** Applies the changes one after the other; a document that is not open is left alone. */
  void didChange(String address, Integer version, List<TextDocumentContentChangeEvent> changes) {
    Open was = open.get(address);
    if (was == null) {
      return;
    }
    open.put(address, new Open(address, was.held, version));
    touched = address;
    was.held.root().number(was.held.path(), version);
    for (TextDocumentContentChangeEvent change : changes) {
      apply(was.held, change);
    }
  }

  private void apply(Roots.Held held, TextDocumentContentChangeEvent change) {
    Workspace workspace = held.root().workspace();
    Range range = change.getRange();
    if (range == null) {
      workspace.open(held.path(), change.getText());
      return;
    }
    Document document = held.root().view(encoding).document(held.path()).orElseThrow();
    int start = document.offset(range.getStart());
    int end = document.offset(range.getEnd());
    workspace.change(held.path(), Math.min(start, end), Math.max(start, end), change.getText());
  }

  void didClose(String address) {
    shown.remove(address);
    beside.close(address);
    Open was = open.remove(address);
    Optional<Open> other = open.values().stream().filter(is -> is.isSameFileAs(was)).findFirst();
    if (other.isPresent()) {
      // the same file under another spelling stays open, with the text it has
      was.held.root().spell(was.held.path(), other.get().address);
      was.held.root().number(was.held.path(), other.get().version);
    } else if (was != null) {
      was.held.root().workspace().close(was.held.path());
      was.held.root().number(was.held.path(), null);
      roots.release(address);
    }
  }

  /** The addresses of the folders that are looked into, in the order they came. */
  List<String> folders() {
    return roots.all().stream().flatMap(root -> root.folder().stream()).map(Addresses::of).toList();
  }

  /** Lets go of all that can be computed anew, for want of memory. */
  void forget() {
    roots.all().forEach(root -> root.workspace().forget());
  }

  /** Looks at the disk again, in all workspaces. */
  void lookAgain() {
    roots.all().forEach(root -> root.workspace().lookAgain());
  }

  /**
   * Takes folders in and lets others go; open documents move to the workspace they now belong to.
   */
  void changeFolders(List<String> added, List<String> removed) {
    removed.forEach(roots::remove);
    added.forEach(roots::add);
    for (Open was : new ArrayList<>(open.values())) {
      String text =
          was.held.root().workspace().snapshot().file(was.held.path()).orElseThrow().text();
      Roots.Held held = roots.hold(was.address, text);
      if (held.root() != was.held.root()) {
        was.held.root().workspace().close(was.held.path());
        was.held.root().number(was.held.path(), null);
        held.root().spell(held.path(), was.address);
        held.root().number(held.path(), was.version);
        held.root().workspace().open(held.path(), text);
        open.put(was.address, new Open(was.address, held, was.version));
      }
    }
    // one whose files are all in a folder now would tell everything twice
    roots.keep(open.values().stream().map(each -> each.held.root()).toList());
  }

  /** The file of that address, open or on disk. */
  Optional<Document> document(String address) {
    return roots
        .find(address)
        .filter(held -> !held.path().equals(Severities.FILE))
        .flatMap(held -> held.root().view(encoding).document(held.path()));
  }

  /** What is wrong in the projects' own files of settings, by their addresses. */
  Map<String, List<Diagnostic>> settingsProblems() {
    Map<String, List<Diagnostic>> problems = new LinkedHashMap<>();
    for (Root root : roots.all()) {
      SettingsFile file = root.settings();
      if (!file.text().isEmpty()) {
        problems.put(root.address(Severities.FILE), file.diagnostics(encoding));
      }
    }
    return problems;
  }

  /** Takes away the files written for the editor to show; the worker has ended. */
  void end() throws IOException {
    if (files != null) {
      files.end();
    }
  }

  /** The document last touched; if it is closed, the one opened last. */
  Optional<Document> touched() {
    String last = touched;
    if (!open.containsKey(last)) {
      for (String address : open.keySet()) {
        last = address;
      }
    }
    return document(last);
  }

  /** What a feature has before it, answering under that token and telling how far it is. */
  Desk desk(Cancel cancel, Optional<Progress> progress) {
    return new Desk() {
      @Override
      public Client client() {
        return client;
      }

      @Override
      public Cancel cancel() {
        return cancel;
      }

      @Override
      public Optional<Document> document(String address) {
        if (open.containsKey(address)) {
          touched = address;
        }
        return Session.this.document(address);
      }

      @Override
      public Optional<Document> touched() {
        return Session.this.touched();
      }

      @Override
      public Optional<String> liveView() {
        return liveView.get();
      }

      @Override
      public ShownFiles shownFiles() {
        if (files == null) {
          files = new ShownFiles();
        }
        return files;
      }

      @Override
      public Settings settings(Document document) {
        return Session.this.settings(document.address());
      }

      @Override
      public Map<String, List<Diagnostic>> settingsProblems() {
        return Session.this.settingsProblems();
      }

      @Override
      public void shown(String address, Document document) {
        shown.put(address, document);
      }

      @Override
      public void beside(String what, Document document, Predicate<Document> holds) {
        if (open.containsKey(document.address())) {
          beside.told(what, document, holds);
        }
      }

      @Override
      public Optional<Progress> progress() {
        return progress;
      }

      @Override
      public Editor editor() {
        return editor;
      }

      @Override
      public List<View> views() {
        List<View> views = new ArrayList<>();
        roots.all().forEach(root -> views.add(root.view(encoding)));
        return Collections.unmodifiableList(views);
      }
    };
  }
}
