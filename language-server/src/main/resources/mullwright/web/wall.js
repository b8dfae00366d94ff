// The language for Monaco: pairs and words, first colours until the server's own come, themes.

export function register(monaco) {
  monaco.languages.register({ id: "wall", extensions: [".wall"] });
  monaco.languages.setLanguageConfiguration("wall", {
    comments: { lineComment: "//", blockComment: ["/*", "*/"] },
    brackets: [["{", "}"], ["(", ")"]],
    // no pair of quotes: after a digit the mark means inches
    autoClosingPairs: [{ open: "{", close: "}" }, { open: "(", close: ")" }],
    wordPattern: /[\p{L}\d_]+(?:[.-][\p{L}\d_]+)*/u,
    indentationRules: { increaseIndentPattern: /\{[^}"]*$/, decreaseIndentPattern: /^\s*\}/ },
  });
  // what never changes its meaning; all else waits for the server, which knows each word's place
  monaco.languages.setMonarchTokensProvider("wall", {
    tokenizer: {
      root: [
        [/\/\/\/.*$/, "comment.documentation"],
        [/\/\/.*$/, "comment"],
        [/\/\*/, "comment", "@block"],
        [/\d+(?:\.\d+)?['′’](?:[- ]*(?:\d+[ -])?\d+(?:\/\d+)?["″”])?/, "number"],
        [/(?:\d+[ -])?\d+(?:\/\d+|\.\d+)?["″”]/, "number"],
        [/"[^"]*"?/, "string"],
        [/[\p{L}_][\p{L}\d_]*(?:[.-][\p{L}\d_]+)*/u, "variable"],
        [/\d+(?:\.\d+)?/, "number"],
      ],
      block: [
        [/\*\//, "comment", "@pop"],
        [/./, "comment"],
      ],
    },
    unicode: true,
  });
  theme(monaco, "wall-light", "vs", {
    keyword: "1f5f6b bold",
    property: "1f5f6b",
    modifier: "6b4e9b",
    decorator: "a0521d bold",
    variable: "1d2b2f",
    "variable.readonly": "7a3e00",
    number: "0b6e3f",
    type: "4f7f5f",
    string: "8a4b08",
    operator: "5b6b70",
    comment: "6f7d81",
    "comment.documentation": "3f6d78 italic",
  });
  theme(monaco, "wall-dark", "vs-dark", {
    keyword: "6cc3d0 bold",
    property: "6cc3d0",
    modifier: "b9a3e3",
    decorator: "e59a63 bold",
    variable: "dfe6e7",
    "variable.readonly": "e3b57f",
    number: "86d6a5",
    type: "9cc7a6",
    string: "dca561",
    operator: "98a6aa",
    comment: "8b999d",
    "comment.documentation": "84b3bd italic",
  });
}

function theme(monaco, name, base, colours) {
  monaco.editor.defineTheme(name, {
    base,
    inherit: true,
    rules: Object.entries(colours).map(([token, look]) => {
      const [foreground, fontStyle] = look.split(" ");
      return { token, foreground, ...(fontStyle && { fontStyle }) };
    }),
    colors: {
      // the page's own paper
      "editor.background": base === "vs" ? "#ffffff" : "#1e2426",
      "editorInlayHint.background": "#00000000",
      "editorInlayHint.foreground": base === "vs" ? "#5b6b70" : "#98a6aa",
    },
  });
}

/** The theme for the user's choice of light or dark, now and whenever that changes. */
export function followScheme(monaco) {
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const follow = () => monaco.editor.setTheme(dark.matches ? "wall-dark" : "wall-light");
  dark.addEventListener("change", follow);
  follow();
}
