// A studio that has set nothing but where it is, and the last thing said back to it.

import { type StudioSettings, studioSettings } from '../../src/studio/settings.ts';
import { demoStudio, talk } from './converse.ts';

const places = {
  CA: { currency: 'CAD', timeZone: 'America/Toronto' },
  DE: { currency: 'EUR', timeZone: 'Europe/Berlin' },
  GB: { currency: 'GBP', timeZone: 'Europe/London' },
  IE: { currency: 'EUR', timeZone: 'Europe/Dublin' },
  IN: { currency: 'INR', timeZone: 'Asia/Kolkata' },
  JP: { currency: 'JPY', timeZone: 'Asia/Tokyo' },
  KW: { currency: 'KWD', timeZone: 'Asia/Kuwait' },
  NL: { currency: 'EUR', timeZone: 'Europe/Amsterdam' },
  US: { currency: 'USD', timeZone: 'America/Chicago' },
} as const;

export type Region = keyof typeof places;

export const plainStudio = (region: Region, more: Partial<StudioSettings> = {}): StudioSettings =>
  studioSettings.parse({ name: 'Yard', region, ...places[region], ...more });

export const inOntario: StudioSettings = plainStudio('CA', { subdivision: 'ON' });

/** The reply to the last of these lines. */
export const replyTo = async (lines: readonly string[], studio: StudioSettings = demoStudio): Promise<string> => {
  const said = await talk(lines, { studio });
  return said
    .slice(said.lastIndexOf('\n> ') + 1)
    .split('\n')
    .slice(1)
    .join('\n');
};
