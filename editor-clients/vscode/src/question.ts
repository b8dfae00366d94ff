/** What a question shows: what was answered before, and why that would not do. */
export interface Question {
  readonly value: string;
  readonly refusal?: string;
}

/**
 * Asks until the answer is taken or the question is left: whoever takes it says what is wrong with
 * it, so that nothing is known here of what may be answered.
 *
 * @returns what came of the answer; undefined if the question was left
 */
export async function untilTaken<T>(
  ask: (question: Question) => PromiseLike<string | undefined>,
  take: (answer: string) => Promise<T>,
): Promise<T | undefined> {
  let question: Question = { value: "" };
  for (;;) {
    const answer = await ask(question);
    if (answer === undefined) {
      return undefined;
    }
    try {
      return await take(answer);
    } catch (refused) {
      const refusal = refused instanceof Error ? refused.message : `${refused}`;
      question = { value: answer, refusal };
    }
  }
}
