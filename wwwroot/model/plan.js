// @ts-check
/** Questions one asks of a plan document (CONTRACT 3): what each day needs, nothing computed anew that the plan says. */

/** @typedef {Record<string, any>} Plan */

/** A plan kept from before a part of it was thought of has that part empty. @param {Plan | null} plan @returns {any} */
export const whole = (plan) => plan && { ...LATER, ...plan };

const LATER = {
  warnings: [], strips: [], unmatched: [], tolerances: [], care: [], strength: [], couldStillMake: [], surplus: [], weights: { batch: 0, pack: 0 },
  benchPlan: { steps: [], stacks: [], mountLater: [], schedule: null, scheduleProof: null },
};

/** What is taken from the rack: boards, remnants, liquids. @param {Plan} plan */
export function fromRack(plan) {
  const boards = plan.sheets.filter((/** @type {any} */ s) => s.source === 'onHand')
    .map((/** @type {any} */ s) => ({ sort: 'board', id: s.board, count: s.copies, width: s.width, height: s.height }));
  const cloth = plan.cloth.filter((/** @type {any} */ c) => c.source === 'onHand')
    .map((/** @type {any} */ c) => ({ sort: 'cloth', id: c.cloth, remnant: c.remnant, count: c.copies, width: c.width, height: c.length }));
  const liquids = plan.liquids.filter((/** @type {any} */ l) => l.fromHand > 0)
    .map((/** @type {any} */ l) => ({ sort: 'liquid', id: l.id, volume: l.fromHand }));
  const strips = plan.strips.filter((/** @type {any} */ s) => s.source === 'onHand')
    .map((/** @type {any} */ s) => ({ sort: 'strip', id: s.strip, count: s.copies, length: s.length }));
  return [...boards, ...strips, ...cloth, ...liquids];
}

/** Leftovers worth keeping, alike ones together. @param {Plan} plan @param {'sheets' | 'cloth'} where */
export function kept(plan, where) {
  /** @type {Map<string, { id: string, width: number, height: number, count: number }>} */
  const found = new Map();
  for (const material of plan[where]) {
    for (const offcut of material.offcuts.filter((/** @type {any} */ o) => o.kept)) {
      const id = material.board ?? material.cloth;
      const height = offcut.height ?? offcut.length;
      // Across the whole cloth a leftover still has its selvedges: it is booked and labelled without them.
      const width = offcut.width === material.width ? offcut.width - 2 * (material.selvedge ?? 0) : offcut.width;
      const name = `${id} ${width} ${height}`;
      const one = found.get(name) ?? { id, width, height, count: 0 };
      one.count += material.copies;
      found.set(name, one);
    }
  }
  return [...found.values()].sort((a, b) => b.width * b.height - a.width * a.height);
}

/** Rests of strips worth keeping, alike ones together. @param {Plan} plan */
export function keptStrips(plan) {
  /** @type {Map<string, { id: string, length: number, count: number }>} */
  const found = new Map();
  for (const { strip, rest, copies } of plan.strips.filter((/** @type {any} */ s) => s.kept)) {
    const one = found.get(`${strip} ${rest}`) ?? { id: strip, length: rest, count: 0 };
    one.count += copies;
    found.set(`${strip} ${rest}`, one);
  }
  return [...found.values()].sort((a, b) => b.length - a.length);
}

/** Waste over all sheets. @param {Plan} plan */
export function waste(plan) {
  const sum = (/** @type {string} */ part) =>
    plan.sheets.reduce((/** @type {number} */ all, /** @type {any} */ s) => all + s.waste[part] * s.copies, 0);
  return { kerf: sum('kerf'), trim: sum('trim'), scrap: sum('scrap') };
}

/**
 * The press: panels of one size share a stack. Plain arithmetic on the bench settings; the days come with the schedule.
 * @param {Plan} plan @param {{ pressSpaces: number, stackHeight: number }} bench
 */
export function press(plan, bench) {
  const lines = plan.panels
    .filter((/** @type {any} */ p) => p.surface === 'cloth' && p.made > 0)
    .map((/** @type {any} */ p) => ({ ...p, stacks: Math.ceil(p.made / bench.stackHeight) }));
  const stacks = lines.reduce((/** @type {number} */ sum, /** @type {any} */ p) => sum + p.stacks, 0);
  return { lines, stacks, rounds: Math.ceil(stacks / bench.pressSpaces) };
}

