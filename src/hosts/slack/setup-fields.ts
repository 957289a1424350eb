// The fields of the studio form: what each is called, where it lives in the settings, and how it is typed. Both the form and its reading follow this list.

import type { StudioSettings } from '../../studio/settings.ts';
import { closedDays, hoursByWeekday, type Typed } from './setup-typing.ts';

export type Draft = { [name: string]: unknown };

interface Common {
  readonly id: string;
  readonly label: string;
  readonly hint?: string;
  readonly needed?: true;
  readonly path: readonly string[]; // in StudioSettings
}

export type SetupField = Common &
  (
    | { readonly as: 'text'; readonly typed?: Typed }
    | { readonly as: 'percent' | 'amount' | 'whole' }
    | { readonly as: 'time' | 'channel' }
    | { readonly as: 'choice'; readonly options: readonly { readonly value: string; readonly label: string }[] }
  );

const choice = (value: string, label: string) => ({ value, label });

export const setupFields: readonly SetupField[] = [
  { id: 'name', as: 'text', label: 'Studio name', path: ['name'], needed: true },
  { id: 'region', as: 'text', label: 'Country', hint: 'Two letters: GB, IE, AU, NZ, CA, US …', path: ['region'], needed: true },
  { id: 'time_zone', as: 'text', label: 'Time zone', hint: 'Like Europe/London', path: ['timeZone'], needed: true },
  { id: 'currency', as: 'text', label: 'Currency', hint: 'Three letters: GBP, EUR, AUD …', path: ['currency'], needed: true },
  {
    id: 'tax_usual',
    as: 'choice',
    label: 'Prices you quote usually …',
    path: ['tax', 'usual'],
    options: [choice('included', 'include tax'), choice('on top', 'are without tax')],
  },
  { id: 'tax_rate', as: 'percent', label: 'Your own tax rate, %', hint: 'Leave empty for your country’s rate', path: ['tax', 'rate'] },
  {
    id: 'labour_rule',
    as: 'choice',
    label: 'Labour is reckoned …',
    path: ['labour', 'rule'],
    options: [choice('on product', 'as a share added to the flowers'), choice('out of the price', 'as a share taken out of the price')],
  },
  { id: 'labour_share', as: 'percent', label: 'Labour share, %', path: ['labour', 'share'] },
  { id: 'wage', as: 'amount', label: 'Wage for an hour', hint: 'Check your local rate', path: ['labour', 'wage'] },
  {
    id: 'on_costs',
    as: 'percent',
    label: 'On top of the wage, %',
    hint: 'Holiday pay, employer’s contributions',
    path: ['labour', 'onCosts'],
  },
  { id: 'stems_multiple', as: 'amount', label: 'Multiple on stems', hint: 'Usually 4', path: ['multiples', 'stems'] },
  { id: 'sundries_multiple', as: 'amount', label: 'Multiple on sundries', hint: 'Usually 4', path: ['multiples', 'sundries'] },
  { id: 'people', as: 'whole', label: 'People at the bench', path: ['bench', 'people'] },
  {
    id: 'hours',
    as: 'text',
    label: 'Bench hours by weekday',
    hint: 'Like: mon-fri 6, sat 4. Days left out are closed.',
    path: ['bench', 'hours'],
    typed: hoursByWeekday,
  },
  { id: 'closed', as: 'text', label: 'Closed days', hint: 'Like: 2027-04-02, 2027-04-05', path: ['bench', 'closed'], typed: closedDays },
  { id: 'reminder_at', as: 'time', label: 'Morning reminder at', path: ['reminder', 'at'] },
  { id: 'reminder_channel', as: 'channel', label: 'Morning reminder in', path: ['reminder', 'channel'] },
];

/** What a path holds in the settings, or undefined. */
export const valueAt = (settings: StudioSettings, path: readonly string[]): unknown =>
  path.reduce<unknown>((value, name) => (typeof value === 'object' && value !== null ? (value as Draft)[name] : undefined), settings);
