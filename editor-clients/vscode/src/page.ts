/** The page in the side panel: a frame round the server's own page, and nothing else. */

/** The address in what the server answers: the address itself, or an object that holds it. */
export function addressIn(answer: unknown): string | undefined {
  const held =
    typeof answer === "object" && answer !== null
      ? ((answer as Record<string, unknown>).uri ?? (answer as Record<string, unknown>).url)
      : answer;
  return typeof held === "string" && isLoopback(held) ? held : undefined;
}

/** Only pages of this very machine are framed. */
export function isLoopback(address: string): boolean {
  try {
    const { protocol, hostname } = new URL(address);
    return protocol === "http:" && ["127.0.0.1", "localhost", "[::1]"].includes(hostname);
  } catch {
    return false;
  }
}

/**
 * The address to frame, given the way VS Code opened to it. A way that changes the path is a proxy
 * of an editor that runs in a browser, and the page takes no proxy: where that browser runs on this
 * machine the page itself is reached.
 */
export function reachable(address: string, way: string): string {
  const proxied = new URL(way).pathname !== new URL(address).pathname;
  return proxied && isLoopback(way) ? address : way;
}

export function page(address: string): string {
  const { origin } = new URL(address);
  const source = address.replace(/&/g, "&amp;").replace(/"/g, "&quot;").replace(/</g, "&lt;");
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy"
  content="default-src 'none'; frame-src ${origin}; style-src 'unsafe-inline'">
<title>Drawing</title>
<style>
html, body { height: 100%; margin: 0; padding: 0; }
body { display: flex; flex-direction: column; }
iframe { flex: 1; width: 100%; border: 0; background: #ffffff; }
p { margin: 0; padding: 2px 8px; text-align: right; }
</style>
</head>
<body>
<p><a href="${source}">Open in a browser</a></p>
<iframe src="${source}" title="Drawing of the wall"></iframe>
</body>
</html>
`;
}
