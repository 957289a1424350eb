// A row of numbers that answers two things fast: add to all from a place on, and the least from a place on (with where it is). A segment tree.

export interface SlackRow {
  addFrom(place: number, amount: number): void;
  setAt(place: number, amount: number): void;
  leastFrom(place: number): number;
  /** Where that least is, the first such place. */
  whereLeast(place: number): number;
}

/** `size` places, all infinitely slack until set. */
export const slackRow = (size: number): SlackRow => {
  let leaves = 1;
  while (leaves < size) leaves *= 2;
  const least = new Float64Array(2 * leaves).fill(Number.POSITIVE_INFINITY);
  const added = new Float64Array(2 * leaves); // to everything below this node
  const where = new Int32Array(2 * leaves);
  for (let node = 2 * leaves - 1; node > 0; node -= 1) where[node] = node >= leaves ? node - leaves : (where[2 * node] as number);

  const pull = (node: number): void => {
    const child = (least[2 * node] as number) <= (least[2 * node + 1] as number) ? 2 * node : 2 * node + 1;
    least[node] = (least[child] as number) + (added[node] as number);
    where[node] = where[child] as number;
  };
  const addTo = (node: number, amount: number): void => {
    least[node] = (least[node] as number) + amount;
    added[node] = (added[node] as number) + amount;
  };
  const answer = new Float64Array(2); // reused: a search is asked very often
  const search = (place: number): Float64Array => {
    answer[0] = Number.POSITIVE_INFINITY;
    answer[1] = size;
    if (place >= size) return answer;
    let node = place + leaves;
    let best = least[node] as number;
    let at = where[node] as number;
    for (; node > 1; node >>= 1) {
      if (node % 2 === 0 && (least[node + 1] as number) < best) {
        best = least[node + 1] as number;
        at = where[node + 1] as number;
      }
      best += added[node >> 1] as number;
    }
    answer[0] = best;
    answer[1] = at;
    return answer;
  };
  return {
    // From a leaf to the root: every right-hand neighbour on the way is wholly "from here on".
    addFrom: (place, amount) => {
      if (place >= size) return;
      let node = place + leaves;
      addTo(node, amount);
      for (; node > 1; node >>= 1) {
        if (node % 2 === 0) addTo(node + 1, amount);
        pull(node >> 1);
      }
    },
    setAt: (place, amount) => {
      let node = place + leaves;
      let above = 0;
      for (let parent = node >> 1; parent > 0; parent >>= 1) above += added[parent] as number;
      least[node] = amount - above;
      for (node >>= 1; node > 0; node >>= 1) pull(node);
    },
    leastFrom: (place) => search(place)[0] as number,
    whereLeast: (place) => search(place)[1] as number,
  };
};
