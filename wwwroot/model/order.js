// @ts-check
/**
 * The order as it is typed: the wire's shape with what stands in the fields, text for text. Every row of a list
 * has a `key` of its own that never goes out. An empty field is left out, so that the service's default holds.
 *
 * @typedef {Record<string, any> & { key: string }} Row
 * @typedef {{ title: string, units: import('./measures.js').Unit, currency: string, effort: string, panels: Row[], wishes: Row[],
 *   boards: Row[], cloths: Row[], adhesives: Row[], primers: Row[], saw: Record<string, any>, bench: Record<string, any>,
 *   strips: Row[], strength: Record<string, any>, schedule: Record<string, any>, labour: Record<string, any>, overheads: Row[],
 *   fromShelf?: boolean, budget: string, tax: Record<string, any>, shops: Row[], consumables: Row[], tools: Row[] }} Order
 */

import { t } from '../texts/index.js';
import { readLength, withUnit } from './measures.js';

/** What a field's text becomes on the wire. Lengths may stay text: the service reads them as written. */
const LENGTHS = new Set(['width', 'height', 'thickness', 'kerf', 'edgeTrim', 'undersize', 'margin', 'smallestKept', 'smallestCloth', 'selvedge', 'step', 'length',
  'leastFenceLength', 'fenceReach', 'largest', 'carry', 'supplierKerf', 'stripWidth', 'stripDepth', 'cradleInset', 'smallestStrip', 'braceFrom']);
const WORDS = new Set(['title', 'units', 'currency', 'mark', 'surface', 'board', 'cloth', 'id', 'name', 'kind', 'grain', 'warp', 'by', 'adhesive', 'primer', 'effort',
  'shop', 'per', 'mount', 'ground', 'base', 'start', 'from', 'to', 'zone', 'days']);
const PLAIN = /^\d+(?:[.,]\d+)?$/;
/** A number below 0 goes out as one, too: the service then says what the least is, not that this is text. */
const SIGNED = /^[-−]?\d+(?:[.,]\d+)?$/;

let next = 0;

/** A key no other row has. */
export const newKey = () => `r${Date.now().toString(36)}${next++}`;

/** @param {Record<string, any>} row @returns {Row} */
export const keyed = (row) => ({ ...row, key: newKey() });

/**
 * The order as the wire wants it.
 * @param {Order} order
 */
export function toWire(order) {
  const { fromShelf, ...rest } = /** @type {any} */ (order);
  const document = wire(rest, '');
  if (document.bench?.margin) document.bench.margin = marginOut(document.bench.margin);
  if (document.bench?.shrinkage) document.bench.shrinkage = bothWays(document.bench.shrinkage);
  for (const pair of ['faces', 'humidity']) if (document.strength?.[pair]) document.strength[pair] = [0, 1].map((i) => (document.strength[pair][i] === '' ? null : document.strength[pair][i] ?? null));
  for (const line of document.panels ?? []) if (typeof line.cradle === 'string') line.cradle = line.cradle === 'true';
  if (document.schedule?.days?.length === 0) delete document.schedule.days;
  if (document.tax && document.tax.percent === undefined) delete document.tax;
  for (const list of ['shops', 'consumables', 'tools']) if (document[list]?.length === 0) delete document[list];
  if (fromShelf) for (const list of GOODS) delete document[list];
  return document;
}

/** In the fields: left, top, and right and bottom where they differ. On the wire: both sides and both ends, or all four from the top. @param {any[]} margin */
function marginOut(margin) {
  const [left, top, right, bottom] = Array.from({ length: 4 }, (_, i) => (margin[i] === '' ? undefined : margin[i] ?? undefined));
  const [side, end] = [left ?? USUAL_MARGIN, top ?? USUAL_MARGIN];
  return right === undefined && bottom === undefined ? [side, end] : [end, right ?? side, bottom ?? end, side];
}

const USUAL_MARGIN = '1/2 in';

/** One percentage counts for both ways. @param {any[]} pair */
const bothWays = ([width = '', height = '']) => [width === '' ? height : width, height === '' ? width : height];

/** The field a fault on the wire belongs to. @param {string} path @param {Order} order */
export const fieldOf = (path, { bench }) => (bench?.margin?.[2] || bench?.margin?.[3] ? path.replace(/^bench\.margin\[([0-3])\]$/, (_, i) => `bench.margin[${[1, 2, 3, 0][Number(i)]}]`) : path);

/** How the service says of a line that none of these goods serves it. */
const LACK = /** @type {[string, RegExp][]} */ ([['boards', /^no (?!.* between its selvedges).* is at least /], ['cloths', /^no .* between its selvedges/]]);

/**
 * What the ticket has none of is said once, not again of every line.
 * @template {{ marks?: any }} P @param {P} problem @param {Order} order @returns {P & { lacks?: string[] }}
 */
