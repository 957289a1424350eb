// The guide's list of sources, made from the handbook: each caution with what backs it, then what the other figures were read from.

import { cautionRows } from '../../src/handbook/cautions-table.ts';
import * as drying from '../../src/handbook/drying-sources.ts';
import type { Source } from '../../src/handbook/sources.ts';
import { wearingSources } from '../../src/handbook/sources-wearing.ts';
import * as tax from '../../src/handbook/tax-sources.ts';

const linked = ({ title, publisher, year, address, grade }: Source): string => {
  if (grade === 'common practice') return title;
  const by = [publisher, ...(year === undefined ? [] : [String(year)])].filter((part) => part !== '').join(', ');
  return `${address === '' ? title : `[${title}](${address})`}, ${by} (${grade})`;
};

const list = (title: string, sources: readonly Source[]): string =>
  [`**${title}**`, '', ...sources.filter(({ grade }) => grade !== 'common practice').map((source) => `- ${linked(source)}`)].join('\n');

const cautionTable = (): string =>
  [
    '| caution | backed by |',
    '|---|---|',
    ...cautionRows.map(
      ({ id, sources }) => `| ${id} | ${(sources.length === 0 ? ['common practice, no source'] : sources.map(linked)).join('; ')} |`,
    ),
  ].join('\n');

export const sourcesSection = (): string =>
  [
    cautionTable(),
    list('Drying and keeping', Object.values(drying)),
    list('Making, boarding and wearing', Object.values(wearingSources)),
    list('Tax rates and rounding', Object.values(tax)),
  ].join('\n\n');

/** The guide with its list made again. */
export const withSources = (guide: string): string =>
  guide.replace(/<!-- made: sources -->\n[\s\S]*?<!-- end -->/, `<!-- made: sources -->\n${sourcesSection()}\n<!-- end -->`);
