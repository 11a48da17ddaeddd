// @ts-check
/** The fields of each sort of good, and how it is said in a sentence. */

import { t } from '../texts/index.js';

/**
 * @typedef {import('./field.js').FieldShape} FieldShape
 * @typedef {{ head: () => string, add: () => string, fresh: (order: any) => any, fields: (list: string) => ((i: number) => FieldShape)[],
 *   said: (row: any, length: (text: any) => string, props: any) => string, parts: Part[], when?: (order: any) => boolean, fold?: { head: () => string, fields: (list: string) => ((i: number) => FieldShape)[] } }} Sort
 * @typedef {{ at: string, head: () => string, add: () => string, fresh: (row: any) => any, fields: ((path: string) => FieldShape)[], parts?: Part[] }} Part a list within a good, and where in it
 */

/** @param {string[]} parts */
const sentence = (...parts) => parts.filter((part) => part !== '').join('; ');

/** @param {any} props @param {string} price */
const money = (props, price) => (/^[\d.,]+$/.test(price ?? '') ? props.numbers.money(Number(String(price).replace(',', '.'))) : '');

/** An id no other good of the list has. @param {any} order @param {string} list @param {string} word */
function freeId(order, list, word) {
  const taken = new Set((order[list] ?? []).map((/** @type {any} */ row) => row.id));
  let n = (order[list] ?? []).length + 1;
  while (taken.has(`${word}-${n}`)) n++;
  return `${word}-${n}`;
}

/** How a cloth is sold. @param {any} order @param {number} i */
const by = (order, i) => order.cloths[i]?.sale?.by ?? 'none';

/** @type {Part} */
const REMNANT = {
  at: 'remnants', head: () => t.goods.remnants, add: () => t.goods.addRemnant,
  fresh: (/** @type {any} */ row) => ({ id: `r${(row.remnants?.length ?? 0) + 1}-${Date.now().toString(36).slice(-3)}`, quantity: '1' }),
  fields: [
    (path) => ({ path: `${path}.width`, unit: 'length', label: t.goods.width, size: 7 }),
    (path) => ({ path: `${path}.length`, unit: 'length', label: t.goods.length, size: 7 }),
    (path) => ({ path: `${path}.quantity`, label: t.goods.pieces, size: 3, kind: 'number' }),
    (path) => ({ path: `${path}.value`, unit: 'money', label: t.goods.value, size: 6, kind: 'number' }),
  ],
};

/** Cheaper from so many on. @param {string} at @returns {Part} */
const quantityPrices = (at) => ({
  at, head: () => t.goods.priceFrom, add: () => t.goods.addPriceFrom, fresh: () => ({}),
  fields: [
    (path) => ({ path: `${path}.count`, label: t.goods.from, size: 4, kind: 'number' }),
    (path) => ({ path: `${path}.price`, unit: 'money', label: t.goods.priceEach, size: 6, kind: 'number' }),
  ],
});

/** @type {Part} */
const CONTAINER = {
  at: 'containers', head: () => t.goods.containers, add: () => t.goods.addContainer,
  fresh: () => ({}), parts: [quantityPrices('priceFrom')],
  fields: [
    (path) => ({ path: `${path}.volume`, label: t.goods.holds, size: 6, kind: 'number', unit: 'volume' }),
    (path) => ({ path: `${path}.price`, unit: 'money', label: t.goods.price, size: 6, kind: 'number' }),
  ],
};

/** The shop a good is bought in, where any of them charges. @param {string} path @returns {FieldShape} */
const shop = (path) => ({
  path: `${path}.shop`, label: t.goods.shop, kind: 'choice', when: (order) => (order.shops ?? []).length > 0,
  options: (order) => [['', t.goods.anyShop], ...(order.shops ?? []).map((/** @type {any} */ one) => [one.id, one.name || one.id])],
});

/** What a board bends and swells by, where its maker says: the table of its kind is only usual. @type {Sort['fold']} */
const STIFFNESS = {
  head: () => t.goods.stiffness,
  fields: (list) => [
    (i) => ({ path: `${list}[${i}].density`, label: t.goods.density, unit: 'kg/m³', size: 5, kind: 'number' }),
    (i) => ({ path: `${list}[${i}].elasticity`, label: t.goods.elasticity, unit: 'MPa', size: 6, kind: 'number' }),
    (i) => ({ path: `${list}[${i}].elasticityAcross`, label: t.goods.elasticityAcross, unit: 'MPa', size: 6, kind: 'number' }),
    (i) => ({ path: `${list}[${i}].shear`, label: t.goods.shear, unit: 'MPa', size: 5, kind: 'number' }),
    (i) => ({ path: `${list}[${i}].poisson`, label: t.goods.poisson, size: 4, kind: 'number' }),
    (i) => ({ path: `${list}[${i}].expansion`, label: t.goods.expansion, hint: t.goods.stiffnessHint, unit: '%', size: 4, kind: 'number' }),
  ],
};