export function lacking(problem, order) {
  if (order.fromShelf || !Array.isArray(problem.marks)) return problem;
  const wanted = { boards: order.panels.some((row) => row.surface !== 'loose'), cloths: order.panels.some((row) => row.surface === 'cloth' || row.surface === 'loose') };
  const none = LACK.filter(([list, words]) => /** @type {any} */ (order)[list].length === 0 && problem.marks.some((/** @type {any} */ one) => words.test(one.missing)));
  // The service plans boards first and says nothing of cloth till there are some.
  const lacks = none.length === 0 ? [] : LACK.map(([list]) => list).filter((list) => wanted[/** @type {'boards'} */ (list)] && /** @type {any} */ (order)[list].length === 0);
  return { ...problem, lacks, marks: problem.marks.filter((/** @type {any} */ one) => !none.some(([, words]) => words.test(one.missing))) };
}

/** @param {any} margin @returns {any[]} */
function marginIn(margin) {
  if (!Array.isArray(margin)) return [margin, margin];
  return margin.length === 4 ? [margin[3], margin[0], margin[1], margin[2]] : margin;
}

/** What an order may leave out: the service then takes it from the studio's shelf. */
export const GOODS = /** @type {const} */ (['boards', 'cloths', 'strips', 'adhesives', 'primers']);

/** What an empty ticket is. @returns {Order} */
export const emptyOrder = () => ({
  title: '', units: 'inch', currency: 'EUR', effort: 'steady', panels: [], wishes: [], boards: [], cloths: [], adhesives: [], primers: [], strips: [],
  saw: {}, bench: {}, strength: {}, schedule: {}, labour: {}, overheads: [], budget: '', tax: {}, shops: [], consumables: [], tools: [],
});

/**
 * An order of the wire as it stands in the fields.
 * @param {any} document
 * @returns {Order}
 */
export function fromWire(document) {
  // Goods left out are the shelf's; a ticket that has none itself says so by an empty list.
  const fromShelf = GOODS.every((list) => document[list] === undefined || document[list] === null);
  const order = { ...emptyOrder(), ...typed(document), ...(fromShelf ? { fromShelf } : {}) };
  if (order.bench.margin) order.bench.margin = marginIn(order.bench.margin);
  if (typeof order.bench.shrinkage === 'string') order.bench.shrinkage = [order.bench.shrinkage, order.bench.shrinkage];
  order.panels.forEach((/** @type {Row} */ row) => { row.mark ??= freeMark(order); });
  return inLanguage(order);
}

const MONEY = new Set(['price', 'shopPrice', 'value', 'worth', 'cost', 'perHour', 'charge', 'freeFrom', 'budget']);

/** @param {any} value @param {string} [name] @returns {any} */
function typed(value, name = '') {
  if (Array.isArray(value)) return value.map((item) => (item !== null && typeof item === 'object' ? keyed(typed(item)) : typed(item)));
  if (value !== null && typeof value === 'object') return Object.fromEntries(Object.entries(value).map(([field, item]) => [field, typed(item, field)]));
  if (typeof value !== 'number') return value;
  return MONEY.has(name) && !Number.isInteger(value) ? value.toFixed(2) : String(value);
}

/**
 * The order with every number as the page's language writes it; what has been given a name keeps it.
 * @param {Order} order @returns {Order}
 */
export const inLanguage = (order) => spelt(order, '');

/** @param {any} value @param {string} name @returns {any} */
function spelt(value, name) {
  if (Array.isArray(value)) return value.map((item) => spelt(item, name));
  if (value !== null && typeof value === 'object') return Object.fromEntries(Object.entries(value).map(([field, item]) => [field, field === 'key' ? item : spelt(item, field)]));
  return typeof value === 'string' && !WORDS.has(name) ? t.typed(value) : value;
}

/** @param {any} value @param {string} name @returns {any} */
function wire(value, name) {
  if (Array.isArray(value)) return value.map((item) => wire(item, name));
  if (value !== null && typeof value === 'object') return wireRow(value);
  if (typeof value !== 'string' || WORDS.has(name)) return value;
  const text = value.trim();
  // What is neither a number nor a length goes out as it is: the service says what is wrong with it.
  if (SIGNED.test(text)) return Number(text.replace(',', '.').replace('−', '-'));
  // The same length is the same order, whatever language it was written in.
  return readLength(text, 'millimetre') === null ? text : text.replace(/(\d),(?=\d)/g, '$1.');
}

/** The fields of a sale that belong to the way it is sold; the others wait in the browser. */
const SALE = /** @type {Record<string, string[]>} */ ({ length: ['by', 'step', 'price', 'priceFrom', 'atMost'], roll: ['by', 'length', 'price', 'priceFrom', 'forSale'], none: [] });

/** @param {Record<string, any>} row */
function wireRow(row) {
  const fields = row.by === undefined ? null : SALE[row.by];
  const entries = Object.entries(row)
    .filter(([name, value]) => name !== 'key' && !empty(value) && (fields?.includes(name) ?? true))
    .map(([name, value]) => [name, wire(value, name)]);
  return Object.fromEntries(entries);
}

/** @param {any} value @returns {boolean} */
function empty(value) {
  return value === null || value === undefined || value.by === 'none' || (typeof value === 'string' && value.trim() === '')
    || (Array.isArray(value) && value.length > 0 && value.every((item) => item === ''));
}

