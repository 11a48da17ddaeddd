// @ts-check
/** Wires the page: state to parts, parts to state, the service behind them. Everything else is told what it shows. */

import * as catalogue from './api/catalogue.js';
import { reached } from './api/http.js';
import * as plans from './api/plans.js';
import * as shelf from './api/shelf.js';
import * as studio from './api/studio.js';
import { against, best, changesOf, gainOf } from './model/changes.js';
import { formatByName, seriesOf } from './model/formats.js';
import { numbers } from './model/numbers.js';
import { addLine, changeUnits, emptyOrder, fieldOf, freeMark, fromWire, inLanguage, keyed, lacking, put, at, toWire } from './model/order.js';
import { createStore } from './model/store.js';
import { speak, t } from './texts/index.js';
import { mountAct, mountProblem } from './view/act.js';
import { comeIn, mountLetIn } from './view/door.js';
import { mountLines } from './view/lines.js';
import { layOut, mountHead, offerKinds } from './view/ticket.js';
import { h } from './view/dom.js';
import { mountWrite } from './view/write.js';

const EXAMPLE = 'tern-island';

/** Planning that took longer than this is not repeated unasked. */
const SHORT_MILLISECONDS = 5000;

/** What can go wrong before there is a page: no service. */
const orElse = (/** @type {Promise<any>} */ wanted, /** @type {any} */ instead) => wanted.catch((fault) => {
  if (fault instanceof plans.Refused) return instead;
  throw fault;
});

const ticket = /** @type {HTMLElement} */ (document.getElementById('ticket'));
let remembered = shelf.recall();
const language = remembered?.language ?? 'en';
await speak(language);
const { asked, isNew } = await comeIn(ticket, shelf.forget);
if (isNew) remembered = null;
const [listed, demos, example] = await Promise.all([
  orElse(catalogue.formats(), []), orElse(catalogue.demoNames(), []), remembered ?? orElse(catalogue.demo(EXAMPLE), emptyOrder())]);
const first = remembered ? { ...remembered, order: inLanguage(remembered.order) } : {
  order: fromWire(example),
  way: { series: 'inch', face: '', lying: false, surface: 'cloth' }, decimals: false, language, plan: null, ticks: {}, earlier: [],
};

let kept = true;
const store = createStore(first, (state) => { kept = shelf.keep(state); });
/** @type {{ busy: boolean, away: boolean, progress: any, problem: any, address: string, wish: AbortController | null }} */
const work = { busy: false, away: false, progress: null, problem: null, address: '', wish: null };
/** @type {{ found: any[], wish: AbortController | null }} */
const made = { list: /** @type {any[]} */ ([]) };
const tries = { found: [], wish: null };
const series = seriesOf(listed);

const change = (/** @type {string} */ path, /** @type {any} */ value) => store.change(path, (state) => put(state.order, path, value));
const add = (/** @type {string} */ list, /** @type {any} */ row) => store.change(`add ${list}`, ({ order }) => {
  if (!at(order, list)) put(order, list, []);
  at(order, list).push(keyed(row));
});
const remove = (/** @type {string} */ list, /** @type {string} */ key) => store.change(`remove ${key}`, ({ order }) => {
  put(order, list, at(order, list).filter((/** @type {any} */ row) => row.key !== key));
});
const addLines = (/** @type {any[]} */ lines) => store.change(`lines ${Date.now()}`, ({ order }) => lines.forEach((line) => addLine(order, line)));
const MOST_EARLIER = 40;
/** Another ticket comes on the table; the one that lay there goes on the pile. */
const open = (/** @type {any} */ order) => store.change(`open ${Date.now()}`, (state) => {
  const left = state.order.panels.length > 0 ? [{ title: state.order.title, saved: new Date().toISOString(), order: state.order }] : [];
  const others = (state.earlier ?? []).filter((/** @type {any} */ one) => one.order !== order && JSON.stringify(one.order) !== JSON.stringify(state.order));
  state.earlier = [...left, ...others].slice(0, MOST_EARLIER);
  state.order = order;
});

/** Asks for a plan and shows what comes. */
async function go() {
  if (work.busy) return;
  const order = toWire(store.state().order);
  if (order.panels.length === 0) return;
  tries.wish?.abort();
  tries.found = [];
  const begun = performance.now();
  void parts.days.come();
  Object.assign(work, { busy: true, away: false, progress: null, problem: null, address: '', wish: new AbortController() });
  render();
  try {
    const plan = await plans.plan(order, {
      signal: /** @type {AbortController} */ (work.wish).signal,
      onStart: (address) => { work.address = address; render(); },
      onProgress: (progress) => { work.progress = progress; render(); },
      onAway: (away) => { if (away !== work.away) { work.away = away; render(); } },
    });
    const last = store.state().plan?.document;
    work.busy = false;
    store.change('plan', (state) => Object.assign(state, { plan: { document: plan, order, address: `/api/plans/${plan.id}`, did: last ? against(last, plan) : null }, ticks: {} }));
    done();
    void listPlans();
    if (performance.now() - begun < SHORT_MILLISECONDS) void tryChanges(plan);
  } catch (fault) {
    // Somebody did not want to wait for the service any longer.
    if (work.wish?.signal.aborted) return;
    if (!(fault instanceof plans.Refused)) throw fault;
    work.problem = inFields(fault.problem);
  } finally {
    if (work.busy) {
      work.busy = false;
      render();
    }
  }
  if (work.problem) places.problem.querySelector('h3')?.focus();
}

