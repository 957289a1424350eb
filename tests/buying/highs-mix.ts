// The same problem written out for a general-purpose solver: HiGHS, an open-source mixed-integer solver (Huangfu and Hall, "Parallelizing the dual
// revised simplex method", Mathematical Programming Computation 10, 2018; paper named from memory).
import type { LegacyHighs } from 'highs';
import { mostOfRole } from '../../src/buying/best-mix.ts';
import type { Choice } from '../../src/buying/fit-choices.ts';

/** The package types itself as CommonJS but loads as a module, hence the cast. */
export const loadHighs = async (): Promise<LegacyHighs> => {
  const { default: load } = (await import('highs')) as unknown as { readonly default: () => Promise<LegacyHighs> };
  return load();
};

/** The problem in CPLEX LP format. Variable x0, x1… are the choices in order. */
export const asLinearProgram = (items: readonly (readonly Choice[])[], budget: number): string => {
  const choices = items.flat();
  const names = choices.map((_, at) => `x${at}`);
  const terms = (weight: (choice: Choice) => number) => choices.map((choice, at) => `${weight(choice)} ${names[at]}`).join(' + ');
  const ones = (keep: (choice: Choice) => boolean) => names.filter((_, at) => keep(choices[at] as Choice)).join(' + ');
  const roles = [...new Set(choices.map((choice) => choice.role))];
  const most = mostOfRole(roles.map((role) => items.filter(([first]) => first?.role === role).length));
  return [
    'Maximize',
    ` obj: ${terms((choice) => choice.value)}`,
    'Subject To',
    ` budget: ${terms((choice) => choice.spend)} <= ${budget}`,
    ...items.map((own, at) => ` item${at}: ${ones((choice) => own.includes(choice))} <= 1`),
    ...roles.flatMap((role) => [
      ` least_${role}: ${ones((choice) => choice.role === role)} >= 1`,
      ` most_${role}: ${ones((choice) => choice.role === role)} <= ${most}`,
    ]),
    ` five: ${names.join(' + ')} >= 5`,
    ` six: ${names.join(' + ')} <= 6`,
    'Binary',
    ` ${names.join(' ')}`,
    'End',
  ].join('\n');
};