/**
 * The value at a path such as `panels[2].width`.
 * @param {any} root @param {string} path
 */
export function at(root, path) {
  return steps(path).reduce((value, step) => value?.[step], root);
}

/** Sets the value at a path, making what is missing on the way. @param {any} root @param {string} path @param {any} value */
export function put(root, path, value) {
  const way = steps(path);
  const last = /** @type {string} */ (way.pop());
  const owner = way.reduce((here, step, i) => (here[step] ??= /^\d+$/.test(way[i + 1] ?? last) ? [] : {}), root);
  owner[last] = value;
}

/** @param {string} path */
const steps = (path) => path.split(/[.[\]]+/).filter((step) => step !== '');

/**
 * Another unit for bare numbers: those that stand there keep their meaning by getting the old unit.
 * @param {Order} order @param {import('./measures.js').Unit} unit
 */
export function changeUnits(order, unit) {
  const old = order.units;
  /** @type {(value: any, name: string) => any} */
  const walk = (value, name) => {
    if (Array.isArray(value)) return value.map((/** @type {any} */ item) => walk(item, name));
    if (value !== null && typeof value === 'object') {
      return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, walk(item, key)]));
    }
    return LENGTHS.has(name) && typeof value === 'string' && value !== '' ? withUnit(value, old) : value;
  };
  Object.assign(order, walk(order, ''), { units: unit });
  order.saw.heaviest = scaled(order.saw.heaviest, WEIGHT[unit] / WEIGHT[old]);
  order.bench.pressure = scaled(order.bench.pressure, PRESSURE[unit] / PRESSURE[old]);
  if (order.strength) order.strength.load = scaled(order.strength.load, WEIGHT[unit] / WEIGHT[old]);
  for (const liquid of [...order.adhesives, ...order.primers]) changeLiquid(liquid, SQUARE[unit] / SQUARE[old], FLUID[unit] / FLUID[old]);
}

/** Square millimetres, grams and millilitres in one unit of area, weight and volume (NIST SP 811): in² and US fl oz, else cm² and mL. */
const SQUARE = { inch: 645.16, centimetre: 100, millimetre: 100 };
const WEIGHT = { inch: 453.59237, centimetre: 1, millimetre: 1 };
/** Kilopascals in one (NIST SP 811): psi, else kPa. */
const PRESSURE = { inch: 6.894757, centimetre: 1, millimetre: 1 };
const FLUID = { inch: 29.5735295625, centimetre: 1, millimetre: 1 };

/** A bare number in another unit. @param {any} text @param {number} ratio */
const scaled = (text, ratio) => (PLAIN.test(text ?? '') ? roundest(Number(text.replace(',', '.')) / ratio) : text);

const MOST_DIGITS = 6;

/** What six digits may be off by: a number there and back again is then found as it was. */
const OFF = 6e-6;

/** The number with the fewest digits that is as good as this one. @param {number} value */
function roundest(value) {
  for (let digits = 1; digits < MOST_DIGITS; digits++) {
    const near = Number(value.toPrecision(digits));
    if (Math.abs(near - value) <= OFF * value) return t.typed(String(near));
  }
  return t.typed(String(Number(value.toPrecision(MOST_DIGITS))));
}

/** Areas and volumes cannot carry a unit of their own: their numbers change. @param {Row} liquid @param {number} area @param {number} volume */
function changeLiquid(liquid, area, volume) {
  liquid.onHand = scaled(liquid.onHand, volume);
  liquid.coverage = { area: scaled(liquid.coverage?.area, area), volume: scaled(liquid.coverage?.volume, volume) };
  for (const container of liquid.containers ?? []) container.volume = scaled(container.volume, volume);
}

/**
 * Puts a line on the ticket, or more onto one that is alike.
 * @param {Order} order @param {Record<string, any>} line
 */
export function addLine(order, line) {
  const alike = order.panels.find((row) => same(row, line, order.units));
  if (alike) {
    alike.quantity = String(Number(alike.quantity || 0) + Number(line.quantity));
    return;
  }
  order.panels.push(keyed({ mark: freeMark(order), ...line, quantity: String(line.quantity) }));
}

/** @param {Row} row @param {Record<string, any>} line @param {import('./measures.js').Unit} unit */
export function same(row, line, unit) {
  const alike = (/** @type {string} */ name) => (row[name] ?? '') === (line[name] ?? '');
  return readLength(row.width, unit) === readLength(line.width, unit)
    && readLength(row.height, unit) === readLength(line.height, unit)
    && alike('surface') && alike('cloth') && alike('board') && alike('thickness');
}

/** The first of A, B … Z, AA … no line has. @param {Order} order */
export function freeMark(order) {
  const taken = new Set([...order.panels, ...order.wishes].map((row) => row.mark));
  for (let i = 0; ; i++) {
    const mark = i < 26 ? letter(i) : letter(Math.floor(i / 26) - 1) + letter(i % 26);
    if (!taken.has(mark)) return mark;
  }
}

/** @param {number} i */
const letter = (i) => String.fromCharCode(65 + i);
