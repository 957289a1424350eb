// Slack takes about one message a second in a channel; this spaces ours so that it need not say so.

export type Pace = (channel: string) => Promise<void>;

const gap = 1_000; // milliseconds

/** Resolves when this channel's turn has come; turns are given in the order asked. */
export const createPace = (now: () => number, wait: (milliseconds: number) => Promise<void> = pauseFor): Pace => {
  const free = new Map<string, number>();
  return async (channel) => {
    const at = now();
    const turn = Math.max(at, free.get(channel) ?? 0);
    for (const [other, time] of free) if (time <= at) free.delete(other);
    free.set(channel, turn + gap);
    if (turn > at) await wait(turn - at);
  };
};

export const pauseFor = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));
