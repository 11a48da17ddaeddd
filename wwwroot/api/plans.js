// @ts-check
/**
 * Planning over HTTP. A plan is asked for with `Prefer: respond-async`, so that long work can be watched and
 * stopped; a service that answers at once is as welcome.
 *
 * @typedef {import('./http.js').Problem} Problem
 * @typedef {{ spent: number | null, leastPossible: number | null }} Progress
 */

import { JSON_TYPE, Refused, ask, parsed } from './http.js';

export { Refused };

const POLL_MILLISECONDS = 400;

/**
 * @param {any} order as the wire wants it
 * @param {{ onStart: (id: string) => void, onProgress: (progress: Progress) => void, signal: AbortSignal }} watch
 * @returns {Promise<any>} the plan
 */
export async function plan(order, watch) {
  const response = await ask('/api/plans', {
    method: 'POST', body: JSON.stringify(order), headers: { ...JSON_TYPE, Prefer: 'respond-async' }, signal: watch.signal,
  });
  if (response.status !== 202) return response.json();
  const address = response.headers.get('Location') ?? `/api/plans/${(await response.json()).id}`;
  watch.onStart(address);
  await finished(address, watch);
  return read(address);
}

/** A plan of something merely tried: waited for, then dropped. @param {any} order @param {AbortSignal} signal */
export async function tried(order, signal) {
  const answer = await (await ask('/api/plans', { method: 'POST', body: JSON.stringify(order), headers: JSON_TYPE, signal })).json();
  void ask(`/api/plans/${answer.id}`, { method: 'DELETE' });
  return answer;
}

/** A plan by its address. @param {string} address */
export const read = async (address) => settled(await (await ask(address)).json());

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
 * @param {{ onProgress: (progress: Progress) => void, signal: AbortSignal }} watch
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

/** @param {string} address @param {{ onProgress: (progress: Progress) => void, signal: AbortSignal }} watch */
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

/** @param {string} address @param {{ onProgress: (progress: Progress) => void, signal: AbortSignal }} watch */
async function byAsking(address, watch) {
  for (;;) {
    const news = await (await ask(address, { signal: watch.signal })).json();
    if (news.state !== 'planning') return;
    watch.onProgress(news);
    await new Promise((resolve) => setTimeout(resolve, POLL_MILLISECONDS));
  }
}