/** A problem whose faults are named as the fields are. @param {any} problem */
const inFields = (problem) => (!problem.errors ? lacking(problem, store.state().order)
  : { ...problem, errors: Object.fromEntries(Object.entries(problem.errors).map(([path, faults]) => [fieldOf(path, store.state().order), faults])) });

/** Ends the search and keeps the best so far; where nobody answers, ends the wait. */
async function stop() {
  if (work.away) return work.wish?.abort();
  try {
    await plans.stop(work.address);
  } catch (fault) {
    // Gone, or done already: the search tells of both itself.
    if (!(fault instanceof plans.Refused)) throw fault;
  }
}

/** Plans the order again with one thing other, one after the other, where planning is quick. @param {any} before */
async function tryChanges(before) {
  const { order } = store.state();
  const { signal } = tries.wish = new AbortController();
  for (const change of changesOf(order)) {
    const other = structuredClone(order);
    change.edit(other);
    try {
      const gain = gainOf(change, before, await plans.tried(toWire(other), signal));
      if (gain) tries.found = [...tries.found, { change, ...gain }];
    } catch (fault) {
      if (signal.aborted) return;
      // A change that cannot be made, or a busy service: then it is not offered.
      if (!(fault instanceof plans.Refused)) throw fault;
    }
    render();
  }
}

/** Makes a change that was offered, and plans anew. @param {any} change */
function useChange(change) {
  store.change(`use ${change.words}`, (state) => change.edit(state.order));
  void go();
}

/** The plan stands there: let a link find it again. */
function done() {
  history.replaceState(null, '', `#plan=${store.state().plan.document.id}`);
  document.getElementById('plan')?.focus();
}

/** Plans the service has kept, for the list of what can be opened. */
async function listPlans() {
  made.list = await studio.plans(studio.MOST_PLANS).catch((fault) => {
    if (fault instanceof plans.Refused) return made.list;
    throw fault;
  });
  render();
}

/** A link that names a plan opens it. */
async function openLinked() {
  const id = /^#plan=([\w-]+)$/.exec(location.hash)?.[1];
  if (!id || store.state().plan?.document.id === id) return;
  try {
    const [plan, order] = await Promise.all([plans.read(`/api/plans/${id}`), studio.orderOf(id)]);
    if (!plan.sheets) return;
    open(fromWire(order));
    store.change('plan', (state) => Object.assign(state, { plan: { document: plan, order: toWire(state.order), address: `/api/plans/${id}` }, ticks: {} }));
  } catch (fault) {
    if (!(fault instanceof plans.Refused)) throw fault;
    work.problem = fault.problem;
    render();
  }
}

const places = layOut(ticket);
if (asked) places.head.append(mountLetIn(shelf.forget));

/**
 * A part whose modules are fetched when the ticket can be used already. Where that fails, whoever needs it next asks again;
 * with something there to show, the place says so.
 * @template M
 * @param {Element} element @param {() => Promise<M>} fetch the modules @param {(module: M, props: any) => { update: (props: any) => void }} mount
 */
function later(element, fetch, mount) {
  /** @type {{ update: (props: any) => void } | null} */
  let part = null;
  /** @type {any} */
  let told = null;
  /** @type {Promise<void> | null} */
  let coming = null;
  const said = h('div', {}, h('p', { role: 'status' }, t.wrong.unreachable, ' '), h('button', { type: 'button', onclick: () => void come() }, t.wrong.retry));
  const show = async () => {
    const module = await reached(fetch());
    const mounted = mount(module, told);
    said.remove();
    mounted.update(told);
    part = mounted;
  };
  const come = async () => {
    coming ??= show();
    try {
      await coming;
    } catch (fault) {
      if (!(fault instanceof plans.Refused)) throw fault;
      coming = null;
      if (told) element.append(said);
    }
  };
  return {
    come,
    /** @param {any} props */
    update(props) {
      told = props;
      if (part) part.update(props);
      else if (props) void come();
    },
  };
}

/** When what stands there now was painted; a page nobody looks at is not painted. */
const painted = () => new Promise((go) => {
  if (document.hidden) setTimeout(go);
  else requestAnimationFrame(() => setTimeout(go));
});

