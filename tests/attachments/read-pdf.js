// Reads the words and their places back from an uncompressed PDF, by ISO 32000-1 "Document management: Portable document format" (ISO, 2008):
// text operators (9.4), ToUnicode maps (9.10.3), glyph widths of composite fonts (9.7.4.3). Only what our own files use.
export const readPdf = (bytes) => {
  const file = Buffer.from(bytes).toString('latin1');
  const objects = new Map([...file.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)].map(([, id, body]) => [Number(id), body ?? '']));
  const object = (id) => {
    const body = objects.get(Number(id));
    if (body === undefined) throw new Error(`no object ${id} in the PDF`);
    return body;
  };
  const refOf = (body, key) => object(new RegExp(`/${key} \\[?(\\d+) 0 R`).exec(body)?.[1]);
  const fontOf = (body) => {
    const unicode = new Map();
    for (const [, from, list] of refOf(body, 'ToUnicode').matchAll(/<([0-9a-f]{4})> <[0-9a-f]{4}> \[([^\]]*)\]/g))
      [...(list ?? '').matchAll(/<([0-9a-f ]+)>/g)].forEach(([, hex], index) => {
        const units = (hex ?? '').split(' ').flatMap((unit) => unit.match(/.{4}/g) ?? []);
        unicode.set(Number.parseInt(from ?? '0', 16) + index, String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16))));
      });
    const widths = /\/W \[0 \[([^\]]*)\]/.exec(refOf(body, 'DescendantFonts'))?.[1] ?? '';
    return { unicode, widths: widths.trim().split(/\s+/).map(Number) };
  };
  const fonts = new Map();
  const kids = /\/Kids \[([^\]]*)\]/.exec([...objects.values()].find((body) => body.includes('/Type /Pages')) ?? '')?.[1] ?? '';
  const pages = [];
  const words = [];
  for (const [, id] of kids.matchAll(/(\d+) 0 R/g)) {
    const page = object(id);
    const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(page) ?? [];
    pages.push({ width: Number(width), height: Number(height) });
    const resources = refOf(page, 'Resources');
    const shown = /1 0 0 1 ([\d.-]+) ([\d.-]+) Tm\n\/(F\d+) ([\d.]+) Tf\n(?:[\d.-]+ Tc\n)?\[([^\]]*)\] TJ/g;
    for (const [, x, y, name = '', size, run = ''] of refOf(page, 'Contents').matchAll(shown)) {
      const font = fonts.get(name) ?? fontOf(refOf(resources, name));
      fonts.set(name, font);
      let text = '';
      let advance = 0;
      for (const [, hex, shift] of run.matchAll(/<([0-9a-f]*)>|([\d.-]+)/g)) {
        if (shift !== undefined) advance -= Number(shift);
        for (const glyph of hex?.match(/.{4}/g) ?? []) {
          const code = Number.parseInt(glyph, 16);
          text += font.unicode.get(code) ?? '\uFFFD';
          advance += font.widths[code] ?? 0;
        }
      }
      const left = Number(x);
      const right = left + (advance * Number(size)) / 1000;
      words.push({ page: pages.length, words: text, size: Number(size), left, right, baseline: Number(y) });
    }
  }
  return { pages, words };
};
