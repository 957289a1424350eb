// The marks of the calendar picture as SVG. Each differs in shape as well as colour, and each is also named in words, so it reads in black and white.

export const paint = {
  paper: '#fbf8f3',
  card: '#ffffff',
  ink: '#2c2a29',
  soft: '#6a645f',
  line: '#ddd5ca',
  leaf: '#3e5f4a',
  leafPale: '#e4ede4',
  petal: '#b9566f',
  petalPale: '#f8e4e6',
  heart: '#e2b04a',
  clay: '#9a5b22',
  late: '#a32020',
} as const;

export const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');

export interface TextLook {
  readonly size: number;
  readonly bold?: boolean;
  readonly fill?: string;
  readonly anchor?: 'start' | 'middle' | 'end';
}

export const words = (x: number, y: number, text: string, look: TextLook): string =>
  `<text x="${x}" y="${y}" font-size="${look.size}" font-weight="${look.bold ? 700 : 400}" fill="${look.fill ?? paint.ink}" text-anchor="${look.anchor ?? 'start'}">${escaped(text)}</text>`;

/** The event: a five-petalled flower. */
export const flower = (x: number, y: number, r: number): string => {
  const petals = [0, 72, 144, 216, 288]
    .map((turn) => `<ellipse cx="${x}" cy="${y - r * 0.58}" rx="${r * 0.36}" ry="${r * 0.46}" transform="rotate(${turn} ${x} ${y})"/>`)
    .join('');
  return `<g fill="${paint.petal}">${petals}</g><circle cx="${x}" cy="${y}" r="${r * 0.3}" fill="${paint.heart}" stroke="${paint.card}" stroke-width="${r * 0.07}"/>`;
};

/** A bench day: a leaf-green pill with the number of pieces in it. */
export const benchPill = (x: number, y: number, w: number, h: number, text: string): string =>
  `<rect x="${x - w / 2}" y="${y - h / 2}" width="${w}" height="${h}" rx="${h / 2}" fill="${paint.leaf}"/>${words(x, y + h * 0.26, text, { size: h * 0.74, bold: true, fill: '#ffffff', anchor: 'middle' })}`;

/** A step: a diamond; a late one is an open diamond with an exclamation mark. */
export const diamond = (x: number, y: number, r: number, late: boolean): string => {
  const path = `M${x} ${y - r}L${x + r} ${y}L${x} ${y + r}L${x - r} ${y}Z`;
  return late
    ? `<path d="${path}" fill="${paint.card}" stroke="${paint.late}" stroke-width="2.5"/>${words(x, y + r * 0.42, '!', { size: r * 1.2, bold: true, fill: paint.late, anchor: 'middle' })}`
    : `<path d="${path}" fill="${paint.clay}"/>`;
};

/** A closed day: slanting lines. Needs `hatchPattern` in the drawing. */
export const hatch = (x: number, y: number, w: number, h: number): string =>
  `<rect x="${x}" y="${y}" width="${w}" height="${h}" fill="url(#closed)"/>`;

export const hatchPattern = `<defs><pattern id="closed" width="12" height="12" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="12" height="12" fill="#f1ece5"/><rect width="4" height="12" fill="#dcd3c7"/></pattern></defs>`;