/** @type {Record<string, Sort>} */
export const GOODS = {
  boards: {
    head: () => t.goods.boards, add: () => t.goods.addBoard, parts: [quantityPrices('priceFrom')], fold: STIFFNESS,
    fresh: (order) => ({ id: freeId(order, 'boards', 'board'), name: '', thickness: order.units === 'inch' ? '1/8 in' : t.typed('3.2 mm') }),
    fields: (list) => [
      (i) => ({ path: `${list}[${i}].name`, label: t.goods.name, size: 24 }),
      (i) => ({ path: `${list}[${i}].kind`, label: t.goods.kind, size: 11, list: 'board-kinds' }),
      (i) => ({ path: `${list}[${i}].thickness`, unit: 'length', label: t.goods.thickness, size: 6 }),
      (i) => ({ path: `${list}[${i}].width`, unit: 'length', label: t.goods.width, size: 7 }),
      (i) => ({ path: `${list}[${i}].height`, unit: 'length', label: t.goods.height, size: 7 }),
      (i) => ({ path: `${list}[${i}].price`, unit: 'money', label: t.goods.price, size: 7, kind: 'number' }),
      (i) => ({ path: `${list}[${i}].forSale`, label: t.goods.forSale, hint: t.goods.forSaleHint, size: 4, kind: 'number' }),
      (i) => ({ path: `${list}[${i}].onHand`, label: t.goods.onHand, size: 4, kind: 'number' }),
      (i) => ({ path: `${list}[${i}].value`, unit: 'money', label: t.goods.value, size: 6, kind: 'number' }),
      (i) => ({ path: `${list}[${i}].grain`, label: t.goods.grain, kind: 'choice', options: [['', t.goods.grainNone], ['height', t.goods.grainHeight]] }),
      (i) => ({ path: `${list}[${i}].edgeTrim`, unit: 'length', label: t.goods.edgeTrim, hint: t.goods.edgeTrimHint, size: 6 }),
      (i) => shop(`${list}[${i}]`),
    ],
    said: (row, length, props) => sentence(
      row.name || t.goods.unnamed,
      row.width && row.height ? `${row.width} × ${length(row.height)}, ${length(row.thickness)} ${t.goods.thick}` : '',
      row.forSale === '0' ? t.goods.notForSale : row.price ? t.goods.sheetSaid(money(props, row.price)) : '',
      Number(row.onHand) > 0 ? t.goods.onRack(row.onHand) : '',
    ),
  },
  cloths: {
    head: () => t.goods.cloths, add: () => t.goods.addCloth, parts: [quantityPrices('sale.priceFrom'), REMNANT],
    fresh: (order) => ({ id: freeId(order, 'cloths', 'cloth'), name: '', sale: { by: 'length' }, remnants: [] }),
    fields: (list) => [
      (i) => ({ path: `${list}[${i}].name`, label: t.goods.name, size: 24 }),
      (i) => ({ path: `${list}[${i}].kind`, label: t.goods.kind, size: 9, list: 'cloth-kinds' }),
      (i) => ({ path: `${list}[${i}].width`, unit: 'length', label: t.goods.width, size: 7 }),
      (i) => ({ path: `${list}[${i}].selvedge`, unit: 'length', label: t.goods.selvedge, size: 6 }),
      (i) => ({ path: `${list}[${i}].warp`, label: t.goods.warp, kind: 'choice', options: [['', t.goods.warpAny], ['height', t.goods.warpHeight]] }),
      (i) => ({ path: `${list}[${i}].sale.by`, label: t.goods.sale, kind: 'choice', options: [['length', t.goods.byLength], ['roll', t.goods.byRoll], ['none', t.goods.notSold]], fallback: 'none' }),
      (i) => ({ path: `${list}[${i}].sale.step`, unit: 'length', when: (order) => by(order, i) === 'length', label: t.goods.step, size: 7 }),
      (i) => ({ path: `${list}[${i}].sale.length`, unit: 'length', when: (order) => by(order, i) === 'roll', label: t.goods.length, size: 7 }),
      (i) => ({ path: `${list}[${i}].sale.price`, unit: 'money', when: (order) => by(order, i) !== 'none', label: t.goods.price, size: 7, kind: 'number' }),
      (i) => ({ path: `${list}[${i}].sale.atMost`, when: (order) => by(order, i) === 'length', label: t.goods.atMost, hint: t.goods.forSaleHint, size: 4, kind: 'number' }),
      (i) => ({ path: `${list}[${i}].sale.forSale`, when: (order) => by(order, i) === 'roll', label: t.goods.forSale, hint: t.goods.forSaleHint, size: 4, kind: 'number' }),
      (i) => ({ path: `${list}[${i}].ground`, label: t.goods.ground, kind: 'choice', options: [['', t.goods.groundNone], ['acrylic', t.goods.groundAcrylic], ['oil', t.goods.groundOil]] }),
      (i) => shop(`${list}[${i}]`),
    ],
    said: (row, length, props) => sentence(
      row.name || t.goods.unnamed,
      row.width ? `${length(row.width)} ${t.goods.wide}` : '',
      row.sale?.by === 'roll' ? t.goods.rollSaid(money(props, row.sale.price))
        : row.sale?.by === 'length' ? t.goods.stepSaid(length(row.sale.step), money(props, row.sale.price)) : t.goods.notForSale,
      row.remnants?.length > 0 ? t.goods.remnantsSaid(row.remnants.length) : '',
    ),
  },
  adhesives: liquid('adhesives', 'glue', () => t.goods.adhesives, () => t.goods.addAdhesive),
  strips: {
    head: () => t.goods.strips, add: () => t.goods.addStrip, parts: [quantityPrices('priceFrom')], when: (order) => (order.strips ?? []).length > 0 || order.strength?.brace === true || order.panels.some((/** @type {any} */ row) => String(row.cradle) === 'true'),
    fresh: (order) => ({ id: freeId(order, 'strips', 'strip'), name: '' }),
    fields: (list) => [
      (i) => ({ path: `${list}[${i}].name`, label: t.goods.name, size: 24 }),
      (i) => ({ path: `${list}[${i}].length`, unit: 'length', label: t.goods.length, size: 7 }),
      (i) => ({ path: `${list}[${i}].price`, unit: 'money', label: t.goods.price, size: 7, kind: 'number' }),
      (i) => ({ path: `${list}[${i}].forSale`, label: t.goods.forSale, hint: t.goods.forSaleHint, size: 4, kind: 'number' }),
      (i) => ({ path: `${list}[${i}].onHand`, label: t.goods.onHand, size: 4, kind: 'number' }),
      (i) => ({ path: `${list}[${i}].value`, unit: 'money', label: t.goods.value, size: 6, kind: 'number' }),
      (i) => shop(`${list}[${i}]`),
    ],
    said: (row, length, props) => sentence(
      row.name || t.goods.unnamed,
      row.length ? length(row.length) : '',
      row.price ? money(props, row.price) : '',
      Number(row.onHand) > 0 ? t.goods.onRack(row.onHand) : '',
    ),
  },
  primers: liquid('primers', 'ground', () => t.goods.primers, () => t.goods.addPrimer),
};

