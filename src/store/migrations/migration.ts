// One step from a schema to the next. Never changed once released: a later step mends it.

export interface Migration {
  readonly number: number; // 1, 2, 3… without gaps
  readonly name: string;
  readonly sql: string;
}
