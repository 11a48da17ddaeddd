// @ts-check
/** The end of the job: the batch is booked as made, what was spoiled with it, and each piece gets the id to write on it. */

import { Refused } from '../api/http.js';
import * as studio from '../api/studio.js';
import { reader } from '../model/numbers.js';
import { t } from '../texts/index.js';
import { h, refill, say } from './dom.js';

/** @param {import('./days.js').DayProps} props */
export function made(props) {
  const { plan } = props;
  const place = h('div');
  const said = h('p', { role: 'status' });
  const section = h('section', { class: 'made', 'aria-labelledby': 'made-head' }, h('h3', { id: 'made-head' }, t.made.head), place, said);
  const counts = new Map(plan.panels.filter((/** @type {any} */ line) => line.made > 0).map((/** @type {any} */ line) => [line.mark, spoiledInput(line.made, { 'data-mark': line.mark })]));
  const sheets = new Map(plan.sheets.map((/** @type {any} */ sheet) => [sheet.number, spoiledInput(sheet.copies, { 'data-spoiled-sheet': sheet.number })]));

  const book = async () => {
    const some = (/** @type {Map<any, any>} */ inputs, /** @type {string} */ name) => [...inputs].map(([key, input]) => ({ [name]: key, count: Number(input.value) || 0 })).filter((one) => one.count > 0);
    await attempt(said, async () => {
      show(await studio.cut(plan.id, some(counts, 'mark'), some(sheets, 'sheet')));
      place.querySelector('strong')?.focus();
    });
    await renew();
  };
  const undo = async () => {
    await attempt(said, async () => {
      await studio.undoCut(plan.id);
      show(null);
      place.querySelector('.book')?.focus();
    });
    await renew();
  };
  // What the browser keeps of it is as it is now: without the network a booking is still there.
  const renew = () => attempt(said, async () => void await studio.cutOf(plan.id), true);

  /** @param {any} booking */
  function show(booking) {
    say(said, '');
    refill(place, ...(booking ? booked(props, booking, undo) : [
      h('p', {}, t.made.hint),
      h('details', {}, h('summary', {}, t.made.spoiled), 
        h('p', { class: 'hint' }, t.made.sheetHint),
        h('ul', { class: 'spoiled' }, ...[...counts].map(([mark, input]) => spoiledLine(input, t.made.of(mark))), ...[...sheets].map(([number, input]) => spoiledLine(input, t.made.ofSheet(number))))),
      h('button', { type: 'button', class: 'book', onclick: book }, t.made.book),
    ]));
  }

  show(null);
  void attempt(said, async () => {
    const booking = await studio.cutOf(plan.id);
    if (booking) show(booking);
  }, true);
  return section;
}

/** @param {number} most @param {Record<string, any>} named */
const spoiledInput = (most, named) => h('input', { type: 'number', min: 0, max: most, value: 0, inputmode: 'numeric', ...named });

/** @param {any} input @param {string} words */
const spoiledLine = (input, words) => h('li', {}, input.parentElement ?? h('label', {}, input, ` ${words}`));

/** @param {import('./days.js').DayProps} props @param {any} booking @param {() => void} undo */
function booked(props, booking, undo) {
  const when = new Date(booking.at).toLocaleString(reader(), { dateStyle: 'medium', timeStyle: 'short' });
  const { entered, replacements } = booking;
  return [
    h('p', {}, h('strong', { tabindex: -1 }, t.made.booked(when))),
    entered.length > 0 && h('p', {}, t.made.write),
    h('ul', { class: 'slip heaps' }, ...entered.map((/** @type {any} */ heap) => h('li', {}, h('strong', { class: 'pencil' }, heap.id), ' ', heapSaid(heap, props.numbers)))),
    replacements && h('p', {}, h('button', { type: 'button', onclick: () => props.openOrder(replacements) }, t.made.replace)),
    h('button', { type: 'button', class: 'quiet', onclick: undo }, t.made.undo),
  ];
}

/** A heap in words: how many of what size. @param {any} heap @param {import('../model/numbers.js').Numbers} numbers */
export function heapSaid(heap, numbers) {
  const size = heap.volume !== undefined ? numbers.volume(heap.volume) : numbers.size(heap.width, heap.height ?? heap.length);
  const count = (heap.count ?? 1) === 1 ? '' : `${heap.count} ${t.make.of} `;
  return [`${count}${size}`, t.shelf.sorts[/** @type {'board'} */ (heap.sort)], heap.name ?? heap.kind ?? '', heap.mark ?? ''].filter(Boolean).join(', ');
}

/** Does it, and says what went wrong. @param {Element} said @param {() => Promise<void>} work @param {boolean} [quietly] */
export async function attempt(said, work, quietly = false) {
  try {
    await work();
  } catch (fault) {
    if (!(fault instanceof Refused)) throw fault;
    if (!quietly) say(said, inWords(fault.problem));
  }
}

/** What is wrong field by field says more than that something is. @param {import('../api/http.js').Problem} problem */
function inWords({ title, type, detail = '', errors = {}, missing = [] }) {
  if (title === 'unreachable') return t.wrong.unreachable;
  const faults = Object.values(errors).flat().map(t.fault);
  if (faults.length > 0) return faults.join(' ');
  return [t.problem(type) || `${title} ${detail}`, ...missing.map((/** @type {any} */ one) => one.text)].join(' ').trim();
}
