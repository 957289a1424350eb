// ISO 4217: how many decimals each currency's smallest unit has. A table and not Intl, because Intl follows what shops print:
// it says 0 for the Iraqi dinar, where the standard says 3. Gold, testing codes and the like have no minor unit and are left out.

const byDecimals: readonly (readonly [number, string])[] = [
  [0, 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF'],
  [3, 'BHD IQD JOD KWD LYD OMR TND'],
  [4, 'CLF UYW'],
  [
    2,
    'AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF CHE CHF CHW CNY COP COU CRC CUP ' +
      'CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT ' +
      'LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR ' +
      'RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS VED VES ' +
      'WST XAD XCD XCG YER ZAR ZMW ZWG',
  ],
];

const decimals: ReadonlyMap<string, number> = new Map(
  byDecimals.flatMap(([places, codes]) => codes.split(' ').map((code): [string, number] => [code, places])),
);

/** Decimals of the currency's smallest unit (JPY 0, GBP 2, KWD 3); undefined for a code that is not a currency in use. */
export const minorUnits = (currency: string): number | undefined => decimals.get(currency);

export const currencies: readonly string[] = [...decimals.keys()].sort();

const dollars = 'AUD BBD BMD BND BSD BZD CAD FJD GYD HKD JMD KYD LRD NAD NZD SBD SGD SRD TTD TWD USD XCD'.split(' ');
const signs: Readonly<Record<string, string>> = {
  GBP: '£',
  EUR: '€',
  JPY: '¥',
  CNY: '¥',
  ZAR: 'R',
  INR: '₹',
  KRW: '₩',
  ILS: '₪',
  NGN: '₦',
  PHP: '₱',
  VND: '₫',
};

/** The sign printed before an amount; undefined where the code itself is printed. A dollar is the studio's own, so it needs no letter. */
export const currencySign = (currency: string): string | undefined => (dollars.includes(currency) ? '$' : signs[currency]);
