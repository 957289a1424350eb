// A tax and the word before or behind it typed as one: "exvat", "incgst", "plusvat", "gstinc".

import { changed, type Token } from './token.ts';

const heads = 'ex exc excl inc incl including excluding includes plus no with without w before'.split(' ');
const taxes = 'vat gst hst pst qst tax taxes'.split(' ');
const tails = 'inc incl included ex exc excl excluded extra'.split(' ');

// Where each such word is cut.
const cuts = new Map<string, number>();
for (const tax of taxes) {
  for (const head of heads) cuts.set(head + tax, head.length);
  for (const tail of tails) cuts.set(tax + tail, tax.length);
}

/** "ink gst": inc, as a phone writes it down. */
export const heardAsInc = (token: Token, next: Token | undefined): boolean =>
  /^(ink|inck|incs)$/.test(token.text) && taxes.includes(next?.text ?? '');

/** The two words that were typed as one; undefined for any other word. */
export const taxApart = (token: Token): readonly [Token, Token] | undefined => {
  const cut = cuts.get(token.text);
  if (cut === undefined || token.kind !== 'word') return undefined;
  const at = token.start + cut;
  return [
    changed(token, { text: token.text.slice(0, cut), end: at }),
    changed(token, { text: token.text.slice(cut), start: at, glued: false }),
  ];
};
