// Currency signs and words before or after an amount, with the ISO 4217 code they fix. "Dollars" and "bucks" fix none.

export const signs: Readonly<Record<string, string>> = { '£': 'GBP', '€': 'EUR', '₹': 'INR', '¥': 'JPY' };
export const beforeDollar: Readonly<Record<string, string>> = {
  nz: 'NZD',
  au: 'AUD',
  a: 'AUD',
  us: 'USD',
  ca: 'CAD',
  c: 'CAD',
  cad: 'CAD',
  aud: 'AUD',
  nzd: 'NZD',
  usd: 'USD',
  s: 'SGD',
  hk: 'HKD',
};
export const codesBefore: Readonly<Record<string, string>> = {
  r: 'ZAR',
  zar: 'ZAR',
  rand: 'ZAR',
  rs: 'INR',
  inr: 'INR',
  eur: 'EUR',
  euro: 'EUR',
  gbp: 'GBP',
  usd: 'USD',
  aud: 'AUD',
  nzd: 'NZD',
  cad: 'CAD',
  chf: 'CHF',
  jpy: 'JPY',
};
export const codesAfter: Readonly<Record<string, string | undefined>> = {
  euro: 'EUR',
  euros: 'EUR',
  eur: 'EUR',
  quid: 'GBP',
  pound: 'GBP',
  pounds: 'GBP',
  gbp: 'GBP',
  sterling: 'GBP',
  rand: 'ZAR',
  rands: 'ZAR',
  zar: 'ZAR',
  rupee: 'INR',
  rupees: 'INR',
  rs: 'INR',
  inr: 'INR',
  usd: 'USD',
  aud: 'AUD',
  nzd: 'NZD',
  cad: 'CAD',
  chf: 'CHF',
  jpy: 'JPY',
  yen: 'JPY',
};
export const dollarWords = new Set(['dollar', 'dollars', 'bucks', 'buck', 'dollarydoos']);
export const notes: Readonly<Record<string, string>> = { tenner: '10', fiver: '5', tenners: '10', fivers: '5' };
