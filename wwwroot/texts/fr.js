// @ts-check
/** Tous les textes de la page, en français. */

/** @param {number} n @param {string} one @param {string} [many] */
const count = (n, one, many = `${one}s`) => `${n} ${n < 2 ? one : many}`;

/** @type {typeof import('./en.js').default} */
export default {
  language: 'fr',
  name: 'Français',
  page: {
    title: 'Panel Service', skip: 'Au bouton', batch: 'Série', batchHint: 'nom de la série', units: 'Mesures en', currency: 'Monnaie',
    undo: 'Annuler', notKept: 'Ce navigateur ne garde rien : imprimez ou copiez ce qu’il vous faut.',
    fresh: 'Fiche vierge', examples: 'Exemples', earlier: 'Fiches précédentes', plans: 'Plans au casier', isMade: 'fait', open: 'Ouvrir', unnamed: 'sans nom', tagline: 'quoi acheter, comment couper, ce que coûte chaque panneau', fractions: 'Fractions', decimals: 'Décimales', inchesAs: 'Pouces en',
    nav: 'Les jours du travail', language: 'Langue',
  },
  door: {
    head: 'Panel Service', code: 'Six chiffres', join: 'Entrer', hint: 'Quelqu’un dont le navigateur est déjà admis touche « Admettre un téléphone » et les dicte.',
    wrong: 'Ces chiffres ne vont pas. Ils servent une fois, pendant quelques minutes : demandez-en d’autres.', wait: 'Trop d’essais. Attendez une minute, puis demandez de nouveaux chiffres.',
    letIn: 'Admettre un téléphone', readOut: (/** @type {string} */ host, /** @type {string} */ code, /** @type {string} */ until) => `Sur le téléphone, ouvrez ${host} et tapez ${code}, avant ${until}.`,
  },
  units: { inch: 'pouces', centimetre: 'centimètres', millimetre: 'millimètres' },
  area: { inch: 'in²', centimetre: 'cm²', millimetre: 'cm²' },
  short: { inch: 'in', centimetre: 'cm', millimetre: 'mm' },
  volume: { inch: 'fl oz', centimetre: 'mL', millimetre: 'mL' },
  days: {
    order: ['', 'La commande'], errand: ['1', 'Les courses', 'ce qu’il faut acheter'], saw: ['2', 'À la scie', 'débiter les panneaux'],
    bench: ['3', 'À l’établi', 'couper la toile, coller, presser'], morning: ['4', 'Le lendemain', 'araser et contrôler'],
    tally: ['5', 'Le compte', 'ce que cela a coûté'], rack: ['6', 'Retour au casier', 'ce qui reste'],
  },
  make: {
    head: 'À fabriquer', rack: 'Formats courants, à la même échelle', series: 'Formats', faces: 'Forme', way: 'Accroché',
    upright: 'en hauteur', lying: 'en largeur', square: (size) => `Un carreau fait ${size}.`, source: (s) => `Mesures : ${s}.`,
    tap: 'Touchez un format pour le mettre sur la fiche', as: 'en',
    add: (name, size) => `Ajouter ${name}, ${size}`, howMany: (name) => `Combien de ${name}`,
    write: 'Ou écrivez comme sur le papier', writeExample: '12 8x10 lin, 4 16 x 20 enduit, 6F × 3',
    writeHint: 'Nombre, mesures, surface (lin, coton, enduit, nu) ; @ 7,40 pour le prix en magasin. On peut coller une colonne de tableur : nombre, largeur, hauteur.',
    putOn: 'Mettre sur la fiche', unread: (text) => `« ${text} » : je n’y lis pas de mesures. Écrivez par exemple 12 8x10 lin.`,
    own: 'Autre format', none: 'Rien sur la fiche pour l’instant. Touchez un format ou écrivez une ligne.',
    of: 'de', by: '×', shop: 'en magasin', each: 'pièce', more: 'plus', remove: 'Retirer', quantity: 'nombre', width: 'largeur', height: 'hauteur',
    surface: 'surface', clothKind: 'toile', boardKind: 'panneau', anyCloth: 'toute toile', anyBoard: 'tout panneau', on: 'sur',
    mark: 'repère', thickness: 'épaisseur', thicknessHint: 'vide : selon la règle, 3/16 in à partir de 16 × 20 in (usage courant)', spares: 'en réserve', mayTurn: 'peut être tourné sur le panneau',
    mayBuy: 'acheter tout fait si c’est moins cher', total: (n) => count(n, 'panneau', 'panneaux'),
  },
  wishes: { head: 'S’il reste du panneau, couper aussi', add: 'Ajouter un souhait', upTo: 'jusqu’à', worth: 'vaut', hint: 'Logé dans les chutes, jamais une raison d’acheter une plaque.' },
  surfaces: { cloth: 'toile collée', primed: 'panneau enduit', bare: 'panneau nu', loose: 'toile libre' },
  series: { inch: 'Pouces', french: 'Français', japanese: 'Japonais', metric: 'Métrique', iso: 'ISO' },
  faces: { F: 'Figure', P: 'Paysage', M: 'Marine', S: 'Carré' },
  goods: {
    head: 'Ce qu’il y a et ce qui s’achète', boards: 'Panneaux', cloths: 'Toile', adhesives: 'Colle', primers: 'Enduit',
    addBoard: 'Autre panneau', addCloth: 'Autre toile', addAdhesive: 'Autre colle', addPrimer: 'Autre enduit', addRemnant: 'Autre coupon', addContainer: 'Autre contenant',
    name: 'nom', kind: 'sorte', thickness: 'épaisseur', width: 'largeur', height: 'hauteur', length: 'longueur', price: 'prix', onHand: 'au casier', forSale: 'à acheter, au plus', forSaleHint: 'vide : sans limite',
    value: 'valeur d’une pièce au casier', grain: 'fil', grainNone: 'aucun', grainHeight: 'dans la hauteur', edgeTrim: 'rive perdue', edgeTrimHint: 'vide : celle de la scie',
    selvedge: 'lisière, par côté', warp: 'hauteur du panneau', warpAny: 'dans les deux sens', warpHeight: 'le long du rouleau', sale: 'vendu', byLength: 'au mètre', byRoll: 'au rouleau', notSold: 'pas en vente',
    step: 'par', atMost: 'pas au plus', remnants: 'Coupons au casier', pieces: 'pièces',
    covers: 'couvre', with: 'avec', coats: 'couches', have: 'en stock', containers: 'Vendu en', holds: 'contient', worth: 'vaut',
    sheetSaid: (p) => `${p} la plaque`, onRack: (n) => `${n} au casier`, notForSale: 'pas en vente', rollSaid: (p) => `${p} le rouleau`, stepSaid: (s, p) => `${p} les ${s}`, wide: 'de large', thick: 'd’épaisseur',
    remnantsSaid: (n) => count(n, 'coupon'), unnamed: 'sans nom', remove: 'Enlever',
  },
  work: {
    head: 'Votre façon de couper et de presser', saw: 'À la scie', bench: 'À l’établi', money: 'Temps et argent', kerf: 'trait de scie', kerfHint: '1/8 in pour une lame pleine, 3/32 pour une fine (usage courant)',
    edgeTrim: 'rive perdue', edgeTrimHint: 'à chaque bord d’usine ; vide : rien', undersize: 'jeu', undersizeHint: '1/16 à 1/8 in de moins tient encore dans un cadre courant (usage courant)',
    leastFence: 'plus petit morceau le long du guide', leastFenceHint: 'en dessous, au chariot avec une butée ; 10 in (usage courant)', handling: 'Ce que vous pouvez manier',
    fenceReach: 'course du guide', noLimit: 'vide : sans limite', largest: 'plus grande pièce maniée seul', heaviest: 'pièce la plus lourde maniée seul', heaviestHint: 'vide : sans limite ; compté d’après le genre et l’épaisseur de la plaque',
    carry: 'plus grande pièce dans la voiture', carryHint: 'vide : sans limite ; les plaques plus grandes sont d’abord coupées là où vous achetez', supplierKerf: 'trait du fournisseur', supplierKerfHint: '1/8 in (usage courant)',
    kept: 'plus petite chute gardée', keptHint: 'en dessous, c’est du rebut', margin: 'toile en plus, côtés', marginEnds: 'toile en plus, haut et bas', marginHint: '1/2 in par côté, certains 1 in (usage courant)',
    keptCloth: 'plus petit coupon gardé', pressHours: 'sous presse', pressHint: 'une nuit (usage courant)', hours: 'heures', pressSpaces: 'piles à la fois', stackHeight: 'panneaux par pile',
    labour: 'une heure de votre travail', labourHint: 'vide : pas comptée', overhead: 'autre frais', addOverhead: 'Autre frais', overheadName: 'pour quoi', effort: 'chercher', quick: 'vite', steady: 'posément', thorough: 'à fond',
  },
  act: {
    plan: 'Établir le plan', shortcut: 'Ctrl + Entrée', again: 'Refaire le plan', planning: 'Recherche du plan le moins cher …', stop: 'Arrêter, garder le meilleur',
    stale: 'La fiche a changé depuis ce plan.', best: 'Meilleur jusqu’ici', least: 'Aucun plan ne peut coûter moins de',
    done: (cash) => `À acheter : ${cash}.`,
  },
  wrong: {
    head: 'Cette fiche ne peut pas encore être planifiée', unreachable: 'Le service ne répond pas. Tourne-t-il encore ? Rien de la fiche n’est perdu.',
    busy: 'Tous les planificateurs sont occupés. Réessayez dans un instant.', lost: 'Le service ne garde plus ce plan.', drawing: 'Ce dessin n’a pas pu être chargé.', retry: 'Réessayer',
  },
  proof: {
    proven: 'Aucun plan n’achète pour moins : prouvé au centime.', provenNothing: 'Tout ce qu’il faut est au casier.',
    open: (gap, share) => `Un plan moins cher existe peut-être, de ${gap} au plus (${share}) ; aucun n’a été trouvé.`,
    early: 'La recherche a été arrêtée.', toBuy: 'à acheter', notes: 'À savoir',
  },
  change: {
    head: 'Ce qui y changerait quelque chose', use: 'Faire ainsi',
    blade: (kerf) => `Avec une lame de ${kerf}`, under: (size) => `En coupant ${size} de moins`, more: (n, what) => `${n} ${what} de plus`,
    less: (money) => `${money} de moins à acheter.`, free: 'rien de plus à acheter.', sheets: (n) => (n > 0 ? `, ${count(n, 'plaque')} de moins` : ''),
  },
  errand: {
    shops: { board: 'Au dépôt de bois', cloth: 'Au comptoir des toiles', liquid: 'Chez le marchand de couleurs', ready: 'Panneaux tout faits' },
    nothing: 'Rien à acheter.', sum: 'Argent pour les courses', csv: 'En tableau (CSV)', share: 'Partager la liste', copied: 'Copié.', print: 'Imprimer la fiche', at: 'à',
    fromRack: 'À prendre au casier',
    ofSteps: (n, length) => `${n === 1 ? '' : `${n} fois `}${length} du rouleau`,
  },
  saw: {
    nothing: 'Aucun panneau à couper.', run: 'Le parcours de sciage', runHint: 'Un réglage après l’autre. Choisissez-en un pour voir ses traits sur les plaques.',
    setting: (tool, size) => `${tool} à ${size}`, fence: 'Guide', sled: 'Butée du chariot', sheet: 'Plaque', sheets: 'Les plaques', cutsSaid: (s) => `${s.many ? 'Plaques' : 'Plaque'} ${s.sheets} : ${s.one ? 'trait' : 'traits'} ${s.cuts}`, copies: (n) => (n === 1 ? 'une plaque' : `${n} plaques pareilles`),
    settings: (/** @type {number} */ n, /** @type {number} */ steps) => `${n} réglages en ${steps} étapes.`, fewest: 'Aucun ordre de ces coupes n’en demande moins.', atLeast: (/** @type {number} */ n) => `Il en faut au moins ${n}.`, slip: 'Une fiche à épingler près de la scie', slipLetter: 'sur papier Letter', supplierSlip: 'Une fiche pour le fournisseur', supplierLead: 'Ensuite chaque morceau tient dans la voiture et se manie à la scie. Dans cet ordre :', from: { x: 'depuis le bord gauche', y: 'depuis le bord haut' },
    tolerance: 'À quoi s’attendre des panneaux', toleranceHint: 'Guide réglé à ± 1/64 in ou 0,5 mm ; faux équerre dans la mesure où une plaque peut l’être.', toleranceHead: ['Panneau', 'Largeur', 'Hauteur', 'Faux équerre', 'Dans son cadre'],
    fits: 'entre', fitsNot: 'peut être trop grand', gap: 'entre, mais un jour peut se voir',
    side: { width: 'largeur', height: 'hauteur' }, unmatched: (/** @type {string} */ marks) => `Pas toutes coupées au même réglage, à comparer entre elles : ${marks}.`,
    supplier: 'Faites faire ces traits là où vous achetez', done: 'fait', large: 'En grand', close: 'Fermer', next: 'Fait, suivant', back: 'Retour', finish: 'Fait, tout est coupé', stand: 'Se mettre à la scie', stepOf: (n, of) => `${n} sur ${of}`,
    first: 'La notice de la scie, les règles locales et les gens d’expérience passent avant tout. Capot et couteau diviseur en place, poussoir à portée, yeux, oreilles et poumons protégés.',
    pieces: (n) => count(n, 'pièce'), zoom: 'Taille',
  },
  bench: {
    nothing: 'Ni toile, ni colle, ni enduit dans cette série.', cloth: 'Couper la toile', copies: (n) => (n === 1 ? 'une longueur' : `${n} pareilles`), glue: 'À préparer', fromHand: 'du stock', left: 'de reste',
    press: 'La presse', stack: (stacks, most) => `${count(stacks, 'pile')} de ${most} au plus`,
    rounds: (rounds, hours) => (rounds === 1 ? `Tout tient sous presse en une fois : ${hours} heures.` : `${rounds} tours de presse, ${hours} heures chacun.`),
    order: 'Du milieu vers les bords ; presser bords et coins ; un intercalaire entre les panneaux (usage courant).',
  },
  morning: {
    trim: 'Araser', to: 'à', steps: {
      cure: 'La colle a pris : soulever un coin, rien ne cède.', blade: 'Une lame neuve au cutter.', edges: 'Recoller les bords qui se lèvent.', seal: 'Isoler les deux faces et tous les chants contre l’humidité.', mark: 'Mesures, panneau, enduit et date au dos.',
    },
    hint: 'Usage courant.', check: 'Contrôler',
  },
  tally: {
    each: 'pièce', area: 'à la surface seule', shop: 'en magasin', saved: 'gagnés', areaHint: 'prix × surface du panneau ÷ celle de la plaque : le calcul au crayon, sans les pertes',
    part: { board: 'panneau', cloth: 'toile', adhesive: 'colle', primer: 'enduit', strips: 'tasseaux', ready: 'tout fait', labour: 'travail', overheads: 'autres', consumables: 'consommables', tools: 'outils' },
    total: 'En tout', sum: (used, back, cash) => `Cette série consomme ${used}. ${back} retournent au casier. Les magasins reçoivent ${cash}.`,
    savedAll: (money, share) => `Par rapport au magasin, ${money} de gagnés, soit ${share}.`, dearer: (money) => `Le magasin serait moins cher de ${money}.`,
    waste: (dust, trim, scrap) => `Du panneau, ${dust} partent en sciure, ${trim} en rives et ${scrap} sont trop petits pour être gardés.`,
  },
  made: {
    head: 'La série est-elle faite ?', hint: 'Inscrivez-la alors : ce qu’elle a pris quitte le casier, ce qui reste y entre, chaque pièce avec un court repère.', spoiled: 'Quelques-uns sont ratés',
    of: (/** @type {string} */ mark) => `de ${mark} ratés`, book: 'C’est fait', booked: (/** @type {string} */ when) => `Inscrite comme faite, ${when}.`, write: 'À noter au crayon :',
    replace: 'Préparer une fiche pour les ratés', undo: 'Ce n’était pas fait : annuler l’inscription',
  },
  shelf: {
    use: 'Prendre panneaux, toile, colle et enduit au casier de l’atelier', save: 'Garder ces prix au casier', open: 'Ce qu’il y a au casier', there: 'Sur place', toBuy: 'À acheter',
    empty: 'Rien encore. Une série inscrite comme faite y laisse ses chutes.', saved: 'Gardé. Une autre fiche pourra s’y servir.', howMany: (/** @type {string} */ id) => `Combien de ${id}`,
    priced: (/** @type {string} */ day) => ` prix du ${day}`,
    sorts: { board: 'panneau', offcut: 'chute', cloth: 'toile', remnant: 'coupon', adhesive: 'colle', primer: 'enduit', panel: 'panneau fini', strip: 'tasseau' },
  },
  rack: { nothing: 'Il ne reste rien.', boards: 'Panneaux', cloth: 'Toile', liquids: 'Dans le flacon', hint: 'Notez la mesure au crayon sur chacun.' },
  yields: { head: 'Combien dans une plaque ?', ask: 'dans', all: 'chacune', go: 'Compter', comeOut: 'en sortent.', area: (n) => `À la surface seule, on en espérerait ${n}.` },
};
