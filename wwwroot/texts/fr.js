// @ts-check
/** Tous les textes de la page, en français. */

/** @param {number} n @param {string} one @param {string} [many] */
const count = (n, one, many = `${one}s`) => `${n} ${n < 2 ? one : many}`;

/** Précautions et avertissements du service, par leur nom ; les mêmes mots que sur les fiches à épingler. @type {Record<string, string>} */
const SERVICE = {
  'guards-on': 'Couteau diviseur à moins de 8 mm de la lame, capot en place, mains hors de la ligne de la lame (HSE WIS16 ; OSHA 29 CFR 1910.213).',
  'push-stick': 'Un poussoir d’au moins 450 mm pour les 300 derniers mm de toute coupe (HSE WIS16).',
  'eyes-and-ears': 'Lunettes et protection de l’ouïe, pas de gants, rien de flottant.',
  'dust-hardboard': 'La poussière d’isorel est de fine fibre de bois (NIOSH : au plus 1 mg/m³ sur 8 heures) : aspiration à la scie et masque ajusté.',
  'dust-mdf': 'La poussière de MDF porte de la résine à formaldéhyde (limites : 40 CFR 770.10) : aspiration à la scie, masque ajusté, air frais.',
  'dust-plywood': 'La poussière de contreplaqué peut être de bois dur (EH40 : au plus 3 mg/m³ sur 8 heures) : aspiration et masque ajusté ; le parement éclate, le beau côté vers les dents.',
  'dust': 'La poussière de panneau nuit aux poumons : aspiration à la scie et masque ajusté.',
  'thin-kerf': 'Lame à trait mince (3/32 in, 2,4 mm, ou moins) : montez le couteau diviseur fait pour elle, plus mince que le trait, et ne forcez pas l’avance.',
  'thick-kerf': 'Lame à trait plein (1/8 in, 3,2 mm, ou plus) : montez le couteau diviseur fait pour elle, plus épais que la lame, plus mince que le trait.',
  'large-sheet': 'Une grande plaque entière : deux personnes, appuis à l’entrée et à la sortie, ou faites faire cette coupe à la scie à panneaux du fournisseur.',
  'factory-edge': 'Une rive d’usine est dressée : une bande mince tombe libre près de la lame. Laissez-la jusqu’à l’arrêt de la lame.',
  'narrow-rip': 'Moins de 6 in (150 mm) entre guide et lame : poussez avec un poussoir ou une cale, jamais de la main.',
  'far-fence': 'Plus de 24 in (610 mm) du guide à la lame, plus loin que ne va le guide de bien des petites scies sur table : voyez dans la notice jusqu’où va le vôtre, et planifiez avec cette portée.',
  'short-along-fence': 'Moins de 12 in (300 mm) le long du guide : la pièce peut tourner et être rejetée. Un chariot guide plus sûrement.',
  'wider-than-long': 'La pièce est plus large que longue au guide : menez-la au chariot ou au guide d’angle, ou soutenez-la tout du long.',
  'small-part-free': 'Un morceau de moins de 6 in (150 mm) des deux côtés tombe près de la lame : laissez-le jusqu’à l’arrêt de la lame, n’allez jamais le chercher.',
  'no-fence-as-stop': 'Trop courte pour longer le guide : au chariot, la cote prise par une butée. Ne prenez jamais le guide comme butée d’une coupe traversante menée au chariot ou au guide d’angle.',
  'manual-first': 'Ce sont des précautions, non des instructions : la notice de la scie, les règles locales et une personne expérimentée passent avant.',
  'adhesive-missing': 'Aucune colle de cette fiche ne couvre tous les panneaux : elle ne coûte rien dans ce plan. Ajoutez-en une pour qu’elle compte.',
  'primer-missing': 'Aucun enduit de cette fiche ne couvre tous les panneaux : il ne coûte rien dans ce plan. Ajoutez-en un pour qu’il compte.',
  'quantity-prices-open': 'Les prix par quantité se combinent de plus de façons qu’on n’en a essayé : un plan moins cher est possible. Le moindre coût possible vaut pour toutes.',
  'strips-missing': 'Aucun tasseau de cette fiche ne sert à ces châssis : ils ne coûtent rien dans ce plan. Ajoutez-en pour qu’ils comptent.',
  'cradle-too-small': 'Un panneau est trop petit pour un châssis de tasseaux si larges : il n’en a pas.',
  'brace-or-thicker': 'Des panneaux fléchiraient trop sous la main : le jour 4 dit quels tasseaux les renforcent, et ce qu’ils coûtent à côté d’un panneau plus épais.',
  'adhesive-short': 'Il y a trop peu de la colle demandée, et aucun contenant à acheter : ce qui manque ne coûte rien dans ce plan.',
  'primer-short': 'Il y a trop peu de l’enduit demandé, et aucun contenant à acheter : ce qui manque ne coûte rien dans ce plan.',
  'supplier-cuts': 'Des plaques sont d’abord à faire couper là où vous les achetez, comme le montre la fiche du fournisseur. Demandez le prix d’une coupe : le plan ne le compte pas.',
  'on-hand-left-out': 'Ce qui est en stock se met au casier, non parmi ce qui s’achète : c’est laissé de côté ici.',
  'on-hand-too-large': 'Une plaque du casier est plus grande ou plus lourde que ce qu’une personne manie, ou ne passe pas à ce guide : le plan la laisse.',
  'stock-left-out': 'Le casier a plus de pièces qu’une fiche n’en peut peser : certaines ne comptent pas dans ce plan.',
  'units-assumed': 'La fiche ne dit pas ses mesures : elles ont été lues en pouces.',
  'currency-assumed': 'La fiche ne dit pas sa monnaie : les sommes ont été lues en euros.',
  'shops-open': 'Il y a plus de façons de choisir entre les magasins qu’on n’en a essayé : un plan moins cher est possible. Le moindre coût possible vaut pour toutes.',
};

