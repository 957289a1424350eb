// The paper a studio's printer holds, by its region.

import type { StudioSettings } from './settings.ts';

// Unicode CLDR, supplemental data, paperSize (from memory): US Letter in these territories, A4 in the rest of the world.
const letter = new Set(['US', 'CA', 'MX', 'PH', 'PR', 'CL', 'CO', 'CR', 'GT', 'NI', 'PA', 'SV', 'VE', 'BZ']);

export const paperOf = ({ region }: StudioSettings): 'A4' | 'Letter' => (letter.has(region) ? 'Letter' : 'A4');
