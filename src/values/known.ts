// A value and how we came to know it, carried to the reply so that an assumption is never shown as a fact.

export type Origin =
  | 'said' // a person said it in this thread
  | 'studio' // the studio's own setting
  | 'assumed'; // neither: our default, and the reply says so

export interface Known<T> {
  readonly value: T;
  readonly origin: Origin;
}

export const said = <T>(value: T): Known<T> => ({ value, origin: 'said' });
export const fromStudio = <T>(value: T): Known<T> => ({ value, origin: 'studio' });
export const assumed = <T>(value: T): Known<T> => ({ value, origin: 'assumed' });
