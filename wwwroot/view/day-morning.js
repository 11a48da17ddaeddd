// @ts-check
/** Day 4: out of the press, trim, look over. */

import { t } from '../texts/index.js';
import { h, table } from './dom.js';
import { tick } from './tick.js';

/** @param {import('./days.js').DayProps} props */
export function morning(props) {
  const { plan, numbers } = props;
  const glued = plan.panels.filter((/** @type {any} */ p) => p.surface === 'cloth' && p.made > 0 && !plan.benchPlan.mountLater.includes(p.mark));
  const trim = glued.map((/** @type {any} */ p) => h('li', {}, tick(props, `trim-${p.mark}`,
    h('strong', { class: 'amount' }, `${p.made} × ${p.mark}`), ' ', `${t.morning.to} ${numbers.size(p.cutWidth, p.cutHeight)}`)));
  const steps = Object.entries(t.morning.steps).filter(([name]) => glued.length > 0 || name === 'seal' || name === 'mark');
  return [
    ...(trim.length > 0 ? [h('h3', {}, t.morning.trim), h('ul', { class: 'slip' }, ...trim)] : []),
    h('h3', {}, t.morning.check),
    h('ul', { class: 'slip' }, ...steps.map(([name, text]) => h('li', {}, tick(props, `check-${name}`, text)))),
    h('p', { class: 'hint' }, t.morning.hint),
    ...strength(props),
  ];
}

/** What the panels weigh and bear: one line for each and for each board. @param {import('./days.js').DayProps} props */
function strength(props) {
  const { plan, numbers } = props;
  if (plan.strength.length === 0) return [];
  const words = t.morning.strength;
  const past = plan.strength.some((/** @type {any} */ one) => !one.withinTheory);
  return [
    h('h3', {}, words.head),
    h('div', { class: 'strength', tabindex: 0, role: 'group', 'aria-label': words.head }, table(words.columns, alike(plan.strength.map((/** @type {any} */ one) => [
      calledOf(one, plan, numbers), numbers.weight(one.weight), sags(one.sag, one.sagUnderHand, one, numbers), numbers.fine(one.allowed), one.cornerSag === undefined ? '–' : sags(one.cornerSag, one.cornerSagUnderHand, one, numbers),
      `${numbers.fine(one.leastThickness)} (${whole(numbers.length(one.thumbThickness))})`, numbers.fine(one.bow), advice(one, numbers)])))),
    h('p', { class: 'hint' }, words.hint, ' ', past && `${words.past} `, words.batch(numbers.weight(plan.weights.batch)), plan.weights.pack > 0 ? ` ${words.pack(numbers.weight(plan.weights.pack))}` : ''),
    ...stiffening(props),
  ];
}

/** A line by its mark, and by its board's thickness where its panels are cut from several. @param {any} one @param {any} plan @param {import('../model/numbers.js').Numbers} numbers */
function calledOf(one, plan, numbers) {
  const several = plan.strength.some((/** @type {any} */ other) => other.mark === one.mark && other.thickness !== one.thickness);
  return several ? `${one.mark}, ${whole(numbers.length(one.thickness))}` : one.mark;
}

/** Rows that say the same stand once: a sheet and an offcut of it bear alike. @param {string[][]} rows */
const alike = (rows) => [...new Map(rows.map((row) => [row.join('|'), row])).values()];

/** A figure that no line break parts. @param {string} text */
const whole = (text) => text.replaceAll(' ', '\u00a0');

/** By itself, and under a hand. Past half its thickness a panel stretches as well as bends, and gives less than this. @param {number} alone @param {number} hand @param {any} one @param {import('../model/numbers.js').Numbers} numbers */
const sags = (alone, hand, one, numbers) => `${numbers.fine(alone)}; ${hand > one.thickness / 2 ? '≤\u00a0' : ''}${numbers.fine(hand)}`;

/** What is to be done about it, and which way its grain runs. @param {any} one @param {import('../model/numbers.js').Numbers} numbers */
function advice(one, numbers) {
  const words = t.morning.strength;
  const strips = one.cradle?.strips.map((/** @type {any} */ s) => whole(`${s.count} × ${numbers.length(s.length)}`)).join(', ');
  const said = one.cradle?.made ? words.cradled(strips)
    : one.braceIt ? (strips ? words.brace(strips) : words.thicker)
      : one.thumbBraces ? words.thumb : words.stiff;
  return one.grain ? `${said}; ${words.grain[/** @type {'unknown'} */ (one.grain)]}` : said;
}

/** Panels that sag too much: the strips that brace them, what these add and what a thicker board would; and a button that puts them in. @param {import('./days.js').DayProps} props */
function stiffening({ plan, numbers, brace }) {
  const ways = plan.stiffening;
  if (!ways) return [];
  const words = t.morning.strength;
  /** @type {Map<number, number>} */
  const lengths = new Map();
  for (const { length, count } of ways.pieces ?? []) lengths.set(length, (lengths.get(length) ?? 0) + count);
  const pieces = [...lengths].sort(([a], [b]) => b - a).map(([length, count]) => whole(`${count} × ${numbers.length(length)}`)).join(', ');
  const adds = (/** @type {number} */ sum) => (sum < 0 ? words.saves(numbers.money(-sum)) : words.adds(numbers.money(sum)));
  return [h('div', { class: 'stiffening' },
    h('p', {}, h('strong', {}, words.sag(ways.marks.join(', '))), pieces && ` ${words.strips(pieces)}`, ' ', ways.strips === undefined ? words.noStrips : `${words.stripsCost} ${adds(ways.strips)}.`, ' ',
      ways.thicker === undefined ? words.noThicker : `${words.thickerCost} ${adds(ways.thicker)}.`, ways.cheaper ? ` ${words.cheaper[/** @type {'strips'} */ (ways.cheaper)]}` : ''),
    pieces && h('button', { type: 'button', class: 'brace', onclick: brace }, words.put))];
}
