// @ts-check
/**
 * The saw run one setting at a time, large enough for a phone propped at the saw: the distance, the cuts lit on
 * their sheets, the cautions. The screen stays awake where the browser allows it; nothing is fetched, so a network
 * that drops changes nothing.
 */

import { unparted } from '../model/measures.js';
import { cutsOf } from '../model/plan.js';
import { t } from '../texts/index.js';
import { h, refill, say, set } from './dom.js';

/**
 * @param {import('./days.js').DayProps} props
 * @param {Element} sheets the figures, drawn already
 * @param {(step: any, done: boolean) => void} tick
 * @param {(step: any) => Node[]} said which cuts, and which edge goes to the fence
 */
export function standAtSaw(props, sheets, tick, said) {
  const run = props.plan.sawRun;
  let at = Math.max(0, run.findIndex((/** @type {any} */ step) => !props.ticks[`saw${step.step}`]));
  const place = h('span', { class: 'stand-place' });
  const size = h('p', { class: 'stand-size' });
  const cuts = h('p', { class: 'stand-cuts' });
  const cautions = h('div', { class: 'stand-cautions' });
  const pictures = h('div', { class: 'stand-sheets' });
  const again = h('div', { class: 'stand-cautions' });
  const back = h('button', { type: 'button', onclick: () => go(-1) }, t.saw.back);
  const next = h('button', { type: 'button', class: 'go', onclick: () => go(1) }, t.saw.next);
  const close = h('button', { type: 'button', class: 'quiet', onclick: () => dialog.close() }, t.saw.close);
  const dialog = h('dialog', { class: 'large stand', 'aria-labelledby': 'stand-head', onclose: end, onkeydown: keys },
    h('div', { class: 'large-bar' }, h('strong', { id: 'stand-head' }, t.saw.run), place, close),
    h('div', { class: 'stand-step', role: 'group', tabindex: 0, 'aria-live': 'polite', 'aria-labelledby': 'stand-head' }, size, cuts, cautions, pictures, again),
    h('div', { class: 'stand-bar' }, back, next));
  const awake = stayAwake();

  function show() {
    const step = run[at];
    const tool = step.tool === 'sled' ? t.saw.sled : t.saw.fence;
    say(place, t.saw.stepOf(at + 1, run.length));
    refill(size, h('span', { class: 'stand-tool' }, tool), ' ', props.numbers.length(step.fence));
    refill(cuts, ...said(step));
    // What is new at this setting stands above the drawing; what still holds from before, below it.
    const before = new Set(run.slice(0, at).flatMap((/** @type {any} */ one) => one.cautions.map((/** @type {any} */ c) => c.id)));
    const [old, fresh] = [true, false].map((known) => step.cautions.filter((/** @type {any} */ c) => before.has(c.id) === known));
    refill(cautions, ...fresh.map(caution));
    refill(again, ...old.map(caution));
    refill(pictures, ...cutsOf(step).map(([sheet, numbers]) => picture(sheets, sheet, numbers)));
    set(back, { disabled: at === 0 });
    say(next, at === run.length - 1 ? t.saw.finish : t.saw.next);
  }

  /** @param {number} way */
  function go(way) {
    if (way > 0) tick(run[at], true);
    if (way > 0 && at === run.length - 1) dialog.close();
    at = Math.min(run.length - 1, Math.max(0, at + way));
    show();
  }

  /** @param {KeyboardEvent} event */
  function keys(event) {
    if (event.key === 'ArrowRight') go(1);
    if (event.key === 'ArrowLeft') go(-1);
  }

  function end() {
    awake.release();
    dialog.remove();
  }

  document.body.append(dialog);
  dialog.showModal();
  next.focus();
  show();
}

/** @param {any} one */
const caution = (one) => h('p', { class: 'caution' }, unparted(t.said(one)));

/** A sheet with these cuts lit. @param {Element} sheets @param {number} sheet @param {number[]} numbers */
function picture(sheets, sheet, numbers) {
  const drawing = /** @type {Element | undefined} */ (sheets.querySelector(`[data-sheet="${sheet}"] svg.drawing`)?.cloneNode(true));
  drawing?.querySelectorAll('.cut').forEach((cut) => set(cut, { 'data-lit': numbers.includes(Number(cut.getAttribute('data-cut'))) ? true : null }));
  return h('div', { class: 'drawing-place', 'data-lighting': true }, drawing);
}

/** Keeps the screen on, and asks again when the page comes back to view. */
function stayAwake() {
  /** @type {any} */
  let lock = null;
  let over = false;
  const ask = async () => {
    if (over || document.hidden || !('wakeLock' in navigator)) return;
    try {
      const granted = await navigator.wakeLock.request('screen');
      // Left in the meantime: then nobody else would let it go.
      if (over) void granted.release();
      else {
        void lock?.release();
        lock = granted;
      }
    } catch (fault) {
      // A browser may refuse, on low battery for instance: then the screen dims, and that is all.
      if (!(fault instanceof DOMException)) throw fault;
    }
  };
  document.addEventListener('visibilitychange', ask);
  void ask();
  return {
    release() {
      over = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    },
  };
}
