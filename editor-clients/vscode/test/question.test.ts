import assert from "node:assert/strict";
import { test } from "node:test";
import { Question, untilTaken } from "../src/question";

/** Gives answers one after the other and keeps what was asked. */
function answering(...answers: (string | undefined)[]) {
  const asked: Question[] = [];
  const ask = async (question: Question) => {
    asked.push(question);
    return answers.shift();
  };
  return { asked, ask };
}

test("a good answer is asked for once", async () => {
  const { asked, ask } = answering("2\"");
  assert.equal(await untilTaken(ask, async (by) => `moved ${by}`), "moved 2\"");
  assert.deepEqual(asked, [{ value: "" }]);
});

test("an answer that is refused is asked for again, with what was written and why", async () => {
  const { asked, ask } = answering("2", "2 mm");
  const moved = await untilTaken(ask, async (by) => {
    if (!by.endsWith("mm")) {
      throw new Error(`“${by}” is no length with its unit.`);
    }
    return by;
  });
  assert.equal(moved, "2 mm");
  assert.deepEqual(asked, [
    { value: "" },
    { value: "2", refusal: "“2” is no length with its unit." },
  ]);
});

test("a question that is left moves nothing", async () => {
  const { ask } = answering(undefined);
  let taken = 0;
  assert.equal(await untilTaken(ask, async () => ++taken), undefined);
  assert.equal(taken, 0);
});
