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
html, body, iframe { width: 100%; height: 100%; margin: 0; padding: 0; border: 0; display: block; }
</style>
</head>
<body><iframe src="${source}" title="Drawing of the wall"></iframe></body>
</html>
`;
}