/** Mots des dessins : ce que le service écrit en anglais, et ce qu’on lit. @type {[RegExp, string][]} */
const DRAWN = [
  [/\bSheet (\d+) of (\d+)$/, 'Plaque $1 sur $2'], [/\bCloth (\d+) of (\d+)$/, 'Toile $1 sur $2'], [/^keep(?=$| \d)/, 'garder'], [/^waste$/, 'chute'], [/^supplier$/, 'fournisseur'],
  [/\bcut one like this\b/, 'en couper une ainsi'], [/\bcut (\d+) like this\b/, 'en couper $1 ainsi'], [/^sizes in inches$/, 'mesures en pouces'], [/^sizes in (centimet|millimet)res$/, 'mesures en $1res'],
  [/ thick,/, ' d’épaisseur,'], [/ wide,/, ' de large,'], [/ long,/, ' de long,'], [/, bought(?=\.|$)/, ', achetée'], [/, remnant (\S+) from the rack(?=\.|$)/, ', coupon $1 du casier'], [/, from the rack(?=\.|$)/, ', du casier'], [/^(\d+) labels find no room$/, '$1 repères sans place'], [/^and (\d+) more marks$/, 'et $1 autres repères'],
  [/^(\d+) of (?=\d)/, '$1 de '], [/, (\d+) of (?=\d)/g, ', $1 de '], [/, cut (?=\d)/g, ', coupé '], [/, turned\b/g, ', tourné'], [/\bPieces: /, 'Pièces : '], [/\bBack on the rack: /, 'De retour au casier : '],
  [/^keep:/, 'garder :'], [/^waste:/, 'chute :'], [/^selvedge$/, 'lisière'], [/^Cut (\d+): (.*) from the left edge of its workpiece$/, 'Trait $1 : $2 depuis le bord gauche de sa pièce'],
  [/^Cut (\d+): (.*) from the upper edge of its workpiece$/, 'Trait $1 : $2 depuis le bord haut de sa pièce'], [/\bBench days: done day (\d+)/, 'Jours d’établi : fini le jour $1'], [/\bday (?=\d)/g, 'jour '], [/\b(jour \d+ [\d:]+) to (?=jour)/, '$1 au '],
  [/^buy\b/, 'acheter'], [/^saw, /, 'scier, '], [/^cut cloth, /, 'couper la toile, '], [/^ease and dust, /, 'adoucir et dépoussiérer, '], [/^glue stack /, 'coller la pile '], [/^trim stack /, 'araser la pile '],
  [/^seal, /, 'isoler, '], [/^cradles, /, 'châssis, '], [/^coat (?=\d)/, 'couche '], [/^coats, (\d+) in all$/, 'couches, $1 en tout'], [/^finish and label, /, 'finir et étiqueter, '], [/^glue and press, (\d+) panels$/, 'coller et presser, $1 panneaux'], [/^trim, (\d+) panels$/, 'araser, $1 panneaux'],
  [/\(grain this way\)/, '(fil dans ce sens)'], [/\(warp this way\)/, '(chaîne dans ce sens)'], [/^More than a year of work: no schedule$/, 'Plus d’un an de travail : pas de calendrier'], [/^Nothing to do at the bench$/, 'Rien à faire à l’établi'],
  [/^hands$/, 'mains'], [/^under weight$/, 'sous poids'], [/^drying, resting$/, 'sèche, repose'], [/(\d+) jobs by (\d+) pair\(s\) of hands\..*/, '$1 tâches, $2 paire(s) de mains.'],
  [/^one panel, /, 'un panneau, '], [/^shop trip, /, 'les courses, '], [/^ready-made$/, 'tout fait'], [/^made$/, 'fait soi-même'], [/^tools in full$/, 'outils tout comptés'], [/^panels$/, 'panneaux'],
  [/, sheets$/, ', plaques'], [/, by length$/, ', à la coupe'], [/, rolls$/, ', rouleaux'], [/^and (\d+) more goods$/, 'et $1 autres choses'], [/^boxed: more of it than the time before$/, 'encadré : plus que la fois d’avant'], [/^Batch curve$/, 'La série répétée'],
  [/\b[Ff]rom (\d+) panels on making is cheaper than buying, tools in/, 'dès $1 panneaux, faire revient moins cher qu’acheter, outils compris'], [/\b[Ff]rom (\d+) panels on the roll beats cloth by length/, 'dès $1 panneaux, le rouleau bat la coupe'],
  [/\bthe order made 1 to (\d+) times over, each really planned$/, 'la série faite de 1 à $1 fois, chacune planifiée pour de bon'], [/\b(\d+) times, (\d+) panels: /g, '$1 fois, $2 panneaux : '], [/ each, no cheaper plan exists/g, ' pièce, aucun plan moins cher'], [/ each, a cheaper plan may exist/g, ' pièce, un plan moins cher est possible'],
  [/\bNothing goes back on the rack\./, 'Rien ne retourne au casier.'], [/\bSizes in (\w+)\./, 'Mesures en $1.'],
];

