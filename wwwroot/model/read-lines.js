// @ts-check
/**
 * Reads lines as one writes them on paper: "12 8x10 linen, 4 16 x 20 primed, 6F × 3", or a column out of a
 * spreadsheet (count, width, height). What was understood is read back before it goes on the ticket; what could
 * mean two things is not guessed at.
 *
 * @typedef {{ quantity: number, width: string, height: string, surface?: string, cloth?: string, board?: string, thickness?: string, shopPrice?: string }} Read
 * @typedef {{ text: string, line: Read | null }} Reading
 * @typedef {{ number: string, inches: string, unit: string }} Side as written: "8 1/2", and the inches behind feet; the unit is in, cm, mm, ft or empty
 * @typedef {{ sides: Side[], gaps: number[], from: number, to: number }} Chain lengths joined by ×, how far each two stand apart, and where it stands
 */

import { readLength, SIGN } from './measures.js';

const NUMBER = String.raw`(?:\d+(?:\s+|\s*-\s*)\d+\/\d+|\d+\/\d+|\d+(?:[.,]\d+)?)`;
// "8inx10in": an x may follow a unit at once, another letter may not.
const END = '(?![a-wyz])';
const INCH = String.raw`(?:inch(?:es)?${END}|in${END}|["”″]|''|’’|′′)`;
const FOOT = String.raw`(?:feet${END}|foot${END}|ft${END}|['’′](?!['’′]))`;
const LENGTH = String.raw`(?:${NUMBER}\s*${FOOT}(?:\s*${NUMBER}\s*${INCH}?)?|${NUMBER}\s*(?:${INCH}|[cm]m${END})?)`;
const TIMES = String.raw`(?:\s*[x×*]\s*|\s+(?:by|par)\s+)`;
const CHAIN = new RegExp(String.raw`${LENGTH}(?:${TIMES}${LENGTH})+`, 'giu');
const SIDE = new RegExp(String.raw`^(${NUMBER})\s*(?:(${FOOT})(?:\s*(${NUMBER}))?)?\s*(${INCH}|[cm]m)?$`, 'iu');
const COUNT = String.raw`(\d+)\s*(?:of|pcs?\.?|pieces?|panels?|de)?\s+`;
const PRICE = /@\s*(\d+(?:[.,]\d+)?)/;
const BOARD = '(?:hardboard|isorel|plywood|ply|mdf|contreplaqué|board|panneau|thick)';
const THIN = String.raw`(\d+\/\d+|\d+(?:[.,]\d+)?(?=\s*(?:${INCH}|mm)))\s*(${INCH}|mm)?`;
/** "on 3/16 plywood", "3 mm mdf", "plywood 1/4". */
const THICKNESS = [String.raw`\b(?:on|sur)\s+${THIN}`, String.raw`(?<![\d/.,])${THIN}\s*(?=${BOARD})`, String.raw`(?<=${BOARD}\s+)${THIN}`].map((one) => new RegExp(one, 'iu'));
const FRACTION_OF_BOARD = new RegExp(String.raw`^(\d+(?:\s+|\s*-\s*))?(\d+\/\d+)$`);
const BOARD_NEXT = new RegExp(String.raw`^\s*${BOARD}`, 'iu');
/** How heavy a cloth is says nothing of how many. */
const CLOTH_WEIGHT = /\d+(?:[.,]\d+)?\s*(?:oz|gsm|g(?:\/m[2²])?)(?!\p{L})/giu;

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
    .flatMap(apart)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .map((part) => ({ text: part, line: readLine(plain(part), unit, named) }));
}

/** A comma between figures is a decimal one, unless another size follows: "12 8x10,4 16x20". @param {string} part @returns {string[]} */
function apart(part) {
  const [first, second] = [...part.matchAll(CHAIN)];
  if (!second) return [part];
  const end = first.index + first[0].search(/[x×*]|by|par/i);
  const comma = part.lastIndexOf(',', second.index);
  return comma > end ? [part.slice(0, comma), ...apart(part.slice(comma + 1))] : [part];
}