/** Everything the parts are told, from one state. */
function props() {
  const { order, way, decimals, language, plan, ticks } = store.state();
  const format = numbers(order.units, order.currency, decimals);
  const base = { order, problem: work.problem, change, add, remove, numbers: format, volume: t.volume[/** @type {'inch'} */ (order.units)] };
  const stale = plan !== null && JSON.stringify(plan.order) !== JSON.stringify(toWire(order));
  const panels = order.panels.reduce((/** @type {number} */ sum, /** @type {any} */ row) => sum + (/^\d+$/.test(String(row.quantity ?? '').trim()) ? Number(row.quantity) : 0), 0);
  return {
    base,
    head: {
      ...base, planned: plan?.document.title ?? null, demos, decimals, language, kept, canUndo: store.canUndo(), undo: store.undo, fresh: () => open(emptyOrder()),
      earlier: store.state().earlier ?? [], openEarlier: (/** @type {number} */ i) => open(inLanguage(store.state().earlier[i].order)),
      plans: made.list, openPlan: (/** @type {string} */ id) => { location.hash = `#plan=${id}`; },
      openDemo: async (/** @type {string} */ name) => open(fromWire(await catalogue.demo(name))),
      setUnits: (/** @type {any} */ unit) => store.change('units', (state) => changeUnits(state.order, unit)),
      setDecimals: (/** @type {boolean} */ on) => store.change('decimals', (state) => { state.decimals = on; }),
      setLanguage: (/** @type {string} */ code) => { store.change('language', (state) => { state.language = code; }); location.reload(); },
    },
    rack: { ...base, series, way, setWay: (/** @type {any} */ next) => store.change('way', (state) => Object.assign(state.way, next)), add: (/** @type {any} */ line) => addLines([line]) },
    write: { order, way, named: (/** @type {string} */ name) => formatByName(series, name, way.series), add: addLines },
    lines: { ...base, addOwn: () => add('panels', { mark: freeMark(order), quantity: '1', width: '', height: '', surface: way.surface }) },
    shelf: { order, numbers: format, fromShelf: order.fromShelf === true, setFromShelf: (/** @type {boolean} */ on) => store.change('from shelf', (state) => { state.order.fromShelf = on; }) },
    wishes: { ...base, freeMark: () => freeMark(order) },
    act: {
      ...work, canStop: work.address !== '', stop, go, panels, hasPlan: plan !== null, stale, numbers: format,
      said: plan ? t.act.done(numbers(plan.document.units, plan.document.currency, decimals).money(plan.document.cost.cash)) : '',
    },
    changes: { found: stale ? [] : best(tries.found), numbers: format, use: useChange },
    days: plan && {
      plan: plan.document, order: plan.order, address: plan.address, did: plan.did ?? null, stale, ticks: { ...ticks }, decimals, numbers: numbers(plan.document.units, plan.document.currency, decimals),
      openOrder: (/** @type {any} */ document) => {
        open(fromWire(document));
        // Asked for from the ticket's end: what was asked for stands at its beginning.
        /** @type {HTMLElement | null} */ (places.head.querySelector('[data-path=title]'))?.focus();
      },
      brace: () => { store.change('brace', (state) => put(state.order, 'strength.brace', true)); void go(); },
      tick: (/** @type {string} */ name, /** @type {boolean} */ ticked) => store.change('tick', (state) => { state.ticks[name] = ticked; }),
    },
  };
}

const now = props();
const parts = {
  head: mountHead(places.head, now.head), lines: mountLines(places.lines, now.lines), write: mountWrite(places.write, now.write),
  problem: mountProblem(places.problem), act: mountAct(/** @type {Element} */ (document.getElementById('act')), now.act),
  below: later(places.rack, () => import('./view/below.js'), ({ mountBelow }, props) => mountBelow(places, props)),
  days: later(places.days, () => import('./view/days.js'), ({ mountDays }) => mountDays(places.days)),
};

function render() {
  const next = props();
  offerKinds(next.base.order);
  parts.head.update(next.head);
  parts.lines.update(next.lines);
  parts.write.update(next.write);
  parts.act.update(next.act);
  parts.problem.update(work.problem);
  parts.below.update(next);
  parts.days.update(next.days);
}

offerKinds(now.base.order);
document.addEventListener('keydown', (event) => {
  if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) void go();
});
store.listen(render);
performance.mark('usable');
await painted();
render();
await parts.below.come();
ticket.removeAttribute('aria-busy');
(window.requestIdleCallback ?? setTimeout)(() => void parts.days.come());
window.addEventListener('hashchange', () => void openLinked());
void listPlans();
await openLinked();
// Not every browser offers this, and none does on a plain address of the network: the page is then online only.
if ('serviceWorker' in navigator) void keepForLater();

/** What was fetched before the worker was there is handed to it by name, so that the first visit already works offline. */
async function keepForLater() {
  await navigator.serviceWorker.register('sw.js');
  const { active } = await navigator.serviceWorker.ready;
  await parts.days.come();
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => { document.documentElement.dataset.offline = 'ready'; };
  active?.postMessage([location.pathname, ...performance.getEntriesByType('resource').map((entry) => entry.name)], [port2]);
}
