// @ts-check
/** Day 3: cut the cloth, have glue and ground ready, fill the press. */

import { Refused } from '../api/http.js';
import { benchLater } from '../api/studio.js';
import { clothOf, nameOf, press } from '../model/plan.js';
import { reader } from '../model/numbers.js';
import { t } from '../texts/index.js';
import { h, refill, say } from './dom.js';
import { figure, narrow } from './drawing.js';
import { tick } from './tick.js';

/** @param {import('./days.js').DayProps} props */
export function bench(props) {
  const content = [...care(props), ...cloth(props), ...liquids(props), ...stacks(props), ...schedule(props), ...later(props)];
  return content.length > 0 ? content : [h('p', {}, t.bench.nothing)];
}

/** @param {import('./days.js').DayProps} props */
function cloth({ plan, order }) {
  if (plan.cloth.length === 0) return [];
  return [
    h('h3', {}, t.bench.cloth),
    h('div', { class: 'cloths' }, ...plan.cloth.map((/** @type {any} */ one) => figure(
      one.drawing, `${one.number}${t.colon}${t.bench.copies(one.copies)}, ${clothOf(order, one, plan)}`, one.svg, narrow.matches))),
  ];
}

/** What matters in this batch, and only that. @param {import('./days.js').DayProps} props */
function care({ plan }) {
  if (plan.care.length === 0) return [];
  return [
    h('h3', {}, t.bench.careHead),
    h('ul', { class: 'notes' }, ...plan.care.map((/** @type {any} */ one) => h('li', {}, /** @type {Record<string, string>} */ (t.bench.care)[one.id] ?? one.text))),
  ];
}

/** When it is done, as bars over days. @param {import('./days.js').DayProps} props */
function schedule({ plan, order }) {
  const { schedule: days } = plan.benchPlan;
  if (!days || days.jobs.length === 0) return [];
  return [
    h('div', { class: 'together' }, h('h3', {}, t.bench.days), h('p', {}, finished(plan.benchPlan)), figure(days.drawing, t.bench.bars, undefined, true)),
    h('p', { class: 'tools' }, h('a', { href: `/api/plans/${encodeURIComponent(plan.id)}/calendar.ics${zoneOf(order)}`, download: '' }, t.bench.calendar)),
  ];
}

/** Nine in the morning is meant where the browser is, unless the ticket names a zone: the service alone would take UTC. @param {any} order */
function zoneOf(order) {
  const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
  const known = timeZone && timeZone !== 'Etc/Unknown' && !order.schedule?.zone;
  return known ? `?${new URLSearchParams({ zone: timeZone })}` : '';
}

/** What was left to be mounted another day, planned when it is wanted. @param {import('./days.js').DayProps} props */
function later(props) {
  const { plan } = props;
  const { mountLater } = plan.benchPlan;
  if (mountLater.length === 0) return [];
  const place = h('div', { role: 'status' });
  const ask = async () => {
    try {
      const bench = await benchLater(plan.id);
      refill(place, ...weights(props, bench.stacks, 'later'), bench.schedule && h('p', {}, finished(bench)));
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
      say(place, fault.problem.title === 'unreachable' ? t.wrong.unreachable : t.problem(fault.problem.type) || fault.problem.detail || fault.problem.title);
    }
  };
  return [h('div', { class: 'later' }, h('p', {}, t.bench.later(mountLater.join(', ')), ' ', h('button', { type: 'button', onclick: ask }, t.bench.mountNow)), place)];
}

/** When all is over, and whether sooner is possible. @param {any} bench */
function finished({ schedule: days, scheduleProof: proof }) {
  const { date, day } = days.finish;
  const at = date ? new Date(`${date}T12:00`).toLocaleDateString(reader(), { weekday: 'long', day: 'numeric', month: 'long' }) : t.bench.day(day);
  return `${t.bench.done(at, days.finish.time)} ${proof.proven ? t.bench.soonest : t.bench.atMost(String(Math.ceil((proof.finish - proof.leastPossible) / 60)))}`;
}

/** @param {import('./days.js').DayProps} props */
function liquids(props) {
  const { plan, order, numbers } = props;
  if (plan.liquids.length === 0) return [];
  return [
    h('h3', {}, t.bench.glue),
    h('ul', { class: 'slip' }, ...plan.liquids.map((/** @type {any} */ one) => h('li', {}, tick(props, `liquid-${one.id}`,
      h('strong', { class: 'amount' }, numbers.volume(one.needed)), ' ', nameOf(order, one.id, plan),
      h('span', { class: 'at' }, [one.fromHand > 0 && `${numbers.volume(one.fromHand)} ${t.bench.fromHand}`, `${numbers.volume(one.left)} ${t.bench.left}`].filter(Boolean).join(', ')))))),
  ];
}

/** @param {import('./days.js').DayProps} props */
function stacks(props) {
  const { plan, order, numbers } = props;
  const settings = { pressSpaces: Number(order.bench?.pressSpaces ?? 4), stackHeight: Number(order.bench?.stackHeight ?? 10) };
  const now = plan.panels.filter((/** @type {any} */ p) => !plan.benchPlan.mountLater.includes(p.mark));
  const pressed = press({ ...plan, panels: now }, settings);
  if (pressed.stacks === 0) return [];
  return [
    h('h3', {}, t.bench.press),
    h('p', {}, t.bench.rounds(pressed.rounds, String(order.bench?.pressHours ?? 12))),
    h('ul', { class: 'slip' }, ...pressed.lines.map((/** @type {any} */ p) => h('li', {}, tick(props, `press-${p.mark}`,
      h('strong', { class: 'amount' }, `${p.made} × ${p.mark}`), ' ', numbers.size(p.width, p.height),
      h('span', { class: 'at' }, t.bench.stack(p.stacks, settings.stackHeight)))))),
    ...weights(props, plan.benchPlan.stacks, 'weight'),
    h('p', { class: 'hint' }, t.bench.order),
  ];
}

/** @param {import('./days.js').DayProps} props @param {any[]} stacks @param {string} name what the ticks are kept under */
const weights = (props, stacks, name) => [
  h('h4', {}, t.bench.weights),
  h('ul', { class: 'slip' }, ...stacks.map((/** @type {any} */ one) => h('li', {}, tick(props, `${name}-${one.number}`,
    h('strong', { class: 'amount' }, props.numbers.weight(one.weight)), ' ', t.bench.onStack(one.number, props.numbers.size(one.width, one.height)),
    h('span', { class: 'at' }, [one.panels.map((/** @type {any} */ p) => `${p.count} × ${p.mark}`).join(', '), t.bench.layAtOnce(one.perRound), one.first && t.bench.first].filter(Boolean).join(', ')))))),
];
