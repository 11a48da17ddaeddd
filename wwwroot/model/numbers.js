// @ts-check
/** The one formatter of numbers: in the page's language, always with the unit. */

import { SIGN, showLength, unparted } from './measures.js';
import { t } from '../texts/index.js';

/** Who reads the page: as the browser's owner writes the page's language, else as that language is written. */
export const reader = () => navigator.languages.find((one) => one.split('-')[0] === t.language) ?? t.language;

/** @type {Map<string, Intl.NumberFormat>} */
const formats = new Map();

/** Made once each, when first needed: the browser takes tens of milliseconds for the first of all. @param {Intl.NumberFormatOptions} options */
function format(options) {
  const name = JSON.stringify(options);
  const known = formats.get(name) ?? new Intl.NumberFormat(reader(), options);
  formats.set(name, known);
  return known;
}

/** Nobody sees less: about a fortieth of a millimetre. */
const FINEST = { inch: 0.001, centimetre: 0.003, millimetre: 0.03 };

/**
 * @param {import('./measures.js').Unit} unit @param {string} currency @param {boolean} decimals
 */
export function numbers(unit, currency, decimals) {
  const plain = (/** @type {number} */ value) => format({ maximumFractionDigits: 1 }).format(value);
  const bare = (/** @type {number} */ value) => t.figures(showLength(value, unit, decimals));
  return {
    money: (/** @type {number} */ value) => moneyFormat(currency).format(value),
    share: (/** @type {number} */ value) => format({ style: 'percent', maximumFractionDigits: 1 }).format(value),
    count: plain,
    bare,
    length: (/** @type {number} */ value) => unparted(`${bare(value)} ${SIGN[unit]}`),
    size: (/** @type {number} */ width, /** @type {number} */ height) => unparted(`${bare(width)} × ${bare(height)} ${SIGN[unit]}`),
    area: (/** @type {number} */ value) => `${plain(value)} ${t.area[unit]}`,
    weight: (/** @type {number} */ value) => `${plain(unit !== 'inch' && value >= 1000 ? value / 1000 : value)}\u00a0${unit === 'inch' ? 'lb' : value >= 1000 ? 'kg' : 'g'}`,
    fine: (/** @type {number} */ value) => `${value > 0 && value < FINEST[unit] ? `<\u00a0${format({ maximumFractionDigits: 3 }).format(FINEST[unit])}` : format({ maximumSignificantDigits: 2 }).format(value)}\u00a0${SIGN[unit]}`,
    volume: (/** @type {number} */ value) => `${plain(value)} ${t.volume[unit]}`,
  };
}

/** A currency that is still being typed has no format yet. @param {string} currency */
const moneyFormat = (currency) => format(/^[A-Z]{3}$/.test(currency) ? { style: 'currency', currency } : { minimumFractionDigits: 2, maximumFractionDigits: 2 });

/** @typedef {ReturnType<typeof numbers>} Numbers */
