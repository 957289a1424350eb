// The libraries that draw, loaded when something is first drawn: a bot that answers in words starts sooner and needs thirty megabytes less.

import { createRequire } from 'node:module';
import type { Resvg, ResvgRenderOptions } from '@resvg/resvg-js';
import type PDFDocument from 'pdfkit';

const require = createRequire(import.meta.url);

export type Pdf = InstanceType<typeof PDFDocument>;

export const newPdf = (options: ConstructorParameters<typeof PDFDocument>[0]): Pdf => {
  const Document = require('pdfkit') as typeof PDFDocument;
  return new Document(options);
};

export const newPicture = (svg: string, options: ResvgRenderOptions): Resvg => {
  const library = require('@resvg/resvg-js') as { readonly Resvg: typeof Resvg };
  return new library.Resvg(svg, options);
};
