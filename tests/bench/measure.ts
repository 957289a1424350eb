// Times of many goes, and the rows they make. Ratios of one run hold on any machine; milliseconds hold on this one only.

export interface Times {
  readonly clock: readonly number[]; // milliseconds, each go
  readonly processor: number; // milliseconds a go, on average
}

export const timed = (goes: number, work: (n: number) => void): Times => {
  const clock: number[] = [];
  const before = process.cpuUsage();
  for (let n = 0; n < goes; n += 1) {
    const start = performance.now();
    work(n);
    clock.push(performance.now() - start);
  }
  const { user, system } = process.cpuUsage(before);
  return { clock, processor: (user + system) / 1000 / goes };
};

export const quantile = (values: readonly number[], of: number): number =>
  values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * of))] ?? Number.NaN;
export const median = (values: readonly number[]): number => quantile(values, 0.5);

export interface Row {
  readonly what: string;
  readonly measured: string;
  readonly aim?: string;
}

export const ms = (value: number): string => `${value < 10 ? value.toFixed(2) : value.toFixed(0)} ms`;
export const times = (value: number): string => `${value.toFixed(2)}×`;

export const table = (rows: readonly Row[]): string => {
  const head: Row = { what: 'What', measured: 'Measured', aim: 'Aim' };
  const widths = [head, ...rows].reduce(
    ([a, b, c], row) => [Math.max(a, row.what.length), Math.max(b, row.measured.length), Math.max(c, row.aim?.length ?? 0)] as const,
    [0, 0, 0] as readonly [number, number, number],
  );
  const line = ({ what, measured, aim = '' }: Row): string =>
    `| ${what.padEnd(widths[0])} | ${measured.padEnd(widths[1])} | ${aim.padEnd(widths[2])} |`;
  const rule = `|${widths.map((width) => '-'.repeat(width + 2)).join('|')}|`;
  return [line(head), rule, ...rows.map(line)].join('\n');
};
