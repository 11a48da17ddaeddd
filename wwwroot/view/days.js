// @ts-check
/** The plan, by the painter's days. Made anew for each plan: nothing in it is edited. */

import { t } from '../texts/index.js';
import { h, refill } from './dom.js';
import { bench } from './day-bench.js';
import { errand } from './day-errand.js';
import { morning } from './day-morning.js';
import { rack } from './day-rack.js';
import { saw } from './day-saw.js';
import { tally } from './day-tally.js';

/**
 * @typedef {{ plan: any, order: any, address: string, did: { saved: number, sheets: number } | null, stale: boolean, numbers: import('../model/numbers.js').Numbers, decimals: boolean, ticks: Record<string, boolean>, tick: (name: string, done: boolean) => void, openOrder: (order: any) => void, brace: () => void }} DayProps
 */

/** @type {[keyof typeof t.days, (props: DayProps) => Node[]][]} */
const DAYS = [['errand', errand], ['saw', saw], ['bench', bench], ['morning', morning], ['tally', tally], ['rack', rack]];

/** @param {Element} element */
export function mountDays(element) {
  /** @type {any} */
  let shown = null;
  let decimals = false;
  return {
    /** @param {DayProps | null} props */
    update(props) {
      if ((props?.plan ?? null) === shown && (props?.decimals ?? false) === decimals) return;
      shown = props?.plan ?? null;
      decimals = props?.decimals ?? false;
      // Should a day fail, nothing of the plan before may stand under this one's price.
      refill(element);
      refill(element, ...(props ? DAYS.map(([name, content]) => day(name, content(props))) : []));
    },
  };
}

/** A day on the ticket: its number and when in the margin, its work beside. @param {string} name @param {Node[]} content */
function day(name, content) {
  const [number, head, when] = t.days[/** @type {'errand'} */ (name)];
  return h('section', { class: `day day-${name}`, id: name, 'aria-labelledby': `${name}-head` },
    h('div', { class: 'day-head' }, h('span', { class: 'day-number', 'aria-hidden': 'true' }, number), h('h2', { id: `${name}-head` }, head), h('p', { class: 'when' }, when)),
    h('div', { class: 'day-work' }, ...content));
}