/** @param {string} sort @param {string} word @param {() => string} head @param {() => string} add @returns {Sort} */
function liquid(sort, word, head, add) {
  return {
    head, add, parts: [CONTAINER], fold: { head: () => t.goods.itsOwn, fields: (list) => [
      sort === 'adhesives'
        ? (i) => ({ path: `${list}[${i}].openMinutes`, label: t.work.openMinutes, unit: t.work.minutes, size: 4, kind: 'number' })
        : (i) => ({ path: `${list}[${i}].dryHours`, label: t.work.dryHours, unit: t.work.hours, size: 4, kind: 'number' }),
      (i) => ({ path: `${list}[${i}].leastTemperature`, label: t.goods.leastTemperature, hint: t.goods.itsOwnHint, unit: '°C', size: 4, kind: 'number' }),
    ] },
    fresh: (order) => ({ id: freeId(order, sort, word), name: '', coverage: {}, containers: [] }),
    fields: (list) => [
      (i) => ({ path: `${list}[${i}].name`, label: t.goods.name, size: 24 }),
      (i) => ({ path: `${list}[${i}].coverage.area`, label: t.goods.covers, size: 6, kind: 'number', unit: 'area' }),
      (i) => ({ path: `${list}[${i}].coverage.volume`, label: t.goods.with, size: 6, kind: 'number', unit: 'volume' }),
      (i) => ({ path: `${list}[${i}].onHand`, label: t.goods.have, size: 6, kind: 'number', unit: 'volume' }),
      (i) => ({ path: `${list}[${i}].value`, unit: 'money', label: t.goods.worth, size: 6, kind: 'number' }),
      (i) => ({ path: `${list}[${i}].base`, label: t.goods.base, kind: 'choice', options: [['', t.goods.baseWater], ['oil', t.goods.baseOil], ['solvent', t.goods.baseSolvent]] }),
      (i) => ({ path: `${list}[${i}].loss`, label: t.goods.loss, size: 3, kind: 'number', unit: '%' }),
      (i) => ({ path: `${list}[${i}].thinning`, label: t.goods.thinning, size: 3, kind: 'number', unit: '%' }),
      (i) => shop(`${list}[${i}]`),
      ...(sort === 'primers' ? [(/** @type {number} */ i) => ({ path: `${list}[${i}].coats`, label: t.goods.coats, size: 3, kind: /** @type {'number'} */ ('number') }),
        (/** @type {number} */ i) => ({ path: `${list}[${i}].faces`, label: t.goods.faces, kind: /** @type {'choice'} */ ('choice'), options: /** @type {[string, string][]} */ ([['', t.goods.oneFace], ['2', t.goods.bothFaces]]) })] : []),
    ],
    said: (row, _length, props) => sentence(
      row.name || t.goods.unnamed,
      (row.containers ?? []).map((/** @type {any} */ c) => `${c.volume} ${props.volume} ${money(props, c.price)}`).join(', '),
      Number(row.onHand) > 0 ? `${row.onHand} ${props.volume} ${t.goods.onHand}` : '',
    ),
  };
}
