// What is written down about the work: one structured line each, with ids, milliseconds and outcomes. Never a word of a message or a reply.

export interface LogLine {
  readonly what: 'message' | 'reply' | 'inbox' | 'outbox' | 'daily run';
  readonly id: string; // of the message or the reply, or the name of the run
  readonly outcome: string;
  readonly milliseconds?: number;
  readonly reason?: string; // an error's code or name
}

export interface Log {
  info(line: LogLine): void;
  warn(line: LogLine): void;
  error(line: LogLine): void;
}

/** What may be logged of an unexpected error: its code or its name, because its message may quote what a person wrote. */
export const reasonOf = (error: unknown): string => {
  if (!(error instanceof Error)) return 'unknown';
  return 'code' in error && typeof error.code === 'string' ? error.code : error.name;
};
