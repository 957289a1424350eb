// Reads the submitted studio form over the settings it was opened on: valid settings, or what is wrong with which field. Settings the form doesn't show are kept.

import { z } from 'zod';
import { type StudioSettings, studioSettings } from '../../studio/settings.ts';
import { currencies } from '../../values/currency.ts';
import { type Draft, type SetupField, setupFields } from './setup-fields.ts';

const entry = z.object({
  value: z.string().nullish(),
  selected_time: z.string().nullish(),
  selected_conversation: z.string().nullish(),
  selected_option: z.object({ value: z.string() }).nullish(),
});
const entries = z.record(z.string(), z.record(z.string(), entry));

export type SetupRead = { readonly settings: StudioSettings } | { readonly errors: Readonly<Record<string, string>> };

/** `values`: view.state.values of the submission. */
export const readSetupForm = (values: unknown, before: StudioSettings): SetupRead => {
  const given = entries.parse(values);
  const draft: Draft = structuredClone(before);
  const errors: Record<string, string> = {};
  for (const field of setupFields) {
    const one = given[field.id]?.[field.id];
    const text = (one?.value ?? one?.selected_time ?? one?.selected_conversation ?? one?.selected_option?.value ?? '').trim();
    if (text === '') {
      if (field.needed) errors[field.id] = 'This is needed.';
      put(draft, field.path, undefined);
      continue;
    }
    const read = readEntry(field, text);
    if ('wrong' in read) errors[field.id] = read.wrong;
    else put(draft, field.path, read.value);
  }
  const checked = studioSettings.safeParse(draft);
  if (!checked.success) {
    for (const issue of checked.error.issues) {
      const field = setupFields.find(({ path }) => path.every((name, place) => issue.path[place] === name)) ?? setupFields[0];
      if (field) errors[field.id] ??= `It should be ${issue.message}.`;
    }
  }
  return checked.success && Object.keys(errors).length === 0 ? { settings: checked.data } : { errors };
};

const readEntry = (field: SetupField, text: string): { readonly value: unknown } | { readonly wrong: string } => {
  switch (field.as) {
    case 'text': {
      if (field.id === 'currency')
        return currencies.includes(text.toUpperCase()) ? { value: text.toUpperCase() } : { wrong: 'A currency’s three letters, like GBP.' };
      if (field.id === 'region') return { value: text.toUpperCase() };
      if (!field.typed) return { value: text };
      const value = field.typed.read(text);
      return value === undefined ? { wrong: field.typed.wrong } : { value };
    }
    case 'percent':
      return /^\d{1,2}(\.\d{1,4})?$/.test(text) ? { value: text } : { wrong: 'A percentage below 100, like 20 or 12.5.' };
    case 'amount':
      return /^\d{1,7}(\.\d{1,4})?$/.test(text) && Number(text) > 0 ? { value: text } : { wrong: 'A number above 0, like 4 or 12.60.' };
    case 'whole':
      return /^\d{1,3}$/.test(text) ? { value: Number(text) } : { wrong: 'A whole number from 0 to 999.' };
    case 'choice':
      return field.options.some(({ value }) => value === text) ? { value: text } : { wrong: 'Choose one of these.' };
    case 'time':
    case 'channel':
      return { value: text };
  }
};

/** Sets or, with undefined, takes out the value at a path; groups left empty go too. */
const put = (draft: Draft, [name, ...rest]: readonly string[], value: unknown): void => {
  if (name === undefined) return;
  if (rest.length === 0) {
    if (value === undefined) delete draft[name];
    else draft[name] = value;
    return;
  }
  const group = (typeof draft[name] === 'object' && draft[name] !== null ? draft[name] : {}) as Draft;
  put(group, rest, value);
  if (Object.keys(group).length === 0) delete draft[name];
  else draft[name] = group;
};
