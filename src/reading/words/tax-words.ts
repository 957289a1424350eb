// Names of the taxes people add or include, and the words for either.

import { wordList } from './word-list.ts';

export const taxNames: Readonly<Record<string, readonly string[]>> = {
  GST: ['gst', 'gsts', "gst's", 'gts', 'g.s.t', 'g s t', 'g . s . t', 'gee s t', 'gee ess tee', 'igst', 'cgst', 'sgst', 'tps'],
  VAT: ['vat', 'vats', "vat's", 'v.a.t', 'v a t', 'v . a . t', 'vatt', 'vta', 'value added tax'],
  HST: ['hst', 'hsts', "hst's", 'h s t', 'h.s.t'],
  PST: ['pst', "pst's", 'p s t', 'p.s.t'],
  QST: ['qst', 'tvq'],
  'sales tax': ['sales tax'],
  MwSt: ['mwst', 'mehrwertsteuer'],
  TVA: ['tva'],
  BTW: ['btw'],
};

export const includedWords = wordList(`
  inc, incl, included, including, includes, include, inclusive, inlc, icl, incd, inkl, incl'd, inc'd, incld, inc., incl., includ, inclu,
  inclusive of, inc of, incl of, gross, ttc, brutto
`);
export const onTopWords = wordList(`
  ex, excl, excluding, exclusive, exclusive of, excludes, exlc, exc, exl, exlcuding, before, without, w/o, net of, net, plus, minus,
  excluded, extra, exkl, zzgl, netto, hors taxe, hors taxes
`);
