import assert from "node:assert/strict";
import { test } from "node:test";
import { addressIn, isLoopback, page, reachable } from "../src/page";

test("only pages of this machine are framed", () => {
  for (const address of ["http://127.0.0.1:4000/a/", "http://localhost:1/x?y", "http://[::1]:9/"]) {
    assert.ok(isLoopback(address), address);
  }
  for (const address of [
    "http://example.test/",
    "http://127.0.0.1.example.test/",
    "javascript:alert(1)",
    "file:///etc/passwd",
    "not an address",
  ]) {
    assert.ok(!isLoopback(address), address);
  }
});

test("the address is taken from either form of answer", () => {
  const address = "http://127.0.0.1:4000/token/";
  assert.equal(addressIn(address), address);
  assert.equal(addressIn({ uri: address }), address);
  assert.equal(addressIn({ url: address }), address);
  assert.equal(addressIn(null), undefined);
  assert.equal(addressIn({ uri: "http://example.test/" }), undefined);
});

test("the page frames that address and may load nothing else", () => {
  const framed = page('http://127.0.0.1:4000/t/?wall="a"&b');
  assert.match(framed, /frame-src http:\/\/127\.0\.0\.1:4000;/);
  assert.match(framed, /default-src 'none'/);
  assert.match(framed, /src="http:\/\/127\.0\.0\.1:4000\/t\/\?wall=&quot;a&quot;&amp;b"/);
});

test("a proxy in the same machine's browser is gone round, a way from another machine is taken", () => {
  const address = "http://127.0.0.1:4000/token/";
  assert.equal(reachable(address, address), address);
  assert.equal(reachable(address, "http://127.0.0.1:8080/proxy/4000/token/"), address);
  assert.equal(reachable(address, "http://127.0.0.1:4001/token/"), "http://127.0.0.1:4001/token/");
  const far = "https://editor.example.test/proxy/4000/token/";
  assert.equal(reachable(address, far), far);
});
