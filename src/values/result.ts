// A computation that a person's input can spoil returns a Result; it never throws for that.

import type { Problem, ProblemCode, ProblemData } from './problem.ts';

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });

/** A failed result with its code and the data its sentence needs. */
export const failed = <C extends ProblemCode>(code: C, data: ProblemData[C]): { ok: false; problem: Problem } => ({
  ok: false,
  problem: problem(code, data),
});

export const problem = <C extends ProblemCode>(code: C, data: ProblemData[C]): Problem => ({ code, data }) as Problem;
