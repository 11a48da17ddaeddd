// @ts-check
/** Day 2: the saw run, one setting after the other, beside the sheets; the setting at hand is lit on them. */

import { unparted } from '../model/measures.js';
import { cutsOf, edgesOf, nameOf } from '../model/plan.js';
import { t } from '../texts/index.js';
import { h, set, table } from './dom.js';
import { figure, narrow } from './drawing.js';
import { standAtSaw } from './saw-stand.js';
import { strips } from './strips.js';
import { tick } from './tick.js';

/** @param {import('./days.js').DayProps} props */
export function saw(props) {
  const { plan } = props;
  if (plan.sheets.length === 0) return [h('p', {}, t.saw.nothing)];
  const sheets = h('div', { class: 'sheets' }, h('h3', {}, t.saw.sheets), ...plan.sheets.map((/** @type {any} */ sheet) => drawn(sheet, props)));
  const run = h('div', { class: 'run' }, ...atSupplier(props), h('h3', {}, t.saw.run), h('p', { class: 'hint run-hint' }, t.saw.runHint), ...stand(props, sheets), ...fewest(plan), steps(props, sheets), ...tolerances(props));
  return [everyCut(plan), h('div', { class: 'saw-day' }, run, sheets), ...strips(props)];
}

/** What holds for the whole run stands before it: within its first setting it would push the others out of sight. @param {any} plan */
function everyCut(plan) {
  return h('section', { class: 'every-cut', 'aria-labelledby': 'every-cut-head' }, h('h3', { id: 'every-cut-head' }, t.saw.everyCut), h('p', { class: 'caution-first' }, t.saw.first),
    h('ul', {}, ...general(plan).map((one) => h('li', { class: 'caution' }, unparted(t.said(one))))));
}

/** Cautions that are about no one cut; the service says them with the first setting. @param {any} plan @returns {any[]} */
const general = ({ sawRun: [first] }) => (first?.cautions ?? []).filter((/** @type {any} */ one) => !one.here);

/** The way to the run one setting at a time; a tick made there shows here too. @param {import('./days.js').DayProps} props @param {Element} sheets */
function stand(props, sheets) {
  if (props.plan.sawRun.length === 0) return [];
  const done = (/** @type {any} */ step, /** @type {boolean} */ on) => {
    const box = /** @type {HTMLInputElement | null} */ (document.querySelector(`[data-step="${step.step}"] input`));
    if (box) box.checked = on;
    props.ticks[`saw${step.step}`] = on;
    props.tick(`saw${step.step}`, on);
  };
  return [h('button', { type: 'button', class: 'stand-button', onclick: () => standAtSaw(props, sheets, done, passesSaid) }, t.saw.stand)];
}

/** @param {any} sheet @param {import('./days.js').DayProps} props */
function drawn(sheet, { plan, order }) {
  const name = `${t.saw.sheet} ${sheet.number}${t.colon}${t.saw.copies(sheet.copies)}, ${nameOf(order, sheet.board, plan)}, ${t.saw.pieces(sheet.pieces.length)}`;
  const element = figure(sheet.drawing, name, sheet.svg, narrow.matches);
  set(element, { 'data-sheet': sheet.number, id: `sheet-${sheet.number}` });
  return element;
}

/** How few settings, whether fewer would do, the slip to print, and which panels do not all match. @param {any} plan */
function fewest(plan) {
  if (!plan.sawProof || plan.sawRun.length === 0) return [];
  const { settings, steps: count, proven, leastPossible } = plan.sawProof;
  const said = h('p', { class: 'hint' }, t.saw.settings(settings, count), ' ', proven ? t.saw.fewest : t.saw.atLeast(leastPossible), ' ',
    slips(plan, 'saw-run', t.saw.slip));
  if (plan.unmatched.length === 0) return [said];
  const marks = plan.unmatched.map((/** @type {any} */ one) => t.saw.inSide(one.otherwise, one.mark, t.saw.side[/** @type {'width'} */ (one.side)])).join(', ');
  return [said, h('p', { class: 'hint' }, t.saw.unmatched(marks))];
}

/** Cuts made where the board is bought: they come before the run. @param {import('./days.js').DayProps} props */
function atSupplier({ plan, order, numbers }) {
  /** @type {[any, any[]][]} */
  const all = plan.sheets.map((/** @type {any} */ s) => [s, s.cuts.filter((/** @type {any} */ c) => c.by === 'supplier')]);
  const sheets = all.filter(([, cuts]) => cuts.length > 0);
  if (sheets.length === 0) return [];
  return [h('section', { class: 'supplier' }, h('h3', {}, t.saw.supplier), h('p', { class: 'hint' }, t.saw.supplierLead, ' ', slips(plan, 'supplier-slip', t.saw.supplierSlip)),
    ...sheets.flatMap(([sheet, cuts]) => [
      h('h4', {}, `${t.saw.sheet} ${sheet.number}: ${t.saw.copies(sheet.copies)}, ${nameOf(order, sheet.board, plan)}`),
      h('ol', {}, ...cuts.map((cut) => h('li', {}, supplierCut(cut, numbers)))),
    ]))];
}

/** @param {any} cut @param {import('./days.js').DayProps['numbers']} numbers */
function supplierCut(cut, numbers) {
  const { x, y, width, height } = cut.workpiece;
  const distance = cut.axis === 'x' ? cut.at - x : cut.at - y;
  return `${numbers.length(width)} × ${numbers.length(height)}: ${numbers.length(distance)} ${t.saw.from[/** @type {'x'} */ (cut.axis)]}`;
}