/** Fractions of one sign as three: "8½" is 8 1/2. A dash before a line is a bullet where something stands between. @param {string} part */
const plain = (part) => part
  .replace(/(\d)?([¼½¾⅐-⅞])/gu, (_, digit, sign) => `${digit ? `${digit} ` : ''}${sign.normalize('NFKD')}`)
  .replaceAll('⁄', '/')
  .replace(/^[-–•*]\s+/u, '');

/** @param {string} part @param {import('./measures.js').Unit} unit @param {(name: string) => any} named @returns {Read | null} */
function readLine(part, unit, named) {
  if (/(?:^|\s)[-–−](?=\d)/u.test(part)) return null;
  const price = PRICE.exec(part)?.[1]?.replace(',', '.');
  const rest = part.replace(PRICE, ' ').replace(CLOTH_WEIGHT, ' ').trim();
  const chains = [...rest.matchAll(CHAIN)];
  if (chains.length > 1) return null;
  const found = chains.length === 1 ? bySize(rest, chains[0], unit) : byName(rest, unit, named) ?? byColumns(rest);
  if (!found) return null;
  const { left, thick = '', ...size } = found;
  const [other, thin] = withoutThickness(left);
  const quantity = found.quantity ?? remaining(other);
  if (!quantity) return null;
  const words = left.toLowerCase().match(/\p{L}+/gu) ?? [];
  const thickness = thicknessIn(thick || thin, unit);
  return Object.assign({ ...size, quantity }, ...words.map((word) => WORDS[word] ?? {}), thickness ? { thickness } : {}, price ? { shopPrice: price } : {});
}

/** @param {string} text @param {RegExpMatchArray} match @param {import('./measures.js').Unit} unit */
function bySize(text, match, unit) {
  // "12 8 1/2 by 11" counts 12, "8 1/2 by 11" counts nothing.
  const lead = new RegExp(String.raw`^${COUNT}(?=\d)(?!\d+\/)`, 'iu').exec(text);
  const from = Math.max(lead?.[0].length ?? 0, match.index ?? 0);
  const chain = chainOf(text.slice(from, (match.index ?? 0) + match[0].length));
  let after = text.slice((match.index ?? 0) + match[0].length);
  const last = chain.sides[chain.sides.length - 1];
  // "9x12 1/4 ply": the fraction says how thick the board is.
  const part = BOARD_NEXT.test(after) && last.unit !== 'ft' ? FRACTION_OF_BOARD.exec(last.number) : null;
  if (part?.[1]) {
    after = ` ${part[2]} ${last.unit} ${after}`;
    Object.assign(last, { number: part[1].replace(/[\s-]+$/, ''), unit: '' });
  }
  const sorted = sort(chain, lead !== null && (match.index ?? 0) <= lead[0].length);
  if (!sorted) return null;
  const { sides: [width, height], count, thick } = sorted;
  const left = `${lead ? '' : text.slice(0, from)} ${after}`;
  return { quantity: lead ? Number(lead[1]) : count, width: said(width, height, unit), height: said(height, width, unit), left, thick };
}

/** @param {string} text @returns {{ sides: Side[], gaps: number[] }} */
function chainOf(text) {
  const parts = text.split(new RegExp(`(${TIMES})`, 'iu'));
  const lengths = parts.filter((_, i) => i % 2 === 0);
  return { sides: lengths.map(sideOf), gaps: parts.filter((_, i) => i % 2 === 1).map((gap) => gap.replace(/\S/gu, '').length) };
}

/** @param {string} text @returns {Side} */
function sideOf(text) {
  const [, number = '', foot, inches = '', unit = ''] = SIDE.exec(text.trim()) ?? [];
  return { number, inches, unit: foot ? 'ft' : /^[cm]m$/i.test(unit) ? unit.toLowerCase() : unit && 'in' };
}