/** Which cuts a setting makes: sheet number to cut numbers. @param {any} step @returns {[number, number[]][]} */
export function cutsOf(step) {
  /** @type {Map<number, number[]>} */
  const bySheet = new Map();
  for (const pass of step.passes) bySheet.set(pass.sheet, [...(bySheet.get(pass.sheet) ?? []), pass.cut]);
  return [...bySheet].sort(([a], [b]) => a - b);
}

/**
 * The same for reading: sheets that take the same cuts stand together, runs of numbers as "9–18".
 * @param {any} step @returns {{ sheets: string, cuts: string, one: boolean, many: boolean }[]}
 */
export function cutsSaid(step) {
  /** @type {Map<string, number[]>} */
  const alike = new Map();
  for (const [sheet, cuts] of cutsOf(step)) {
    const name = runs(cuts);
    alike.set(name, [...(alike.get(name) ?? []), sheet]);
  }
  return [...alike].map(([cuts, sheets]) => ({ sheets: runs(sheets), cuts, one: /^\d+$/.test(cuts), many: sheets.length > 1 }));
}

/**
 * Which cuts a setting makes with which edge along the fence, or against the stop; a plan from before edges were told has none.
 * @param {any} step @returns {{ edge?: 'left' | 'right' | 'top' | 'bottom', edgeBy?: 'factory' | 'cut', cuts: ReturnType<typeof cutsSaid> }[]}
 */
export function edgesOf(step) {
  /** @type {Map<string, any[]>} */
  const alike = new Map();
  for (const pass of step.passes) {
    const name = `${pass.edge} ${pass.edgeBy}`;
    alike.set(name, [...(alike.get(name) ?? []), pass]);
  }
  return [...alike.values()].map((passes) => ({ edge: passes[0].edge, edgeBy: passes[0].edgeBy, cuts: cutsSaid({ passes }) }));
}

/** "1, 3–6, 9". @param {number[]} numbers */
function runs(numbers) {
  /** @type {[number, number][]} */
  const found = [];
  for (const n of [...numbers].sort((a, b) => a - b)) {
    const last = found.at(-1);
    if (last && last[1] === n - 1) last[1] = n;
    else found.push([n, n]);
  }
  return found.map(([from, to]) => (from === to ? `${from}` : to === from + 1 ? `${from}, ${to}` : `${from}–${to}`)).join(', ');
}

/** What a budget leaves out, line by line: a line that is made zero times stands nowhere else in the plan. @param {Plan} plan @param {any} order */
export const leftOut = (plan, order) => (plan.budget?.lines ?? [])
  .map((/** @type {any} */ line) => ({ ...order.panels.find((/** @type {any} */ one) => one.mark === line.mark), mark: line.mark, count: line.wanted - line.made }))
  .filter((/** @type {any} */ line) => line.count > 0);

/** Parts of a line's cost that are not nothing. @param {any} line @param {Record<string, string>} names @returns {[string, number][]} */
export const parts = (line, names) => /** @type {[string, number][]} */ (Object.keys(names).map((name) => [name, line[name] ?? 0])).filter(([, cost]) => cost > 0);

/**
 * The name of a good by its id. An order that takes its goods from the shelf carries none of them: then the plan says how they
 * are called. @param {any} order @param {string} id @param {Plan} [plan] @returns {string}
 */
export function nameOf(order, id, plan) {
  const listed = ['boards', 'cloths', 'adhesives', 'primers', 'strips'].flatMap((list) => order[list] ?? []);
  const used = plan ? [...plan.liquids, ...plan.sheets.map(called('board')), ...plan.cloth.map(called('cloth')), ...plan.strips.map(called('strip')), ...plan.buy] : [];
  return [...listed, ...used].find((one) => one.id === id && one.name)?.name ?? id;
}

/** A cloth by its name, and which remnant of it: one that is a cloth of its own is named by its pencil id already. @param {any} order @param {any} one @param {Plan} plan */
export function clothOf(order, one, plan) {
  const name = nameOf(order, one.id ?? one.cloth, plan);
  return one.remnant && !name.startsWith(`${one.remnant},`) && name !== one.remnant ? `${name}, ${one.remnant}` : name;
}

/** @param {string} good */
const called = (good) => (/** @type {any} */ one) => ({ id: one[good], name: one.name });
