// @ts-check
/**
 * Lengths as painters write and read them. The service reads lengths itself and is the authority; what is read
 * here only draws previews and words.
 *
 * @typedef {'inch' | 'centimetre' | 'millimetre'} Unit
 */

import { t } from '../texts/index.js';

/** Millimetres in one of each unit: an inch is 25.4 mm by definition (NIST SP 811). */
export const MILLIMETRES = { inch: 25.4, centimetre: 10, millimetre: 1 };

/** Parts of a unit that are shown: a tenth of a millimetre, as on the drawings and slips; a thousandth of an inch. */
const FINEST = { inch: 1000, centimetre: 100, millimetre: 10 };

/** The sign of each unit. */
export const SIGN = { inch: 'in', centimetre: 'cm', millimetre: 'mm' };

const NAMES = /** @type {Record<string, number>} */ ({
  in: 25.4, inch: 25.4, inches: 25.4, '"': 25.4, '”': 25.4, '″': 25.4,
  ft: 304.8, foot: 304.8, feet: 304.8, "'": 304.8, '’': 304.8, '′': 304.8,
  yd: 914.4, yard: 914.4, yards: 914.4, mm: 1, cm: 10, m: 1000,
});

const TERM = /^\s*(?:(\d+)[\s-]+)?(\d+)\s*[/⁄]\s*(\d+)|^\s*(\d+(?:[.,]\d+)?)/;

/**
 * Reads a length.
 * @param {string | number | null | undefined} text as typed: "16 1/2", "41 cm", "2' 6\""
 * @param {Unit} unit of a bare number
 * @returns {number | null} millimetres, or null where it is no length
 */
export function readLength(text, unit) {
  let rest = String(text ?? '').trim();
  let sum = 0;
  let found = false;
  while (rest !== '') {
    const match = TERM.exec(rest);
    if (!match) return null;
    rest = rest.slice(match[0].length).trimStart();
    const name = /^[a-z]+|^["'”’″′]/i.exec(rest)?.[0] ?? '';
    const size = name === '' ? MILLIMETRES[unit] : NAMES[name.toLowerCase()];
    if (size === undefined) return null;
    rest = rest.slice(name.length).trimStart();
    sum += number(match) * size;
    found = true;
  }
  return found && sum >= 0 ? sum : null;
}

/** @param {RegExpExecArray} match */
function number(match) {
  return match[4] === undefined
    ? Number(match[1] ?? 0) + Number(match[2]) / Number(match[3])
    : Number(match[4].replace(',', '.'));
}

/**
 * A length of the plan as a tape shows it, without its unit.
 * @param {number} value in the order's units
 * @param {Unit} unit
 * @param {boolean} [decimals] inches as decimals instead of 64ths
 */
export function showLength(value, unit, decimals = false) {
  if (unit !== 'inch' || decimals) return String(Math.round(value * FINEST[unit]) / FINEST[unit]);
  const parts = Math.round(value * 64);
  const sure = Math.abs(parts / 64 - value) < 1e-5 ? '' : ' ±';
  const whole = Math.trunc(parts / 64);
  let above = Math.abs(parts % 64);
  if (above === 0) return `${whole}${sure}`;
  let below = 64;
  while (above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  return `${whole === 0 ? '' : `${whole} `}${above}/${below}${sure}`;
}

/** A length within a sentence stays in one line: parted, 10 1/8 in is read as 10. @param {string} text */
export const unparted = (text) => text.replace(/(\d) (?=\d+\/\d)/g, '$1\u00a0');

/** Whether a length brings its own unit, so that none is to be printed behind it. @param {any} text */
export const hasUnit = (text) => /[a-z"'”’″′]/i.test(String(text ?? ''));

/** A length as it is typed, with a unit once. @param {any} text @param {Unit} unit of a bare number */
export const withOwn = (text, unit) => t.figures(hasUnit(text) ? String(text) : `${text ?? ''} ${SIGN[unit]}`.trim());

/**
 * A bare number keeps its meaning when the order's unit changes: it gets its own unit.
 * @param {string} text
 * @param {Unit} old
 */
export function withUnit(text, old) {
  return /\d$/.test(text.trim()) ? `${text.trim()} ${SIGN[old]}` : text;
}
