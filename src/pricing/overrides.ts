// What an event's own rules replace, so that a reply can say "labour 25 % here, usually 30 %".

import { benchMinutes } from '../handbook/bench-minutes.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import type { StudioSettings } from '../studio/settings.ts';
import type { EventRule } from '../thread/rule-for.ts';
import type { Decimal } from '../values/decimal.ts';
import { defaultStep, pieceTerms } from './piece-terms.ts';
import type { Override } from './price-terms.ts';

/** What each rule replaces: the studio's setting or our default. `kinds`: those of the order. */
export const overridesOf = (
  settings: StudioSettings,
  rules: readonly EventRule[],
  taxRate: Decimal,
  kinds: readonly PieceKind[],
): readonly Override[] => {
  const usual = pieceTerms(settings, []);
  /** A rule for every piece replaces a figure of each kind in the order. */
  const each = (rule: EventRule, of: (piece: PieceKind) => string): string =>
    [...new Set((rule.piece ? [rule.piece] : kinds.length > 0 ? kinds : (['unspecified'] as const)).map(of))].filter(Boolean).join(' / ');
  const from = (rule: EventRule): string => {
    switch (rule.what) {
      case 'labour share':
        return usual.labour.share.value.toString();
      case 'labour rule':
        return usual.labour.rule.value;
      case 'multiple':
        return usual.multiples.stems.value.equals(usual.multiples.sundries.value)
          ? usual.multiples.stems.value.toString()
          : `${usual.multiples.stems.value} / ${usual.multiples.sundries.value}`; // stems / sundries
      case 'stems multiple':
        return usual.multiples.stems.value.toString();
      case 'sundries multiple':
        return usual.multiples.sundries.value.toString();
      case 'sundries':
        return each(rule, (piece) => settings.sundriesEach?.[piece] ?? '0');
      case 'minimum price':
        return each(rule, (piece) => settings.minimumPrice?.[piece] ?? '');
      case 'price step':
        return settings.priceStep ?? defaultStep(settings.currency).toString();
      case 'minutes':
        return each(rule, (piece) => (settings.minutes?.[piece] ?? benchMinutes[piece].usual).toString());
      case 'tax rate':
        return taxRate.toString();
      case 'spare':
        return rule.to; // no figure of a price: the buying list says it
    }
  };
  return rules.map((rule) => ({ what: rule.what, to: rule.to, from: from(rule), ...(rule.piece ? { piece: rule.piece } : {}) }));
};