/**
 * Which of three numbers is the count: of "3 x 8x10" and "8x10 × 3" the one that stands farther off, else the first; one with
 * a unit or a fraction is none. A last one below 1 is how thick the board is.
 * @param {{ sides: Side[], gaps: number[] }} chain @param {boolean} counted whether the count stands before it already
 * @returns {{ sides: Side[], count?: number, thick?: string } | null}
 */
function sort({ sides, gaps }, counted) {
  if (sides.length === 2) return { sides };
  if (sides.length > 3) return null;
  const [first, second, third] = sides;
  if (/^\d+\/\d+$/.test(third.number)) return { sides: [first, second], thick: `${third.number} ${third.unit}` };
  if (counted) return null;
  const [front, back] = [first, third].map(({ number, unit }) => unit === '' && /^\d+$/.test(number));
  const isLast = back && (!front || gaps[0] < gaps[1] || (second.unit !== '' && third.unit === ''));
  if (isLast) return { sides: [first, second], count: Number(third.number) };
  return front ? { sides: [second, third], count: Number(first.number) } : null;
}

/** A side as the ticket has it: a unit on one of the two holds for both, and feet are told in inches. @param {Side} side @param {Side} other @param {import('./measures.js').Unit} unit */
function said(side, other, unit) {
  const own = side.unit || other.unit;
  const number = own === 'ft' ? inInches(side) : side.number;
  const sign = own === 'ft' ? 'in' : own;
  return sign === '' || sign === SIGN[unit] ? number : `${number} ${sign}`;
}

/** @param {Side} side */
function inInches({ number, inches }) {
  const feet = (readLength(number, 'millimetre') ?? 0) * 12;
  const [, whole = '0', fraction] = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+\/\d+)$/.exec(inches) ?? [];
  if (fraction) return `${feet + Number(whole)} ${fraction}`;
  return String(Math.round((feet + Number(inches.replace(',', '.'))) * 1e6) / 1e6);
}

/** What is left once the thickness is out of it, and the thickness. @param {string} left @returns {[string, string]} */
function withoutThickness(left) {
  for (const one of THICKNESS) {
    const found = one.exec(left);
    if (found) return [`${left.slice(0, found.index)} ${left.slice(found.index + found[0].length)}`, `${found[1]} ${sideOf(`1${found[2] ?? ''}`).unit}`];
  }
  return [left, ''];
}

/** Boards are told in fractions of an inch wherever panels are told in centimetres. @param {string} thick @param {import('./measures.js').Unit} unit */
function thicknessIn(thick, unit) {
  const text = thick.trim();
  return /^\d+\/\d+$/.test(text) && unit !== 'inch' ? `${text} in` : text;
}

/** The one number that is left is the count, none is 1, several are not understood. @param {string} text */
function remaining(text) {
  const all = text.match(/\d+(?:[.,/]\d+)*/g) ?? [];
  if (all.length === 0) return 1;
  return all.length === 1 && /^\d+$/.test(all[0]) ? Number(all[0]) : null;
}

/** @param {string} text @param {import('./measures.js').Unit} unit @param {(name: string) => any} named */
function byName(text, unit, named) {
  const name = /\b(\d+[fpms]|a[1-5]|sm)\b/i.exec(text);
  const known = name && named(name[1]);
  if (!name || !known) return null;
  const sign = known.unit === unit ? '' : ` ${SIGN[/** @type {'inch'} */ (known.unit)]}`;
  const left = `${text.slice(0, name.index)} ${text.slice(name.index + name[0].length)}`;
  return { quantity: undefined, width: known.format.width + sign, height: known.format.height + sign, left, thick: undefined };
}

/** @param {string} text */
function byColumns(text) {
  const row = new RegExp(String.raw`^(\d+)\s+(${NUMBER})\s+(${NUMBER})(?=\s|$)`).exec(text);
  return row ? { quantity: Number(row[1]), width: row[2], height: row[3], left: text.slice(row[0].length), thick: undefined } : null;
}
