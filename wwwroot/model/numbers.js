// @ts-check
/** The one formatter of numbers: by the reader's locale, always with the unit. */

import { SIGN, showLength } from './measures.js';
import { t } from '../texts/index.js';

/**
 * @param {import('./measures.js').Unit} unit @param {string} currency @param {boolean} decimals
 */
export function numbers(unit, currency, decimals) {
  const money = moneyFormat(currency);
  const plain = new Intl.NumberFormat(undefined, { maximumFractionDigits: 1 });
  const share = new Intl.NumberFormat(undefined, { style: 'percent', maximumFractionDigits: 1 });
  const bare = (/** @type {number} */ value) => showLength(value, unit, decimals);
  return {
    money: (/** @type {number} */ value) => money.format(value),
    share: (/** @type {number} */ value) => share.format(value),
    count: (/** @type {number} */ value) => plain.format(value),
    bare,
    length: (/** @type {number} */ value) => `${bare(value)} ${SIGN[unit]}`,
    size: (/** @type {number} */ width, /** @type {number} */ height) => `${bare(width)} × ${bare(height)} ${SIGN[unit]}`,
    area: (/** @type {number} */ value) => `${plain.format(value)} ${t.area[unit]}`,
    weight: (/** @type {number} */ value) => `${plain.format(unit !== 'inch' && value >= 1000 ? value / 1000 : value)} ${unit === 'inch' ? 'lb' : value >= 1000 ? 'kg' : 'g'}`,
    fine: (/** @type {number} */ value) => `${new Intl.NumberFormat(undefined, { maximumSignificantDigits: 2 }).format(value)} ${SIGN[unit]}`,
    volume: (/** @type {number} */ value) => `${plain.format(value)} ${t.volume[unit]}`,
  };
}

/** A currency that is still being typed has no format yet. @param {string} currency */
function moneyFormat(currency) {
  const known = /^[A-Z]{3}$/.test(currency);
  return known
    ? new Intl.NumberFormat(undefined, { style: 'currency', currency })
    : new Intl.NumberFormat(undefined, { minimumFractionDigits: 2, maximumFractionDigits: 2 });
}

/** @typedef {ReturnType<typeof numbers>} Numbers */
