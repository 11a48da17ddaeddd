// @ts-check
/**
 * Planning over HTTP. A plan is asked for with `Prefer: respond-async, wait=1`, so that long work can be watched and
 * stopped; a service that answers at once is as welcome.
 *
 * @typedef {import('./http.js').Problem} Problem
 * @typedef {{ spent: number | null, leastPossible: number | null }} Progress
 */

import { whole } from '../model/plan.js';
import { JSON_TYPE, Refused, ask, parsed } from './http.js';

export { Refused };

const POLL_MILLISECONDS = 400;

/** How long to leave a service alone that did not answer. */
const AWAY_MILLISECONDS = 2000;

const UNKNOWN = 404;

/** @typedef {{ onStart: (id: string) => void, onProgress: (progress: Progress) => void, onAway: (away: boolean) => void, signal: AbortSignal }} Watch */

/**
 * Asks until there is a plan: a service that goes away in the middle is waited for, and one that comes back without
 * the search (it was restarted) is asked for the same plan again.
 * @param {any} order as the wire wants it @param {Watch} watch
 * @returns {Promise<any>} the plan
 */
export async function plan(order, watch) {
  let found = await begun(order, watch);
  while (typeof found === 'string') found = await followed(found, watch) ?? await patient(() => begun(order, watch), watch);
  return found;
}

/** Asks for a plan. @param {any} order @param {Watch} watch @returns {Promise<any>} the plan, or the address where it will be */
async function begun(order, watch) {
  const response = await ask('/api/plans', {
    method: 'POST', body: JSON.stringify(order), headers: { ...JSON_TYPE, Prefer: 'respond-async, wait=1' }, signal: watch.signal,
  });
  if (response.status !== 202) return whole(await response.json());
  const address = response.headers.get('Location') ?? `/api/plans/${(await response.json()).id}`;
  watch.onStart(address);
  return address;
}

/** Watches a search to its end. @param {string} address @param {Watch} watch @returns {Promise<any>} the plan; null where the service no longer knows of it */
async function followed(address, watch) {
  try {
    await finished(address, watch);
    return await patient(() => read(address), watch);
  } catch (fault) {
    if (!(fault instanceof Refused) || fault.problem.status !== UNKNOWN) throw fault;
    return null;
  }
}

/** Tries again for as long as nobody answers. @template T @param {() => Promise<T>} what @param {Watch} watch @returns {Promise<T>} */
async function patient(what, watch) {
  for (;;) {
    try {
      const answer = await what();
      watch.onAway(false);
      return answer;
    } catch (fault) {
      if (!(fault instanceof Refused) || fault.problem.title !== 'unreachable') throw fault;
      watch.onAway(true);
    }
    await pause(AWAY_MILLISECONDS, watch.signal);
  }
}

/** @param {number} milliseconds @param {AbortSignal} signal ends the wait with its reason */
const pause = (milliseconds, signal) => new Promise((resolve, reject) => {
  const end = () => reject(signal.reason);
  signal.addEventListener('abort', end, { once: true });
  setTimeout(() => {
    signal.removeEventListener('abort', end);
    resolve(undefined);
  }, milliseconds);
});

/** A plan of something merely tried: the service keeps nothing of it. @param {any} order @param {AbortSignal} signal */
export const tried = async (order, signal) =>
  (await ask('/api/plans?keep=false', { method: 'POST', body: JSON.stringify(order), headers: JSON_TYPE, signal })).json();

/** A plan by its address. @param {string} address */
export const read = async (address) => whole(settled(await (await ask(address)).json()));

/** Ends the search and keeps the best plan so far. @param {string} address */
export const stop = (address) => ask(`${address}/stop`, { method: 'POST' });

/** A drawing's text. @param {string} address */
export const drawing = async (address) => (await ask(address)).text();

/** @param {any} question */
export const yieldOf = async (question) =>
  (await ask('/api/yield', { method: 'POST', body: JSON.stringify(question), headers: JSON_TYPE })).json();

/** The service's defaults and where they come from. */
export const practice = async () => (await ask('/api/practice')).json();

/** @param {any} document */
function settled(document) {
  if (document.state === 'failed') throw new Refused(document.problem ?? { title: 'failed' });
  return document;
}

/**
 * Waits for the end, by events where they come, else by asking again.
 * @param {string} address
 * @param {Watch} watch
 */
async function finished(address, watch) {
  try {
    await byEvents(address, watch);
  } catch (fault) {
    if (!(fault instanceof EventsLost)) throw fault;
    await byAsking(address, watch);
  }
}

class EventsLost extends Error {}

/** @param {string} address @param {Watch} watch */
function byEvents(address, watch) {
  return new Promise((resolve, reject) => {
    const events = new EventSource(`${address}/progress`);
    const end = (/** @type {() => void} */ then) => {
      events.close();
      then();
    };
    const told = (/** @type {MessageEvent} */ event) => {
      const news = parsed(event.data);
      if (!news) return;
      watch.onProgress(news);
      if (news.state && news.state !== 'planning') end(() => resolve(undefined));
    };
    events.onmessage = told;
    for (const name of ['progress', 'planning', 'done', 'failed', 'stopped', 'state']) events.addEventListener(name, told);
    events.onerror = () => end(() => reject(new EventsLost()));
    watch.signal.addEventListener('abort', () => end(() => reject(watch.signal.reason)));
  });
}

/** @param {string} address @param {Watch} watch */
async function byAsking(address, watch) {
  for (;;) {
    const news = await patient(async () => (await ask(address, { signal: watch.signal, cache: 'no-store' })).json(), watch);
    if (news.state !== 'planning') return;
    watch.onProgress(news);
    await pause(POLL_MILLISECONDS, watch.signal);
  }
}
