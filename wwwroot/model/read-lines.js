// @ts-check
/**
 * Reads lines as one writes them on paper: "12 8x10 linen, 4 16 x 20 primed, 6F × 3", or a column out of a
 * spreadsheet (count, width, height). What was understood is read back before it goes on the ticket.
 *
 * @typedef {{ quantity: number, width: string, height: string, surface?: string, cloth?: string, board?: string, shopPrice?: string }} Read
 * @typedef {{ text: string, line: Read | null }} Reading
 */

import { SIGN } from './measures.js';

const NUMBER = String.raw`(?:\d+[\s-]+\d+\/\d+|\d+\/\d+|\d+(?:[.,]\d+)?)`;
const SIZED = String.raw`(?:in|cm|mm|ft|["”″])?`;
const SIZE = new RegExp(String.raw`(${NUMBER})\s*${SIZED}\s*[x×*]\s*(${NUMBER})\s*(in\b|cm\b|mm\b|ft\b|["”″])?`, 'i');
const TRIPLE = new RegExp(String.raw`^(\d+)\s*[x×*]\s*(${NUMBER})\s*[x×*]\s*(${NUMBER})`, 'i');
const PRICE = /@\s*(\d+(?:[.,]\d+)?)/;

/** Words for surfaces and materials, in every language of the page; the value says what they set. */
const WORDS = /** @type {Record<string, Partial<Read>>} */ ({
  linen: { surface: 'cloth', cloth: 'linen' }, cotton: { surface: 'cloth', cloth: 'cotton' },
  canvas: { surface: 'cloth' }, cloth: { surface: 'cloth' }, jute: { surface: 'cloth', cloth: 'jute' },
  primed: { surface: 'primed' }, gessoed: { surface: 'primed' }, ground: { surface: 'primed' },
  bare: { surface: 'bare' }, raw: { surface: 'bare' }, loose: { surface: 'loose' },
  lin: { surface: 'cloth', cloth: 'linen' }, coton: { surface: 'cloth', cloth: 'cotton' }, toile: { surface: 'cloth' },
  enduit: { surface: 'primed' }, nu: { surface: 'bare' }, brut: { surface: 'bare' }, libre: { surface: 'loose' }, isorel: { board: 'hardboard' },
  hardboard: { board: 'hardboard' }, plywood: { board: 'plywood' }, ply: { board: 'plywood' }, mdf: { board: 'mdf' },
});

/**
 * @param {string} text as written
 * @param {import('./measures.js').Unit} unit the order's
 * @param {(name: string) => ReturnType<typeof import('./formats.js').formatByName>} named finds a format such as 6F
 * @returns {Reading[]} one for each line written; `line` is null where it could not be read
 */
export function readLines(text, unit, named) {
  return text
    .split(/[\n;]+|,(?!\d)/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .map((part) => ({ text: part, line: readLine(part, unit, named) }));
}

/** @param {string} part @param {import('./measures.js').Unit} unit @param {(name: string) => any} named @returns {Read | null} */
function readLine(part, unit, named) {
  const price = PRICE.exec(part)?.[1]?.replace(',', '.');
  const rest = part.replace(PRICE, ' ');
  const found = bySize(rest) ?? byName(rest, unit, named) ?? byColumns(rest);
  if (!found || found.quantity < 1) return null;
  const { left, ...size } = found;
  const words = left.toLowerCase().match(/\p{L}+/gu) ?? [];
  return Object.assign({ ...size }, ...words.map((word) => WORDS[word] ?? {}), price ? { shopPrice: price } : {});
}

/** @param {string} text */
function bySize(text) {
  // "3 x 8x10": the count comes first where the last two stand closer; "8x10x3" has it last.
  const triple = TRIPLE.exec(text);
  const tight = triple && /\s[x×*]\s/i.test(text) && /[\d"][x×*]\d[^x×*]*$/i.test(text);
  const skip = triple && tight ? text.indexOf(triple[2], triple[1].length) : countLength(text);
  const size = SIZE.exec(text.slice(skip));
  if (!size) return null;
  const sign = size[3] ? ` ${size[3]}` : '';
  const left = `${text.slice(skip, skip + size.index)} ${text.slice(skip + size.index + size[0].length)}`;
  const quantity = skip > 0 ? Number.parseInt(text, 10) : trailing(left);
  return { quantity, width: size[1] + sign, height: size[2] + sign, left };
}

/** How many characters a leading count takes: "12 8x10" has one, "8 1/2 x 11" has none. @param {string} text */
function countLength(text) {
  return /^\d+\s*(?:of|pcs|pieces|panels)?\s+(?=\d)(?!\d+\/)/i.exec(text)?.[0].length ?? 0;
}

/** @param {string} text */
function trailing(text) {
  return Number(/(\d+)/.exec(text)?.[1] ?? 1);
}

/** @param {string} text @param {import('./measures.js').Unit} unit @param {(name: string) => any} named */
function byName(text, unit, named) {
  const name = /\b(\d+[fpms]|a[1-5]|sm)\b/i.exec(text);
  const known = name && named(name[1]);
  if (!name || !known) return null;
  const sign = known.unit === unit ? '' : ` ${SIGN[/** @type {'inch'} */ (known.unit)]}`;
  const left = `${text.slice(0, name.index)} ${text.slice(name.index + name[0].length)}`;
  return { quantity: trailing(left), width: known.format.width + sign, height: known.format.height + sign, left };
}

/** @param {string} text */
function byColumns(text) {
  const row = new RegExp(String.raw`^(\d+)\s+(${NUMBER})\s+(${NUMBER})(?=\s|$)`).exec(text);
  return row ? { quantity: Number(row[1]), width: row[2], height: row[3], left: text.slice(row[0].length) } : null;
}
