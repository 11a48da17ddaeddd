// @ts-check
/** Every text of the page, in English. Another language is another file of this shape. */

/** @param {number} n @param {string} one @param {string} [many] */
const count = (n, one, many = `${one}s`) => `${n} ${n === 1 ? one : many}`;

export default {
  language: 'en',
  name: 'English',
  page: {
    title: 'Panel Service', skip: 'To the button', batch: 'Batch', batchHint: 'name of the batch', units: 'Sizes in', currency: 'Money in',
    undo: 'Undo', notKept: 'This browser keeps nothing: print or copy what you need.',
    fresh: 'Start an empty ticket', examples: 'Examples', earlier: 'Earlier tickets', open: 'Open', unnamed: 'without a name', tagline: 'what to buy, how to cut it, what each panel costs', fractions: 'Fractions', decimals: 'Decimals', inchesAs: 'Inches as',
    nav: 'The days of the job', language: 'Language',
  },
  door: {
    head: 'Panel Service', code: 'Six digits', join: 'Come in', hint: 'Somebody at a browser that is in taps “Let a phone in” and reads them out.',
    wrong: 'Those do not work. Digits work once, for a few minutes: ask for new ones.', wait: 'Too many tries. Wait a minute, then ask for new digits.',
    letIn: 'Let a phone in', readOut: (/** @type {string} */ host, /** @type {string} */ code, /** @type {string} */ until) => `On the phone open ${host} and type ${code}, until ${until}.`,
  },
  units: { inch: 'inches', centimetre: 'centimetres', millimetre: 'millimetres' },
  area: { inch: 'in²', centimetre: 'cm²', millimetre: 'cm²' },
  short: { inch: 'in', centimetre: 'cm', millimetre: 'mm' },
  volume: { inch: 'fl oz', centimetre: 'mL', millimetre: 'mL' },
  days: {
    order: ['', 'The order'], errand: ['1', 'The errand', 'what to buy'], saw: ['2', 'At the saw', 'cut the board'],
    bench: ['3', 'At the bench', 'cut cloth, glue, press'], morning: ['4', 'Next morning', 'trim and check'],
    tally: ['5', 'The tally', 'what it came to'], rack: ['6', 'Back on the rack', 'what is left'],
  },
  make: {
    head: 'What to make', rack: 'Standard formats, to one scale', series: 'Formats', faces: 'Shape', way: 'Hung',
    upright: 'upright', lying: 'lying', square: (/** @type {string} */ size) => `One square is ${size}.`,
    source: (/** @type {string} */ s) => `Sizes: ${s}.`,
    tap: 'Tap a format to put one on the ticket', as: 'as',
    add: (/** @type {string} */ name, /** @type {string} */ size) => `Add ${name}, ${size}`,
    howMany: (/** @type {string} */ name) => `How many ${name}`,
    write: 'Or write it as on paper', writeExample: '12 8x10 linen, 4 16 x 20 primed, 6F × 3',
    writeHint: 'Count, size, surface; @ 7.40 for what a shop asks. A column from a spreadsheet can be pasted: count, width, height.',
    putOn: 'Put on the ticket', unread: (/** @type {string} */ text) => `“${text}” has no size I can read. Write it like 12 8x10 linen.`,
    own: 'Another size', none: 'Nothing is on the ticket yet. Tap a format or write a line.',
    of: 'of', by: '×', shop: 'a shop asks', each: 'each', more: 'more', remove: 'Take off', quantity: 'how many', width: 'width', height: 'height',
    surface: 'surface', clothKind: 'cloth', boardKind: 'board', anyCloth: 'any cloth', anyBoard: 'any board', on: 'on',
    mark: 'mark', thickness: 'thickness', thicknessHint: 'empty: by the rule, 3/16 in from 16 × 20 in up (common practice)', spares: 'spares on top', mayTurn: 'may lie turned on the board',
    mayBuy: 'buy ready-made where that is cheaper', total: (/** @type {number} */ n) => count(n, 'panel'),
  },
  wishes: {
    head: 'If board is left over, also cut', add: 'Add a wish', upTo: 'up to', worth: 'worth', hint: 'Fitted into spare board, never a reason to buy a sheet.',
  },
  surfaces: { cloth: 'cloth glued on', primed: 'primed board', bare: 'bare board', loose: 'loose cloth' },
  series: { inch: 'Inch', french: 'French', japanese: 'Japanese', metric: 'Metric', iso: 'ISO' },
  faces: { F: 'Figure', P: 'Paysage', M: 'Marine', S: 'Square' },
  goods: {
    head: 'What is there and what can be bought', boards: 'Board', cloths: 'Cloth', adhesives: 'Glue', primers: 'Ground',
    addBoard: 'Another board', addCloth: 'Another cloth', addAdhesive: 'Another glue', addPrimer: 'Another ground', addRemnant: 'Another remnant', addContainer: 'Another container',
    name: 'name', kind: 'kind', thickness: 'thickness', width: 'width', height: 'height', length: 'length', price: 'price', onHand: 'on the rack', forSale: 'at most to buy', forSaleHint: 'empty: any number',
    value: 'value of one on the rack', grain: 'face grain', grainNone: 'none', grainHeight: 'along the height', edgeTrim: 'edge trim', edgeTrimHint: 'empty: the saw’s',
    selvedge: 'selvedge a side', warp: 'panel’s height', warpAny: 'either way', warpHeight: 'along the roll', sale: 'sold', byLength: 'by length', byRoll: 'by the roll', notSold: 'not for sale',
    step: 'in steps of', atMost: 'steps at most', remnants: 'Remnants on the rack', pieces: 'pieces',
    covers: 'covers', with: 'with', coats: 'coats', have: 'have', containers: 'Sold in', holds: 'holds', worth: 'worth',
    sheetSaid: (/** @type {string} */ p) => `${p} a sheet`, onRack: (/** @type {string} */ n) => `${n} on the rack`, notForSale: 'none for sale',
    rollSaid: (/** @type {string} */ p) => `${p} a roll`, stepSaid: (/** @type {string} */ s, /** @type {string} */ p) => `${p} for each ${s}`, wide: 'wide', thick: 'thick',
    remnantsSaid: (/** @type {number} */ n) => count(n, 'remnant'), unnamed: 'not named yet', remove: 'Remove',
  },
  work: {
    head: 'How you cut and press', saw: 'At the saw', bench: 'At the bench', money: 'Time and money', kerf: 'kerf', kerfHint: 'a full blade takes 1/8 in, a thin one 3/32 (common practice)',
    edgeTrim: 'edge trim', edgeTrimHint: 'lost at each factory edge; empty: none', undersize: 'undersize', undersizeHint: '1/16 to 1/8 in under still sits in a standard frame (common practice)',
    leastFence: 'shortest part along the fence', leastFenceHint: 'anything shorter goes on a sled with a stop; 10 in (common practice)', handling: 'What you can handle',
    fenceReach: 'farthest the fence goes', noLimit: 'empty: no limit', largest: 'largest piece you handle alone', heaviest: 'heaviest piece you handle alone', heaviestHint: 'empty: no limit; counted from the board’s kind and thickness',
    carry: 'largest piece the car takes', carryHint: 'empty: no limit; larger sheets are first cut where you buy them', supplierKerf: 'the supplier’s kerf', supplierKerfHint: '1/8 in (common practice)',
    kept: 'smallest board worth keeping', keptHint: 'anything smaller is waste', margin: 'cloth over, sides', marginEnds: 'cloth over, top and bottom', marginHint: '1/2 in a side, some take 1 in (common practice)',
    keptCloth: 'smallest cloth worth keeping', pressHours: 'in the press', pressHint: 'overnight (common practice)', hours: 'hours', pressSpaces: 'stacks at once', stackHeight: 'panels in a stack',
    labour: 'an hour of your work', labourHint: 'empty: not counted', overhead: 'other cost', addOverhead: 'Another cost', overheadName: 'what for', effort: 'how long to look',
    quick: 'quick', steady: 'steady', thorough: 'thorough',
  },
  act: {
    plan: 'Plan this batch', shortcut: 'Ctrl + Enter', again: 'Plan it again', planning: 'Looking for the cheapest plan …', stop: 'Stop, keep the best so far',
    stale: 'The ticket has changed since this plan.', best: 'Best so far', least: 'No plan can cost less than',
    done: (/** @type {string} */ cash) => `To buy: ${cash}.`,
  },
  wrong: {
    head: 'This ticket cannot be planned yet', unreachable: 'The service does not answer. Is it still running? Nothing on the ticket is lost.',
    busy: 'All planners are busy. Try again in a moment.', lost: 'This plan is no longer kept by the service.', drawing: 'This drawing could not be loaded.', retry: 'Try again',
  },
  proof: {
    proven: 'No plan buys less than this: proven to the cent.', provenNothing: 'Everything needed is on the rack.',
    open: (/** @type {string} */ gap, /** @type {string} */ share) => `A cheaper plan may exist, by ${gap} at most (${share}); none was found.`,
    early: 'The search was stopped early.', toBuy: 'to buy', notes: 'Mind this',
  },
  change: {
    head: 'What would change it', use: 'Do this',
    blade: (/** @type {string} */ kerf) => `With a ${kerf} blade`, under: (/** @type {string} */ size) => `Cut ${size} under size`, more: (/** @type {number} */ n, /** @type {string} */ what) => `${n} more of ${what}`,
    less: (/** @type {string} */ money) => `${money} less to buy.`, free: 'nothing more to buy.', sheets: (/** @type {number} */ n) => (n > 0 ? `, ${count(n, 'sheet')} less` : ''),
  },
  errand: {
    shops: { board: 'At the timber yard', cloth: 'At the cloth counter', liquid: 'At the paint shop', ready: 'Ready-made panels' },
    nothing: 'Nothing to buy.', sum: 'Cash for the errand', csv: 'As a table (CSV)', share: 'Share the list', copied: 'Copied.', print: 'Print the ticket', at: 'at',
    fromRack: 'Take from the rack',
    ofSteps: (/** @type {number} */ n, /** @type {string} */ length) => `${n === 1 ? '' : `${n} times `}${length} off the roll`,
  },
  saw: {
    nothing: 'No board is cut.', run: 'The saw run', runHint: 'One setting after the other. Choose one to see its cuts on the sheets.',
    setting: (/** @type {string} */ tool, /** @type {string} */ size) => `${tool} at ${size}`, fence: 'Fence', sled: 'Sled stop', sheet: 'Sheet', sheets: 'The sheets', cutsSaid: (/** @type {{ sheets: string, cuts: string, one: boolean, many: boolean }} */ s) => `${s.many ? 'Sheets' : 'Sheet'} ${s.sheets}: ${s.one ? 'cut' : 'cuts'} ${s.cuts}`, copies: (/** @type {number} */ n) => (n === 1 ? 'one sheet' : `${n} sheets alike`),
    settings: (/** @type {number} */ n, /** @type {number} */ steps) => `${n} settings in ${steps} steps.`, fewest: 'No order of these cuts takes fewer settings.', atLeast: (/** @type {number} */ n) => `At least ${n} are needed.`, slip: 'A slip to pin up beside the saw', slipLetter: 'on Letter paper', supplierSlip: 'A slip for the supplier', supplierLead: 'Then every part fits the car and can be handled at the saw. In this order:', from: { x: 'from the left edge', y: 'from the top edge' },
    tolerance: 'How true the panels come out', toleranceHint: 'With the fence set to ± 1/64 in or 0.5 mm; out of square as far as a sheet may be.', toleranceHead: ['Panel', 'Width', 'Height', 'Out of square', 'In its frame'],
    fits: 'fits', fitsNot: 'may be too large', gap: 'fits, but a gap may show',
    side: { width: 'width', height: 'height' }, unmatched: (/** @type {string} */ marks) => `Not all cut to size at one setting, so check them against each other: ${marks}.`,
    supplier: 'Have these cuts made where you buy it', done: 'done', large: 'Large', close: 'Close', next: 'Done, next', back: 'Back', finish: 'Done, all cut', stand: 'Stand at the saw', stepOf: (/** @type {number} */ n, /** @type {number} */ of) => `${n} of ${of}`,
    first: 'The saw’s manual, local rules and experienced people come first. Guard and riving knife on, push stick to hand, eyes, ears and lungs protected.',
    pieces: (/** @type {number} */ n) => count(n, 'piece'), zoom: 'Size',
  },
  bench: {
    nothing: 'No cloth, glue or ground in this batch.', cloth: 'Cut the cloth', copies: (/** @type {number} */ n) => (n === 1 ? 'one length' : `${n} alike`), glue: 'Have ready', fromHand: 'from what is there', left: 'left after',
    press: 'The press', stack: (/** @type {number} */ stacks, /** @type {number} */ most) => `${count(stacks, 'stack')} of up to ${most}`,
    rounds: (/** @type {number} */ rounds, /** @type {string} */ hours) => (rounds === 1 ? `All fit in the press at once: ${hours} hours.` : `${rounds} rounds in the press, ${hours} hours each.`),
    order: 'From the middle outwards; press edges and corners; a separator between panels (common practice).',
  },
  morning: {
    trim: 'Trim', to: 'to', steps: {
      cure: 'The glue has cured: lift a corner, nothing gives.', blade: 'A fresh blade in the knife.', edges: 'Re-glue edges that lift.', seal: 'Seal both faces and all edges against moisture.', mark: 'Size, board, ground and date on the back.',
    },
    hint: 'Common practice.', check: 'Check',
  },
  tally: {
    each: 'each', area: 'by area alone', shop: 'in the shop', saved: 'saved', areaHint: 'price × the panel’s area ÷ the sheet’s: the pencil’s figure, without waste',
    part: { board: 'board', cloth: 'cloth', adhesive: 'glue', primer: 'ground', strips: 'strips', ready: 'ready-made', labour: 'work', overheads: 'other', consumables: 'consumables', tools: 'tools' },
    total: 'In all', sum: (/** @type {string} */ used, /** @type {string} */ back, /** @type {string} */ cash) => `This batch uses ${used}. ${back} goes back on the rack. The shops get ${cash}.`,
    savedAll: (/** @type {string} */ money, /** @type {string} */ share) => `Against the shop that saves ${money}, ${share}.`, dearer: (/** @type {string} */ money) => `The shop would be ${money} cheaper.`,
    waste: (/** @type {string} */ dust, /** @type {string} */ trim, /** @type {string} */ scrap) => `Of the board, ${dust} turn to dust, ${trim} go as edge trim and ${scrap} are too small to keep.`,
  },
  rack: { nothing: 'Nothing is left over.', boards: 'Board', cloth: 'Cloth', liquids: 'In the bottle', hint: 'Write the size on each in pencil.' },
  yields: {
    head: 'How many out of one sheet?', ask: 'out of', all: 'each of them', go: 'Count them', comeOut: 'come out.', area: (/** @type {string} */ n) => `By area alone one would hope for ${n}.`,
  },
};
