// Answers about words and days, kept for those met last: most of a message have been met before.

const most = 4096; // words

/** The same answers, each reckoned once while it is kept. */
export const remembered = <Answer>(answer: (word: string) => Answer): ((word: string) => Answer) => {
  const kept = new Map<string, Answer>();
  return (word) => {
    const known = kept.get(word);
    if (known !== undefined || kept.has(word)) return known as Answer;
    if (kept.size === most) kept.clear();
    const found = answer(word);
    kept.set(word, found);
    return found;
  };
};
