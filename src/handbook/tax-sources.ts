// Where the tax rates and rounding rules were read. "From memory" means no page was seen: those rates must be checked before they are trusted.

import type { Source } from './sources.ts';

export const gstAct: Source = {
  title: 'A New Tax System (Goods and Services Tax) Act 1999, ss 9-75 and 9-90',
  publisher: 'ATO legal database',
  address: 'https://ato.gov.au/law/view/document?LocID=%22PAC%2F19990055%2F9-75%283%29%22',
  grade: 'official',
};
export const calculatingGst: Source = {
  title: 'Calculating GST',
  publisher: 'Inland Revenue New Zealand',
  year: 2010,
  address: 'http://www.ird.govt.nz/changes-2010/gst/businesses/calculating/',
  grade: 'official',
};
export const nzHalfCent: Source = {
  title: 'Goods and Services Tax Act 1985, s 19O',
  publisher: 'plain-language copy of the New Zealand statute',
  address: 'https://plainlanguagelaw.ackama.com/acts/DLM81034/LMS849298.html',
  grade: 'official',
};
export const vfood3520: Source = {
  title: 'VFOOD3520: cut flowers are standard-rated',
  publisher: 'HMRC internal manual',
  address: 'https://www.gov.uk/hmrc-internal-manuals/vat-food/vfood3520',
  grade: 'official',
};
export const vatrec12020: Source = {
  title: 'VATREC12020: retailers must not round down',
  publisher: 'HMRC internal manual',
  address: 'http://www.hmrc.gov.uk/hmrc-internal-manuals/vat-trader-records/vatrec12020',
  grade: 'official',
};
export const gardenCentres: Source = {
  title: "Horticultural retailers' VAT obligations (reprints Revenue)",
  publisher: 'HortiTrends; rate line at revenue.ie, Garden centres',
  address: 'https://www.hortitrends.com/all-news-articles/13488-horticultural-retailers-vat-obligations-revenue',
  grade: 'trade',
};
export const blumenhandel: Source = {
  title: 'UStG section 12, Blumenhandel, Rz 245-263',
  publisher: 'Haufe, Schwarz/Widmann/Radeisen',
  address:
    'https://www.haufe.de/steuern/steuer-office-premium/schwarzwidmannradeisen-ustg-12-abs2-nr1-steuer-478-blumenhandel_idesk_PI11940_HI2716306.html',
  grade: 'trade',
};
export const bofipHorticulture: Source = {
  title: 'BOI-TVA-LIQ-30-10-35; Conseil d’Etat 28 Jan 2015 no 370455',
  publisher: 'Direction générale des finances publiques',
  year: 2022,
  address: 'https://www.doctrine.fr/pc/bofip/13623-PGP?version=13623-PGP_BOI-TVA-LIQ-30-10-35-20220629',
  grade: 'official',
};
export const kamervraag: Source = {
  title: 'Answer 2021Z07539, 9 July 2021; btwberekening.nl, btw op bloemen',
  publisher: 'Tweede Kamer',
  year: 2021,
  address: 'https://www.openkamer.org/kamervraag/2021Z07539/',
  grade: 'official',
};
export const bloemenplan: Source = {
  title: 'Report of the coalition plan for 21 % on flowers from 2028',
  publisher: 'Hart van Nederland, 31 January',
  year: 2026,
  address: 'https://www.hartvannederland.nl/politiek/beleid/artikelen/bloemenbranche-ontevreden-btw-verhoging-kabinet',
  grade: 'unattributed',
};
export const revenuQuebec: Source = {
  title: 'Calculating the taxes',
  publisher: 'Revenu Québec',
  address: 'http://www.revenuquebec.ca/en/entreprises/taxes/tpstvhtvq/perception/calcultaxes.aspx',
  grade: 'official',
};
export const cra125136: Source = {
  title: 'Interpretation 125136, 28 November 2011 (HST 13 %)',
  publisher: 'Canada Revenue Agency',
  year: 2011,
  address: 'https://taxinterpretations.com/content/636291',
  grade: 'official',
};
export const streamlined: Source = {
  title: 'General Laws 44-18.1-25, rounding rule of the Streamlined Sales and Use Tax Agreement',
  publisher: 'State of Rhode Island',
  address: 'https://webserver.rilegislature.gov/Statutes/TITLE44/44-18.1/44-18.1-25.HTM',
  grade: 'official',
};

/** No page was seen for this: the rate is as remembered. */
export const fromMemory: Source = { title: 'from memory', publisher: 'no page seen, check before use', address: '', grade: 'unattributed' };

/** The studio's own setting or a message gave the figure. */
export const ownFigure: Source = {
  title: "the studio's own figure",
  publisher: 'set or said by the studio',
  address: '',
  grade: 'common practice',
};
