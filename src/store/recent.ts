// A memory of what was last read, for the workspaces that are busy: the least recently used goes first, so that a thousand quiet ones cost nothing.

export interface Recent<T> {
  get(workspace: string): T | undefined;
  set(workspace: string, value: T): void;
  clear(): void;
}

/** So many studios are at work at the same time. */
const usual = 50;

export const recent = <T>(most = usual): Recent<T> => {
  const known = new Map<string, T>();
  return {
    get: (workspace) => known.get(workspace),
    set: (workspace, value) => {
      known.delete(workspace);
      known.set(workspace, value);
      const [oldest] = known.keys();
      if (known.size > most && oldest !== undefined) known.delete(oldest);
    },
    clear: () => known.clear(),
  };
};
