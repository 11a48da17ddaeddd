// @ts-check
/** The one button, what it is doing, and what stands in its way. */

import { t } from '../texts/index.js';
import { h, refill, say, set } from './dom.js';

/**
 * @typedef {{ busy: boolean, away: boolean, progress: import('../api/plans.js').Progress | null, problem: import('../api/plans.js').Problem | null, canStop: boolean,
 *   panels: number, hasPlan: boolean, stale: boolean, said: string, numbers: import('../model/numbers.js').Numbers, go: () => void, stop: () => void }} ActProps
 * @param {Element} element @param {ActProps} props
 */
export function mountAct(element, props) {
  const go = h('button', { type: 'button', class: 'go', 'aria-keyshortcuts': 'Control+Enter', title: t.act.shortcut, onclick: () => props.go() });
  const stop = h('button', { type: 'button', onclick: () => props.stop() }, t.act.stop);
  const said = h('p', { class: 'act-said', role: 'status' });
  const meter = h('meter', { min: 0, max: 1, 'aria-hidden': 'true' });
  const skip = h('nav', { class: 'to-days', 'aria-label': t.page.nav }, ...Object.entries(t.days).filter(([, [number]]) => number !== '').map(([name, [number, head]]) => h('a', { href: `#${name}`, title: head }, number, h('span', { class: 'unseen' }, ` ${head}`))));
  element.setAttribute('tabindex', '-1');
  element.append(h('div', { class: 'act-inner' }, go, stop, meter, said, skip));
  const update = (/** @type {ActProps} */ next) => {
    props = next;
    const { busy, hasPlan, stale, progress } = props;
    say(go, hasPlan ? t.act.again : t.act.plan);
    set(go, { 'aria-disabled': String(busy), 'data-fresh': hasPlan && !stale });
    go.hidden = busy;
    stop.hidden = !busy || !props.canStop;
    say(stop, props.away ? t.act.noWait : t.act.stop);
    skip.hidden = !hasPlan || busy;
    meter.hidden = !busy || !progress?.spent;
    if (progress?.spent) meter.value = Math.min(1, (progress.leastPossible ?? 0) / progress.spent);
    say(said, words(props));
  };
  update(props);
  return { update };
}

/** @param {ActProps} props */
function words({ busy, away, progress, panels, hasPlan, stale, said, numbers }) {
  if (!busy) return [hasPlan && stale ? t.act.stale : said, panels === 0 ? '' : t.make.total(panels)].filter(Boolean).join(' ');
  if (away) return t.act.away;
  const spent = typeof progress?.spent === 'number' ? `${t.act.best}: ${numbers.money(progress.spent)}.` : '';
  const least = typeof progress?.leastPossible === 'number' && progress.leastPossible > 0 ? `${t.act.least} ${numbers.money(progress.leastPossible)}.` : '';
  return [t.act.planning, spent, least].filter(Boolean).join(' ');
}

/**
 * What is wrong, in words, with a way to each field.
 * @param {Element} element
 */
export function mountProblem(element) {
  const head = h('h3', { tabindex: -1 }, t.wrong.head);
  const detail = h('p');
  const list = h('ul');
  const box = h('div', { class: 'problem', role: 'alert', hidden: true });
  element.append(box);
  /** @type {any} */
  let shown = null;
  return {
    /** @param {import('../api/plans.js').Problem | null} problem */
    update(problem) {
      if (problem === shown) return;
      shown = problem;
      box.hidden = !problem;
      refill(box);
      if (!problem) return;
      say(detail, plain(problem));
      refill(list, ...Object.entries(problem.errors ?? {}).map(([path, faults]) => fault(path, faults)), ...(problem.lacks ?? []).map(lack), ...lines(problem.marks));
      refill(box, head, detail, list);
    },
  };
}

/** @param {import('../api/plans.js').Problem} problem */
function plain({ title, type, status, detail, errors, marks, lacks = [] }) {
  if (title === 'unreachable') return t.wrong.unreachable;
  if (status === 503) return t.wrong.busy;
  if (status === 404) return t.wrong.lost;
  if (lacks.length > 0) return '';
  // What is listed below need not be said above as well.
  const listed = Object.keys(errors ?? {}).length + (marks?.length ?? 0) > 0;
  return t.problem(type) || (listed ? '' : t.fault(detail ?? title));
}

/** @param {string} path @param {string[]} faults */
function fault(path, faults) {
  const input = /** @type {HTMLElement | null} */ (document.querySelector(`[data-path="${CSS.escape(path)}"], [data-path="${CSS.escape(`${path}[0]`)}"]`));
  const words = `${input ? where(path, input) : /** @type {any} */ (t.goods)[path] ?? path}${t.colon}${faults.map(t.fault).join(' ')}`;
  return input ? h('li', {}, h('a', { href: `#${input.id}`, onclick: (/** @type {Event} */ event) => goTo(event, input) }, words)) : h('li', {}, words);
}

/** "A, width"; "Primed linen, price". @param {string} path @param {HTMLElement} input */
function where(path, input) {
  const label = input.getAttribute('aria-label') ?? document.querySelector(`label[for="${input.id}"]`)?.textContent ?? path;
  const owner = ownerOf(path, input);
  return owner ? `${owner}, ${label}` : label;
}

/** Whose field it is: a line by its mark, whatever has a name by that, another good by its place. @param {string} path @param {HTMLElement} input */
function ownerOf(path, input) {
  const row = /^\w+\[(\d+)\]/.exec(path);
  const called = ['mark', 'name'].map((field) => /** @type {HTMLInputElement | null} */ (document.querySelector(`[data-path="${row?.[0]}.${field}"]`))?.value);
  const head = input.closest('.shelf-of-goods')?.querySelector('h3')?.textContent;
  return input.closest('.line')?.getAttribute('aria-label') || called.find(Boolean) || (row && head ? `${head} ${Number(row[1]) + 1}` : '');
}

/** None of a sort of goods, with a way to where one is added. @param {string} list */
function lack(list) {
  const words = t.wrong.lacks[/** @type {'boards'} */ (list)];
  const add = /** @type {HTMLElement | null} */ (document.querySelector(`[data-list="${list}"] > button`));
  return add ? h('li', {}, h('a', { href: '#act', onclick: (/** @type {Event} */ event) => goTo(event, add) }, words)) : h('li', {}, words);
}

/** @param {Event} event @param {HTMLElement} input */
function goTo(event, input) {
  event.preventDefault();
  for (let box = input.closest('details'); box; box = box.parentElement?.closest('details') ?? null) box.open = true;
  input.focus();
  input.scrollIntoView({ block: 'center' });
}

/** Lines that cannot be made: by mark, or a list of what is missing. @param {any} marks */
function lines(marks) {
  if (!marks) return [];
  const all = Array.isArray(marks) ? marks : Object.entries(marks).map(([mark, missing]) => ({ mark, missing }));
  return all.map((one) => {
    if (typeof one === 'string') return h('li', {}, one);
    const words = `${one.mark}${t.colon}${[one.missing].flat().map((m) => (typeof m === 'string' ? t.fault(m) : JSON.stringify(m))).join(' ')}`;
    const line = /** @type {HTMLElement | null} */ (document.querySelector(`.line[aria-label="${CSS.escape(one.mark)}"] input`));
    return h('li', {}, line ? h('a', { href: `#${line.id}`, onclick: (/** @type {Event} */ event) => goTo(event, line) }, words) : words);
  });
}
