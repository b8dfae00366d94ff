// Loads Monaco from the page's own server and makes the editor.
import { notices } from "./notices.js";

/** Resolves with Monaco. */
export function load() {
  // a question that Monaco takes back itself is no fault
  window.addEventListener("unhandledrejection", (event) => {
    if (event.reason?.name === "Canceled") {
      event.preventDefault();
    }
  });
  // its one worker, from the page's own server: it compares texts and finds links
  window.MonacoEnvironment = {
    getWorker: () => new Worker(new URL("vs/base/worker/workerMain.js", document.baseURI)),
  };
  window.require.config({ paths: { vs: new URL("vs", document.baseURI).href } });
  return new Promise((loaded, failed) =>
    window.require(["vs/editor/editor.main"], () => loaded(window.monaco), failed),
  );
}

/** To be made before anything else is asked of Monaco, which tells nobody what it has to tell otherwise. */
export function make(monaco, element) {
  const options = {
    model: null,
    ariaLabel: "Text of the wall. F6 leaves it for the findings.",
    automaticLayout: true,
    "semanticHighlighting.enabled": true,
    fontSize: 14,
    minimap: { enabled: false },
    scrollBeyondLastLine: false,
    fixedOverflowWidgets: true,
    wordBasedSuggestions: "off",
    quickSuggestions: { other: true, strings: true, comments: false },
    inlayHints: { enabled: "on", maximumLength: 90 },
    bracketPairColorization: { enabled: false },
    // a text is left as it is, without a question
    unusualLineTerminators: "off",
    // feet and inches may be written with their typographic marks
    unicodeHighlight: { ambiguousCharacters: false },
    formatOnType: true,
  };
  return monaco.editor.create(element, options, { notificationService: notices });
}