/** Ce que le service trouve faux : ses phrases, et les nôtres. @type {[RegExp, string][]} */
const FAULTS = [
  [/^"(.*)" is no length\. /, '« $1 » n’est pas une longueur. '], [/^An empty text is no length\. /, 'Il manque une longueur. '], [/^"(.*)": a length cannot be less than 0\. /, '« $1 » : une longueur n’est pas négative. '],
  [/^"(.*)": a second figure needs its unit\. /, '« $1 » : un second nombre a besoin de son unité. '], [/^"(.*)": "(.*)" is no unit known here; known are mm, cm, m, in, ft and yd\. /, '« $1 » : « $2 » n’est pas une unité connue ; on connaît mm, cm, m, in, ft et yd. '],
  [/^"(.*)": units that follow one another must grow smaller, as feet and inches do\. /, '« $1 » : les unités vont en diminuant, comme pieds et pouces. '], [/^"(.*)": too many digits\. /, '« $1 » : trop de chiffres. '], [/^"(.*)": the lower number of a fraction cannot be 0\. /, '« $1 » : le bas d’une fraction n’est pas 0. '],
  [/^A length of more than (\d+) characters cannot be read\. /, 'Une longueur a au plus $1 caractères. '], [/a number of in\b/, 'a number of pouces'], [/Expected a number of (pouces|cm|mm) such as 16\.5, or text such as .*$/, 'Écrivez un nombre en $1 tel que 16,5, ou « 16 1/2 », « 41 cm », « 8 in ».'],
  [/^Expected a length: a number of (pouces|cm|mm), or text such as .*$/, 'Il faut une longueur : un nombre en $1, ou « 16 1/2 », « 41 cm ».'], [/^(.*) is too large a number( for a length)?\.$/, '$1 est un trop grand nombre.'],
  [/^Must be a length from (.*) to (.*); this is (.*)\.$/, 'Il faut une longueur de $1 à $2 ; c’est $3.'], [/^Must be a length above 0 and at most (.*); this is (.*)\.$/, 'Il faut une longueur au-dessus de 0, au plus $1 ; c’est $2.'],
  [/^Must be a whole number from (.*) to (.*); this is (.*)\.$/, 'Il faut un nombre entier de $1 à $2 ; c’est $3.'], [/^Must be (?:a number|an amount|a volume|a weight) from (.*) to (.*); this is (.*)\.$/, 'Il faut un nombre de $1 à $2 ; c’est $3.'],
  [/^Must be a weight from .*$/, 'Il faut un poids de 50 g à 1000 kg, tel que 20 ou « 9 kg ».'], [/^Expected a weight: .*$/, 'Il faut un poids : un nombre, ou « 20 lb », « 9 kg ».'],
  [/^Expected a whole number; (?:this is .*|(.*) is none that can be counted with)\.$/, 'Il faut un nombre entier.'], [/^Expected a number; this is .*\.$/, 'Il faut un nombre.'], [/^Expected text.*\.$/, 'Il faut un texte.'],
  [/^Expected one of .*?\.(?: Did you mean "(.*)"\?)?$/, 'Ce mot n’est pas connu ici. $1'], [/^Must be text of (?:1 to|at most) (\d+) characters; this has (\d+)\.$/, 'Au plus $1 caractères ; il y en a $2.'], [/^Must have at most (\d+) entries; this has (\d+)\.$/, 'Au plus $1 ; il y en a $2.'],
  [/^Must have 1 to (\d+) lines; this has (\d+)\.$/, 'De 1 à $1 lignes ; il y en a $2.'], [/^Must be two relative humidities in percent, each from 0 to (\d+): .*$/, 'Il faut deux humidités relatives de 0 à $1 %.'], [/^Must be one percentage from 0 to 50, .*$/, 'Il faut un pourcentage de 0 à 50.'], [/^Expected one percentage or two, .*$/, 'Il faut un pourcentage, ou deux.'],
  [/^Must be one length from 0 to 1 m, or two: .*$/, 'Il faut des longueurs de 0 à 1 m.'], [/^Must be two lengths above 0 and at most 100 m, .*$/, 'Il faut deux longueurs au-dessus de 0, au plus 100 m.'], [/^Must be two lengths from 50 mm to 100 m, .*$/, 'Il faut deux longueurs de 50 mm à 100 m ; vide : sans limite.'], [/^Expected an array of two lengths, .*$/, 'Il faut deux longueurs.'],
  [/^(\w{3}) has (\d) decimal digits; (.*) has more\.$/, '$1 a $2 décimales ; $3 en a plus.'], [/^Must be less than (.*): larger numbers cost less each\.$/, 'Doit être moins que $1 : en plus grand nombre, la pièce coûte moins.'], [/^Must be more than (.*): the counts rise from entry to entry\.$/, 'Doit être plus que $1 : les nombres vont en croissant.'],
  [/^Required: the price of one(?: sheet)?, .*$/, 'Il manque le prix, ou 0 à acheter au plus.'], [/^Required where mayBuy is true: .*$/, 'Il manque le prix en magasin : on veut pouvoir l’acheter tout fait.'], [/^A panel that may be bought needs its shopPrice: .*$/, 'Il manque le prix en magasin d’un panneau comparable.'],
  [/^Required where there are no remnants: .*$/, 'Il manque comment la toile se vend, ou un coupon.'], [/^Must have at least one container where nothing is on hand\.$/, 'Il manque un contenant, ou ce qui est en stock.'], [/^Required.*$/, 'À remplir.'],
  [/^Lost at both sides, this leaves nothing of the cloth's width\.$/, 'Perdu des deux côtés, il ne reste rien de la toile.'], [/^Lost at both edges, this leaves nothing of board "(.*)"\.$/, 'Perdu aux deux bords, il ne reste rien du panneau « $1 ».'], [/^This leaves nothing of the (?:smallest )?panel.*$/, 'Il ne reste rien du panneau.'],
  [/^"(.*)" is already the .* at (.*); each must be different\.$/, '« $1 » sert déjà ; chacun doit être autre.'], [/^The order has no .* with the id "(.*)"\.$/, 'La fiche n’a pas « $1 ».'], [/^Too small to be counted exactly on (.*): .*$/, 'Trop petit pour être compté exactement sur $1.'], [/^Too many to be counted exactly at once .* the first (\d+) alone\.$/, 'Trop à compter d’un coup pour une si petite taille : demandez les $1 premiers seuls.'],
  [/^This order might take more than (\d+) of these\. .*$/, 'Il pourrait en falloir plus de $1. Vérifiez le pas et les panneaux.'], [/^This order would take more than (\d+) of these\. .*$/, 'Il en faudrait plus de $1. Vérifiez volume, couverture et couches.'],
  [/^Missing: nothing is saved to take boards from, .*$/, 'Il n’y a aucun panneau à scier : ajoutez-en un à acheter ou au casier.'], [/^Missing: nothing is saved to take cloth from, .*$/, 'Il n’y a aucune toile : ajoutez-en une à acheter ou au casier.'], [/^Missing: the saved ones are priced in (.*) and this order is in (.*)\. .*$/, 'Le casier compte en $1 et cette fiche en $2.'],
  [/^A budget does not go together with mayBuy: .*$/, 'Un budget ne va pas avec « acheter tout fait ».'], [/^A budget does not go together with spares: .*$/, 'Un budget ne va pas avec une réserve.'], [/^More than the line has panels: .*$/, 'Plus que la ligne n’en a.'], [/^Loose cloth has no board to glue a cradle to\.$/, 'Une toile libre n’a pas de panneau pour un châssis.'], [/^Only cloth is mounted: .*$/, 'Seule la toile se colle plus tard.'],
  [/^A working day is at least an hour long, .*$/, 'Une journée a au moins une heure et finit le jour même.'], [/^Expected a day from 2000 to 2999, .*$/, 'Il faut un jour tel que 2026-12-01.'], [/^Expected an hour of the day, .*$/, 'Il faut une heure telle que 09:00.'], [/^Expected the name of a time zone .*$/, 'Il faut un fuseau horaire tel que Europe/Paris.'], [/^Expected a currency code of ISO 4217, .*$/, 'Il faut une monnaie telle que EUR, USD ou JPY.'],
  [/^The driest must not be damper than the dampest\.$/, 'Le plus sec n’est pas plus humide que le plus humide.'], [/^Wishes fill spare board: .*$/, 'Un souhait est nu ou enduit.'],
  [/^"(.*)" is no currency code of ISO 4217, .*$/, '« $1 » n’est pas une monnaie telle que EUR, USD ou JPY.'], [/^(\w+): (?=no )/, '$1 : '],
  [/\bno (\S+) of (\S+) or thicker is at least (.*?)(?= within its trimmed|, the panel's height|;|\.?$)/g, 'aucun « $1 » de $2 ou plus ne fait au moins $3'], [/\bno (\S+) of (.*?) is at least (.*?)(?= within its trimmed|, the panel's height|;|\.?$)/g, 'aucun « $1 » de $2 ne fait au moins $3'],
  [/ within its trimmed edges/g, ' entre ses rives'], [/, the panel's height along the board's height/g, ', la hauteur du panneau dans celle de la plaque'], [/\bno (\S+) is at least (.*?) between its selvedges, margins included/g, 'aucune « $1 » ne fait au moins $2 entre ses lisières, débords compris'],
  [/\b(\d+) of (\d+) find no room on the \S+ there is for them/g, '$1 sur $2 ne trouvent pas place'], [/\b(\d+) pieces of its cradles find no room on the strips there are for them/g, '$1 tasseaux de ses châssis ne trouvent pas place'],
  [/a board is large enough, but not within /g, 'un panneau est assez grand, mais pas pour '], [/saw\.carry, (.*?): it must hold /g, 'la voiture ($1) : il lui faut '], [/saw\.largest, (.*?): it must hold /g, 'ce que vous maniez seul ($1) : il faut '],
  [/saw\.heaviest, (.*?): the panel weighs /g, 'le poids que vous maniez seul ($1) : le panneau pèse '], [/saw\.fenceReach, (.*?): a fence that reaches (.*?) would do/g, 'la course du guide ($1) : il faut $2'], [/ and (?=la |ce |le )/g, ' et '],
  [/« board »/g, 'panneau'], [/« cloth »/g, 'toile'], [/^The search was ended, .*$/, 'La recherche s’est arrêtée avant un premier plan. Relancez-la, ou en parties.'],
  [/^Of "(.*)" (\d+) are said to be spoiled, and (\d+) were made\.$/, 'De $1, $2 seraient ratés, et $3 ont été faits.'], [/^Of sheet (\d+) (\d+) are said to be spoiled, and (\d+) were cut\.$/, 'De la plaque $1, $2 seraient ratées, et $3 ont été coupées.'],
  [/^A budget of (.*) is not enough for a single panel of this order\. .*$/, 'Un budget de $1 ne suffit pour aucun panneau.'],
];

/** Ce qui ne va pas dans l’ensemble. @type {Record<string, string>} */
const PROBLEMS = {
  '/problems/no-board-fits': 'Aucun panneau ne convient.', '/problems/not-enough-stock': 'Il n’y a pas assez pour tout faire.', '/problems/no-cloth-fits': 'Aucune toile ne convient.', '/problems/no-strip-fits': 'Aucun tasseau ne convient.',
  '/problems/no-plan-in-time': 'La recherche s’est arrêtée avant un premier plan. Relancez-la, ou en parties.', '/problems/internal-error': 'La faute est au service. Rien de ce qui est gardé n’a changé ; son journal en dit plus.',
  '/problems/too-many-places': 'Le plan est trop grand pour être détaillé : envoyez la commande en parties, ou avec moins de formats.', '/problems/body-too-large': 'La fiche est trop longue pour le service.', '/problems/plan-is-cut': 'Ce plan est déjà réalisé : il reste.', '/problems/already-cut': 'Cette série est déjà inscrite comme faite.',
};

/** D’où viennent les formats. @type {Record<string, string>} */
const SOURCES = {
  'common practice, no standard': 'usage courant, sans norme', 'common practice': 'usage courant', 'ISO 216, series A': 'ISO 216, série A', 'a stretcher maker\'s published table; S is square': 'table publiée par un fabricant de châssis ; S est carré',
  'the French standard series Figure, Paysage, Marine, as tabulated in public encyclopaedias': 'séries françaises Figure, Paysage, Marine, d’après les encyclopédies publiques',
};

/**
 * Un signe double ne commence pas une ligne : il tient à son mot, et les guillemets à ce qu’ils citent. Vaut pour tout texte ci-dessous.
 * @template T @param {T} text @returns {T}
 */
const bound = (text) => /** @type {any} */ (typeof text === 'string' ? text.replace(/ (?=[:;?!»])/g, '\u00a0').replace(/« /g, '«\u00a0')
  : typeof text === 'function' ? (/** @type {any[]} */ ...about) => bound(text(...about))
    : Array.isArray(text) ? text.map(bound)
      : typeof text === 'object' && text !== null ? Object.fromEntries(Object.entries(text).map(([name, one]) => [name, bound(one)])) : text);

/** Les nombres avec une virgule ; ce qui est cité reste comme écrit. @param {string} text */
const comma = (text) => text.replace(/«[^»]*»|(\d)\.(?=\d)/g, (all, digit) => (digit === undefined ? all : `${digit},`));

/** @type {typeof import('./en.js').default} */
export default bound(/** @type {typeof import('./en.js').default} */ ({
  language: 'fr',
  name: 'Français',
  said: (one) => (SERVICE[one.id] ? `${SERVICE[one.id]}${one.here ? ` Ici : ${comma(one.here)}${one.here.endsWith('…') ? '' : '.'}` : ''}` : one.text),
  colon: ' : ',
  figures: comma,
  typed: (text) => text.replace(/(\d)\.(?=\d)/g, '$1,'),
  problem: (type) => PROBLEMS[type ?? ''] ?? '',
  fault: (text) => comma(FAULTS.reduce((now, [english, french]) => now.replace(english, french), text).trim()),
  drawn: (text) => comma(DRAWN.reduce((now, [english, french]) => now.replace(english, french), text)),
  page: {
    title: 'Panel Service', skip: 'Au bouton', batch: 'Série', batchHint: 'nom de la série', units: 'Mesures en', currency: 'Monnaie',
    undo: 'Annuler', notKept: 'Ce navigateur ne garde rien : imprimez ou copiez ce qu’il vous faut.',
    fresh: 'Fiche vierge', examples: 'Exemples', earlier: 'Fiches précédentes', plans: 'Plans au casier', isMade: 'fait', open: 'Ouvrir', unnamed: 'sans nom', tagline: 'quoi acheter, comment couper, ce que coûte chaque panneau', fractions: 'Fractions', decimals: 'Décimales', inchesAs: 'Pouces en',
    nav: 'Les jours du travail', language: 'Langue',
  },
  door: {
    head: 'Panel Service', code: 'Six chiffres', join: 'Entrer', hint: 'Quelqu’un dont le navigateur est déjà admis touche « Admettre un téléphone » et les dicte.',
    wrong: 'Ces chiffres ne vont pas. Ils servent une fois, pendant quelques minutes : demandez-en d’autres.', wait: 'Trop d’essais. Attendez une minute, puis demandez de nouveaux chiffres.',
    letIn: 'Admettre un téléphone', leave: 'Sortir, sans rien garder ici', readOut: (/** @type {string} */ host, /** @type {string} */ code, /** @type {string} */ until) => `Sur le téléphone, ouvrez ${host} et tapez ${code}, avant ${until}.`,
  },
  units: { inch: 'pouces', centimetre: 'centimètres', millimetre: 'millimètres' },
  area: { inch: 'in²', centimetre: 'cm²', millimetre: 'cm²' },
  volume: { inch: 'fl oz', centimetre: 'mL', millimetre: 'mL' },
  days: {
    order: ['', 'La commande'], errand: ['1', 'Les courses', 'ce qu’il faut acheter'], saw: ['2', 'À la scie', 'débiter les panneaux'],
    bench: ['3', 'À l’établi', 'couper la toile, coller, presser'], morning: ['4', 'Le lendemain', 'araser et contrôler'],
    tally: ['5', 'Le compte', 'ce que cela a coûté'], rack: ['6', 'Retour au casier', 'ce qui reste'],
  },
  make: {
    head: 'À fabriquer', rack: 'Formats courants, à la même échelle', series: 'Formats', faces: 'Forme', way: 'Accroché',
    upright: 'en hauteur', lying: 'en largeur', square: (size) => `Un carreau fait ${size}.`, source: (s) => `Mesures : ${SOURCES[s] ?? s}.`,
    tap: 'Touchez un format pour le mettre sur la fiche', as: 'en',
    add: (name, size) => `Ajouter ${name}, ${size}`, howMany: (name) => `Combien de ${name}`,
    write: 'Ou écrivez comme sur le papier', writeExample: '12 8x10 lin, 4 16 x 20 enduit, 6F × 3',
    writeHint: 'Nombre, mesures, surface (lin, coton, enduit, nu) ; @ 7,40 pour le prix en magasin. On peut coller une colonne de tableur : nombre, largeur, hauteur.',
    putOn: 'Mettre sur la fiche', unread: (text) => `« ${text} » : je n’y lis pas de mesures. Écrivez par exemple 12 8x10 lin.`,
    own: 'Autre format', none: 'Rien sur la fiche pour l’instant. Touchez un format ou écrivez une ligne.',
    of: 'de', by: '×', shop: 'en magasin', each: 'pièce', more: 'plus', remove: 'Retirer', quantity: 'nombre', width: 'largeur', height: 'hauteur',
    surface: 'surface', clothKind: 'toile', boardKind: 'panneau', anyCloth: 'toute toile', anyBoard: 'tout panneau', on: 'sur',
    mark: 'repère', thickness: 'épaisseur', thicknessHint: 'vide : selon la règle, 3/16 in à partir de 16 × 20 in (usage courant)', spares: 'en réserve', mayTurn: 'peut être tourné sur le panneau',
    mayBuy: 'acheter tout fait si c’est moins cher', first: 'pressé d’abord : il le faut en premier', mount: 'coller la toile', mountNow: 'dans cette série', mountLater: 'plus tard : couper dès à présent', cradle: 'châssis de tasseaux au dos', cradleAsked: 'selon la fiche', cradleYes: 'oui', cradleNo: 'non', pack: 'dans le sac',
    worth: 'vaut, pour un budget', worthHint: 'vide : le prix en magasin', total: (n) => count(n, 'panneau', 'panneaux'),
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
    strips: 'Tasseaux pour châssis', addStrip: 'Autre tasseau', priceFrom: 'Moins cher par quantité', addPriceFrom: 'Prix pour davantage', from: 'à partir de', priceEach: 'la pièce à', shop: 'acheté chez', anyShop: 'un magasin sans frais',
    stiffness: 'Sa raideur à elle', density: 'pèse', elasticity: 'raideur (module d’élasticité), dans le fil', elasticityAcross: 'en travers du fil', shear: 'module de cisaillement', poisson: 'coefficient de Poisson', expansion: 'gonfle de 35 à 80 % d’humidité', stiffnessHint: 'tout vide : comme d’usage pour ce genre',
    itsOwn: 'Ses temps et sa température', leastTemperature: 'pas en dessous de', itsOwnHint: 'vide : comme à l’établi',
    ground: 'apprêtée à', groundNone: 'rien', groundAcrylic: 'l’acrylique', groundOil: 'l’huile', base: 'fait avec', baseWater: 'eau', baseOil: 'huile', baseSolvent: 'solvant', loss: 'perdu, pot et brosse', thinning: 'allongé de', faces: 'sur', oneFace: 'la face', bothFaces: 'les deux faces',
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
    otherSide: (what) => `${what}, autre côté`,
    kept: 'plus petite chute gardée', keptHint: 'en dessous, c’est du rebut', margin: 'toile en plus, côtés', marginEnds: 'toile en plus, haut et bas', marginHint: '1/2 in par côté, certains 1 in (usage courant)',
    keptCloth: 'plus petit coupon gardé', pressHours: 'sous presse', pressHint: 'une nuit (usage courant)', hours: 'heures', pressSpaces: 'piles à la fois', stackHeight: 'panneaux par pile',
    search: 'La recherche', clothFold: 'Toile par côté, presse et séchage', marginRight: 'toile en plus, à droite', marginBottom: 'toile en plus, en bas', marginSideHint: 'vide : comme à gauche et en haut ; davantage là où la toile se rabat',
    shrinkage: 'toile coupée plus grande, en largeur', shrinkageHeight: 'en hauteur', shrinkageHint: 'contre le retrait, débords compris', pressure: 'pression sous presse', pressureHint: '0,23 psi ou 1,58 kPa si vide', openMinutes: 'poids posé avant', openHint: 'si la colle ne le dit pas : 10', minutes: 'minutes', dryHours: 'une couche sèche', dryHint: 'si l’enduit ne le dit pas : 4', restHours: 'repos des panneaux finis', restHint: '24 si vide', room: 'au plus froid dans la pièce',
    cradles: 'Raideur et châssis', brace: 'renforcer ce qui fléchit trop', braceHint: 'un châssis à chaque ligne qui le pourrait', braceFrom: 'renforcé d’usage dès', braceFromHint: 'grand côté ; vide : 12 in isorel, 18 in MDF, 20 in contreplaqué (les avis diffèrent)',
    backAir: 'air derrière un panneau', frontAir: 'devant une face tout juste enduite', facesHint: '50 et 65 si vide (usage courant)', driest: 'air le plus sec', dampest: 'le plus humide', humidityHint: '35 et 80 si vide : là où les mesures des panneaux commencent et finissent', airTemperature: 'température de cet air', airHint: '20 si vide', load: 'une main appuie au milieu de', loadHint: '1 kg si vide', limit: 'flèche admise : petit côté sur', limitHint: '300 si vide', stripWidth: 'tasseau, face collée', stripDepth: 'tasseau, épaisseur du châssis', stripHint: '3/4 × 1 1/2 in si vide', inset: 'châssis en retrait du bord de', keptStrip: 'plus court tasseau gardé', clampHours: 'châssis sous serre-joints',
    days: 'Jours et mains', start: 'début le', startHint: 'vide : sans date, tous les jours comptent', from: 'travail dès', to: 'jusqu’à', toHint: 'de 9 h à 17 h si vide', hands: 'paires de mains', zone: 'fuseau horaire', zoneHint: 'par exemple Europe/Paris, si l’heure change entre-temps ; vide : celui de ce navigateur, pour l’agenda', worked: 'Jours travaillés', workedHint: 'aucun coché : tous',
    weekdays: { monday: 'lun', tuesday: 'mar', wednesday: 'mer', thursday: 'jeu', friday: 'ven', saturday: 'sam', sunday: 'dim' },
    tax: 'taxe en sus des prix', taxHint: 'vide : prix tels que payés', budget: 'argent disponible', budgetHint: 'vide : tout faire. Sinon autant qu’il suffit, selon ce que cela vaut',
    addConsumable: 'Une chose qui s’use', consumable: 'ce qui s’use', lasts: 'un suffit pour', per: 'compté en', wornBy: { sawMetre: 'mètres sciés', sawFoot: 'pieds sciés', clothMetre: 'mètres de toile coupés', clothFoot: 'pieds de toile coupés', panel: 'panneaux' },
    addTool: 'Un outil à amortir', tool: 'outil', spreadOver: 'réparti sur', panels: 'panneaux', addShop: 'Un magasin qui compte le trajet', shop: 'magasin', charge: 'livraison ou trajet', freeFrom: 'offert dès', freeFromHint: 'vide : toujours compté',
    labour: 'une heure de votre travail', labourHint: 'vide : pas comptée', overhead: 'autre frais', addOverhead: 'Autre frais', overheadName: 'pour quoi', effort: 'chercher', quick: 'vite', steady: 'posément', thorough: 'à fond',
  },
  act: {
    away: 'Le service ne répond pas. Rien n’est perdu : il est rappelé jusqu’à ce qu’il réponde.', noWait: 'Ne pas attendre',
    plan: 'Établir le plan', shortcut: 'Ctrl + Entrée', again: 'Refaire le plan', planning: 'Recherche du plan le moins cher …', stop: 'Arrêter, garder le meilleur',
    stale: 'La fiche a changé depuis ce plan.', best: 'Meilleur jusqu’ici', least: 'Aucun plan ne peut coûter moins de',
    done: (cash) => `À acheter : ${cash}.`,
  },
  wrong: {
    head: 'Cette fiche ne peut pas encore être planifiée', unreachable: 'Le service ne répond pas. Tourne-t-il encore ? Rien de la fiche n’est perdu.',
    busy: 'Tous les planificateurs sont occupés. Réessayez dans un instant.', lost: 'Le service ne garde plus ce plan.', lacks: { boards: 'Aucun panneau à scier sur la fiche. Ajoutez-en un à acheter ou au casier, ou prenez au casier de l’atelier.', cloths: 'Aucune toile sur la fiche. Ajoutez-en une à acheter ou au casier, ou prenez au casier de l’atelier.' }, drawing: 'Ce dessin n’a pas pu être chargé.', retry: 'Réessayer',
  },
  proof: {
    did: (/** @type {number} */ saved, /** @type {string} */ money, /** @type {number} */ sheets) => `Par rapport au plan précédent : ${saved === 0 ? 'autant à acheter' : `${money} ${saved > 0 ? 'de moins' : 'de plus'} à acheter`}${sheets === 0 ? '' : `, ${count(Math.abs(sheets), 'plaque')} de ${sheets > 0 ? 'moins' : 'plus'}`}.`,
    proven: 'Aucun plan n’achète pour moins : prouvé au centime.', provenNothing: 'Tout ce qu’il faut est au casier.',
    open: (gap, share) => `Un plan moins cher existe peut-être, de ${gap} au plus (${share}) ; aucun n’a été trouvé.`,
    early: 'La recherche a été arrêtée.', toBuy: 'à acheter', notes: 'À savoir',
  },
  change: {
    head: 'Ce qui y changerait quelque chose', use: 'Faire ainsi',
    blade: (kerf) => `Avec une lame de ${kerf}`, under: (size) => `En coupant ${size} de moins`, more: (n, what) => `${n} de plus en ${what}`,
    less: (money) => `${money} de moins à acheter.`, free: 'rien de plus à acheter.', sheets: (n) => (n > 0 ? `, ${count(n, 'plaque')} de moins` : ''),
  },
  errand: {
    printList: 'Imprimer cette liste seule',
    shops: { board: 'Au dépôt de bois', cloth: 'Au comptoir des toiles', liquid: 'Chez le marchand de couleurs', ready: 'Panneaux tout faits', way: 'Pour le trajet' },
    surplus: (goods) => `Plus qu’il n’est coupé, car cela coûte moins : ${goods}. Cela retourne au casier.`,
    nothing: 'Rien à acheter.', sum: 'Argent pour les courses', csv: 'En tableau (CSV)', share: 'Partager la liste', copied: 'Copié.', print: 'Imprimer la fiche', at: 'à',
    fromRack: 'À prendre au casier',
    ofSteps: (n, length) => `${n === 1 ? '' : `${n} fois `}${length} du rouleau`,
  },
  saw: {
    drawn: 'Dessin en cours …',
    nothing: 'Aucun panneau à couper.', everyCut: 'À chaque coupe', run: 'Le parcours de sciage', runHint: 'Un réglage après l’autre. Choisissez-en un pour voir ses traits sur les plaques.',
    setting: (tool, size) => `${tool} à ${size}`, fence: 'Guide', sled: 'Butée du chariot', sheet: 'Plaque', sheets: 'Les plaques', cutsSaid: (s) => `${s.many ? 'Plaques' : 'Plaque'} ${s.sheets} : ${s.one ? 'trait' : 'traits'} ${s.cuts}`, copies: (n) => (n === 1 ? 'une plaque' : `${n} plaques pareilles`),
    settings: (/** @type {number} */ n, /** @type {number} */ steps) => `${n} réglages en ${steps} étapes.`, fewest: 'Aucun ordre de ces coupes n’en demande moins.', atLeast: (/** @type {number} */ n) => `Il en faut au moins ${n}.`, slip: 'Une fiche à épingler près de la scie', slipLetter: 'sur papier Letter', supplierSlip: 'Une fiche pour le fournisseur', supplierLead: 'Ensuite chaque morceau tient dans la voiture et se manie à la scie. Dans cet ordre :', from: { x: 'depuis le bord gauche', y: 'depuis le bord haut' },
    tolerance: 'À quoi s’attendre des panneaux', toleranceHint: 'Guide réglé à ± 1/64 in ou 0,5 mm ; faux équerre dans la mesure où une plaque peut l’être.', toleranceHead: ['Panneau', 'Largeur', 'Hauteur', 'Faux équerre', 'Dans son cadre'],
    fits: 'entre', fitsNot: 'peut être trop grand', gap: 'entre, mais un jour peut se voir',
    edge: (side, tool, isFactory) => `bord ${{ left: 'gauche', right: 'droit', top: 'haut', bottom: 'bas' }[side]} ${tool === 'sled' ? 'contre la butée' : 'contre le guide'}${isFactory ? ', d’usine' : ''}`,
    side: { width: 'largeur', height: 'hauteur' }, inSide: (n, mark, side) => `${n} de ${mark} en ${side}`, unmatched: (/** @type {string} */ marks) => `Pas toutes coupées au même réglage, à comparer entre elles : ${marks}.`,
    supplier: 'Faites faire ces traits là où vous achetez', done: 'fait', large: 'En grand', close: 'Fermer', next: 'Fait, suivant', back: 'Retour', finish: 'Fait, tout est coupé', stand: 'Se mettre à la scie', stepOf: (n, of) => `${n} sur ${of}`,
    first: 'La notice de la scie, les règles locales et les gens d’expérience passent avant tout. Capot et couteau diviseur en place, poussoir à portée, yeux, oreilles et poumons protégés.',
    strips: 'Tasseaux des châssis', stripsLeast: 'Aucune autre coupe n’achète moins de tasseaux.', stripsOpen: (gap) => `Une coupe moins chère existe peut-être, de ${gap} au plus.`, stripFor: 'pour', stripRest: (length) => `${length} sont gardés.`,
    pieces: (n) => count(n, 'pièce'), zoom: 'Taille',
  },
  bench: {
    nothing: 'Ni toile, ni colle, ni enduit dans cette série.', cloth: 'Couper la toile', copies: (n) => (n === 1 ? 'une longueur' : `${n} pareilles`), glue: 'À préparer', fromHand: 'du stock', left: 'de reste',
    press: 'La presse', stack: (stacks, most) => `${count(stacks, 'pile')} de ${most} au plus`,
    rounds: (rounds, hours) => (rounds === 1 ? `Tout tient sous presse en une fois : ${hours} heures.` : `${rounds} tours de presse, ${hours} heures chacun.`),
    order: 'Du milieu vers les bords ; presser bords et coins ; un intercalaire entre les panneaux (usage courant).',
    weights: 'Le poids sur chaque pile', onStack: (n, size) => `de livres sur la pile ${n}, ${size}`, layAtOnce: (n) => `en poser ${n}, puis le poids`, first: 'à faire d’abord',
    days: 'Les jours', day: (n) => `jour ${n}`, done: (day, time) => `Fini et reposé : ${day}, ${time}.`, soonest: 'Pas plus tôt avec ces mains, ces heures et cette presse.',
    atMost: (hours) => `Au mieux ${hours} h plus tôt.`, bars: 'Mains, presse et séchage', later: (marks) => `Coupés maintenant, à maroufler plus tard : ${marks}.`, mountNow: 'En planifier le collage', calendar: 'Ces jours pour un agenda (ICS)',
    careHead: 'Attention', care: {
      'oil-ground-water-glue': 'Toile préparée à l’huile et colle à l’eau : elle ne sèche que par le panneau et les chants, lentement. Pas de colle sur la face préparée, presser plus longtemps, faire un essai.',
      ventilation: 'Solvant dans la colle ou l’enduit : fenêtres ouvertes pendant l’emploi et le séchage, pas de flamme ; un masque à poussière n’arrête pas les vapeurs.',
      'oily-rags': 'Les chiffons imbibés d’huile siccative s’échauffent : les étendre dehors, ou sous l’eau dans une boîte en métal (consigne des pompiers).',
      'sanding-dust': 'Poncer un enduit fait une poussière fine : à l’eau ou avec aspiration, masque adapté, essuyer au lieu de balayer.',
      'too-cold': 'La pièce peut être trop froide pour la colle ou l’enduit : chauffer pièce, panneau et pot, ou attendre.',
      'open-time': 'Le temps ouvert de la colle est plus court qu’un panneau n’en demande : en étaler moins à la fois.',
      'tight-frame': 'Les grands panneaux gonflent à l’air humide : laisser du jeu dans le cadre. Garder entre 45 et 60 % d’humidité relative.',
      'one-sided': 'Une seule face mouillée peut faire bomber : isoler aussi dos et chants, ou sécher sous presse.',
    },
  },
  morning: {
    trim: 'Araser', to: 'à', steps: {
      cure: 'La colle a pris : soulever un coin, rien ne cède.', blade: 'Une lame neuve au cutter.', edges: 'Recoller les bords qui se lèvent.', seal: 'Isoler les deux faces et tous les chants contre l’humidité.', mark: 'Mesures, panneau, enduit et date au dos.',
    },
    hint: 'Usage courant.', check: 'Contrôler',
    strength: {
      head: 'Leur raideur', columns: ['Panneau', 'Poids', 'Fléchit sur ses bords : seul ; sous la main', 'Permis sous la main', 'Par ses coins : seul ; sous la main', 'Épaisseur voulue (d’usage)', 'Bombe si une face est humide', ''], stiff: 'assez raide', thicker: 'prendre plus épais',
      brace: (strips) => `à renforcer : ${strips}`, cradled: (strips) => `a son châssis : ${strips}`, thumb: 'assez raide ; renforcé selon l’usage',
      grain: { unknown: 'fil dans un sens ou l’autre, le plus faible compte', alongLong: 'fil dans le grand côté', alongShort: 'fil dans le petit côté' },
      sag: (marks) => `${marks} : trop de flèche sous la main.`, strips: (pieces) => `À renforcer de tasseaux : ${pieces}.`, stripsCost: 'Les tasseaux', thickerCost: 'Un panneau plus épais', adds: (money) => `: ${money} de plus`, saves: (money) => `: ${money} de moins`,
      noStrips: 'Il n’y a pas de tasseaux sur la fiche, ou trop peu.', noThicker: 'Aucun panneau de la fiche n’est assez raide pour tous.', cheaper: { strips: 'Les tasseaux reviennent moins cher.', thicker: 'Le panneau plus épais revient moins cher.' }, put: 'Mettre les tasseaux et refaire le plan',
      past: '≤ : au-delà de la demi-épaisseur, il fléchit moins que ne dit la théorie.',
      hint: 'Théorie des plaques, contrôlée sur des tables publiées.', batch: (weight) => `La série pèse ${weight}.`, pack: (weight) => `Votre sac : ${weight}.`,
    },
  },
  tally: {
    each: 'pièce', area: 'à la surface seule', shop: 'en magasin', savedEach: (money) => `${money} gagnés par pièce.`, dearerEach: (money) => `Le magasin serait moins cher de ${money} par pièce.`, areaHint: 'prix × surface du panneau ÷ celle de la plaque : le calcul au crayon, sans les pertes',
    part: { board: 'panneau', cloth: 'toile', adhesive: 'colle', primer: 'enduit', strips: 'tasseaux', ready: 'tout fait', delivery: 'livraison', labour: 'travail', overheads: 'autres', consumables: 'consommables', tools: 'outils' },
    curve: 'La même série plusieurs fois', still: 'De ce qui reste on ferait encore, sans autre frais que le travail :', or: ', ou ',
    budget: (cash, lines) => `Avec ${cash} : ${lines}.`, budgetProven: 'Aucun autre choix ne vaut plus.', budgetOpen: 'Un autre choix peut valoir plus.',
    leftOut: (lines) => `Pas faits, l’argent n’y suffit pas : ${lines}.`,
    total: 'En tout', sum: (used, back, cash) => `Cette série consomme ${used}. ${back} retournent au casier. Les magasins reçoivent ${cash}.`,
    savedAll: (money, share) => `Par rapport au magasin, ${money} de gagnés, soit ${share}.`, dearer: (money) => `Le magasin serait moins cher de ${money}.`,
    waste: (dust, trim, scrap) => `Du panneau, ${dust} partent en sciure, ${trim} en rives et ${scrap} sont trop petits pour être gardés.`,
  },
  made: {
    head: 'La série est-elle faite ?', hint: 'Inscrivez-la alors : ce qu’elle a pris quitte le casier, ce qui reste y entre, chaque pièce avec un court repère.', spoiled: 'Quelques-uns sont ratés',
    of: (/** @type {string} */ mark) => `de ${mark} ratés`, ofSheet: (/** @type {number} */ n) => `de la plaque ${n} ratées, avec tout ce qu’elles portent`, sheetHint: 'Des panneaux seuls, ou des plaques entières avec tout ce qui devait en sortir.', book: 'C’est fait', booked: (/** @type {string} */ when) => `Inscrite comme faite, ${when}.`, write: 'À noter au crayon :',
    replace: 'Préparer une fiche pour les ratés', undo: 'Ce n’était pas fait : annuler l’inscription',
  },
  shelf: {
    use: 'Prendre panneaux, toile, colle et enduit au casier de l’atelier', save: 'Garder ces prix au casier', open: 'Ce qu’il y a au casier', there: 'Sur place', toBuy: 'À acheter',
    empty: 'Rien encore. Une série inscrite comme faite y laisse ses chutes.', saved: 'Gardé. Une autre fiche pourra s’y servir.', howMany: (/** @type {string} */ id) => `Combien de ${id}`,
    priced: (/** @type {string} */ day) => ` prix du ${day}`,
    sorts: { board: 'panneau', offcut: 'chute', cloth: 'toile', remnant: 'coupon', adhesive: 'colle', primer: 'enduit', panel: 'panneau fini', strip: 'tasseau' },
  },
  rack: {
    labels: 'Étiquettes pour les dos et les restes', paper: 'sur', page: 'page', plain: 'papier à couper', papers: { a4: 'A4', letter: 'Letter' }, strips: 'Tasseaux',
    nothing: 'Il ne reste rien.', boards: 'Panneaux', cloth: 'Toile', liquids: 'Dans le flacon', hint: 'Notez la mesure au crayon sur chacun.',
  },
  yields: { head: 'Combien dans une plaque ?', ask: 'dans', all: 'chacune', go: 'Compter', comeOut: 'en sortent.', area: (n) => `À la surface seule, on en espérerait ${n}.` },
}));