/** A slip to print, on either paper. @param {any} plan @param {string} name @param {string} words */
function slips(plan, name, words) {
  const address = `/api/plans/${encodeURIComponent(plan.id)}/${name}.svg?lang=${t.language}`;
  return h('span', {}, h('a', { href: address, target: '_blank' }, words), ' (', h('a', { href: `${address}&paper=letter`, target: '_blank' }, t.saw.slipLetter), ')');
}

/** How true every line's panels come out, and whether they go into their frames. @param {import('./days.js').DayProps} props */
function tolerances({ plan, numbers }) {
  if (!plan.tolerances?.length) return [];
  const fine = (/** @type {number} */ length) => `± ${numbers.length(length)}`;
  const verdict = (/** @type {any} */ one) => (one.fits ? (one.hidesGap ? t.saw.fits : t.saw.gap) : t.saw.fitsNot);
  return [h('details', { class: 'tolerances' }, h('summary', {}, t.saw.tolerance), h('p', { class: 'hint' }, t.saw.toleranceHint),
    table(t.saw.toleranceHead, plan.tolerances.map((/** @type {any} */ one) => [one.mark, fine(one.width), fine(one.height), numbers.fine(one.outOfSquare), verdict(one)])))];
}

/** @param {import('./days.js').DayProps} props @param {Element} sheets */
function steps(props, sheets) {
  const list = h('ol', { class: 'steps' });
  /** @type {Set<string>} */
  const warned = new Set(general(props.plan).map((one) => one.text));
  props.plan.sawRun.forEach((/** @type {any} */ step) => list.append(stepLine(step, props, warned, () => light(list, sheets, step))));
  sheets.addEventListener('drawn', (event) => relight(list, /** @type {Element} */ (event.target), props.plan));
  return list;
}

/** "Sheet 1: cuts 3, 4 · right edge to the fence, factory": a line for each edge. @param {any} step */
const passesSaid = (step) => edgesOf(step).map(({ edge, edgeBy, cuts }) => h('span', { class: 'pass' },
  h('span', { class: 'cuts' }, cuts.map(t.saw.cutsSaid).join('; ')), edge && ` · ${t.saw.edge(edge, step.tool, edgeBy === 'factory')}`));

/** @param {any} step @param {import('./days.js').DayProps} props @param {Set<string>} warned @param {() => void} show */
function stepLine(step, props, warned, show) {
  const head = t.saw.setting(step.tool === 'sled' ? t.saw.sled : t.saw.fence, props.numbers.length(step.fence));
  const cuts = passesSaid(step);
  // A caution is read out in full the first time; after that its box says it still holds.
  const cautions = step.cautions.filter((/** @type {any} */ c) => !warned.has(c.text));
  cautions.forEach((/** @type {any} */ c) => warned.add(c.text));
  return h('li', { class: 'step', 'data-step': step.step },
    h('button', { type: 'button', class: 'setting', 'aria-pressed': 'false', onclick: show }, h('span', { class: 'setting-size' }, head), h('span', { class: 'setting-cuts' }, ...cuts)),
    doneTick(props, step, head),
    ...cautions.map((/** @type {any} */ c) => h('p', { class: 'caution' }, unparted(t.said(c)))));
}

/** Read out alone, one box to tick has to say which it is. @param {import('./days.js').DayProps} props @param {any} step @param {string} head */
function doneTick(props, step, head) {
  const label = tick(props, `saw${step.step}`, t.saw.done);
  set(/** @type {Element} */ (label.querySelector('input')), { 'aria-label': `${head}, ${t.saw.done}` });
  return label;
}

/** Lights a setting's cuts on their sheets; the same again puts it out. @param {Element} list @param {Element} sheets @param {any} step */
function light(list, sheets, step) {
  const mine = list.querySelector(`[data-step="${step.step}"] .setting`);
  const on = mine?.getAttribute('aria-pressed') !== 'true';
  list.querySelectorAll('.setting').forEach((button) => set(button, { 'aria-pressed': String(on && button === mine) }));
  show(sheets, on ? step : null);
  const first = on && sheets.querySelector('[data-lit]');
  if (first) first.closest('figure')?.scrollIntoView({ block: 'nearest', behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth' });
}

/** A drawing that comes late shows the setting chosen before. @param {Element} list @param {Element} figure @param {any} plan */
function relight(list, figure, plan) {
  const number = list.querySelector('[aria-pressed="true"]')?.closest('.step')?.getAttribute('data-step');
  const step = number && plan.sawRun.find((/** @type {any} */ one) => String(one.step) === number);
  if (step) showOn(figure, step, new Map(cutsOf(step)));
}

/** @param {Element} sheets @param {any} step */
function show(sheets, step) {
  const bySheet = new Map(step ? cutsOf(step) : []);
  sheets.querySelectorAll('figure').forEach((figure) => showOn(figure, step, bySheet));
}

/** @param {Element} figure @param {any} step @param {Map<number, number[]>} bySheet */
function showOn(figure, step, bySheet) {
  const cuts = bySheet.get(Number(figure.getAttribute('data-sheet')));
  set(figure, { 'data-lighting': step && cuts ? true : null });
  figure.querySelectorAll('.cut').forEach((cut) => set(cut, { 'data-lit': cuts?.includes(Number(cut.getAttribute('data-cut'))) ? true : null }));
}
