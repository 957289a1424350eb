// Units of time, length and weight as they are typed beside a number.

export const durations: Readonly<Record<string, string>> = {
  m: '',
  min: 'min',
  mins: 'min',
  minute: 'min',
  minutes: 'min',
  h: 'hour',
  hr: 'hour',
  hrs: 'hour',
  hour: 'hour',
  hours: 'hour',
  day: 'day',
  days: 'day',
  week: 'week',
  weeks: 'week',
  wk: 'week',
  wks: 'week',
  month: 'month',
  months: 'month',
  year: 'year',
  years: 'year',
  yr: 'year',
  yrs: 'year',
  sec: 'sec',
  secs: 'sec',
  seconds: 'sec',
  night: 'night',
  nights: 'night',
};
export const lengths: Readonly<Record<string, string>> = {
  cm: 'cm',
  cms: 'cm',
  mm: 'mm',
  m: 'm',
  mtr: 'm',
  mtrs: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  yd: 'yd',
  yds: 'yd',
  yard: 'yd',
  yards: 'yd',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  inch: 'in',
  inches: 'in',
  in: 'in',
  km: 'km',
  kms: 'km',
  '"': 'in',
};
export const weights: Readonly<Record<string, string>> = {
  g: 'g',
  gm: 'g',
  gms: 'g',
  gram: 'g',
  grams: 'g',
  kg: 'kg',
  kgs: 'kg',
  oz: 'oz',
  lb: 'lb',
  lbs: 'lb',
  ml: 'ml',
  l: 'l',
  litre: 'l',
  litres: 'l',
};
export const onlyGlued = new Set(['in', 'l', 'h', 'f', 'c', 'p', '"', 's']);

const byLength =
  'ribbon|wire|bindwire|twine|tape|raffia|string|cord|jute|elastic|lace|organza|chiffon|tulle|thread|hessian|burlap|grosgrain|velvet';
/** The end of a name of what is sold by length. */
export const goodsByLength = new RegExp(`(${byLength})$`);
/** In the name of what has a length and is no stem. */
export const goodsWithoutStem = new RegExp(`${byLength}|garland|chain|wrap|tube|pin|comb|clip|band`);
