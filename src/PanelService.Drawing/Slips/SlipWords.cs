using System.Collections.Immutable;
using System.Globalization;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>Every word that stands on a slip, in one language.</summary>
internal abstract record SlipWords
{
    public static SlipWords Of(SlipLanguage language) => language == SlipLanguage.French ? new FrenchSlipWords() : new EnglishSlipWords();

    public abstract string SawRun { get; }

    public abstract string Foot { get; }

    public abstract string NothingSawn { get; }

    public abstract string Continued { get; }

    public abstract string And { get; }

    public abstract string Factory { get; }

    public abstract string Fence { get; }

    public abstract string Sled { get; }

    public abstract string SupplierTitle { get; }

    public abstract string SupplierSlip { get; }

    public abstract string SupplierNothing { get; }

    public abstract string SupplierLead { get; }

    public abstract string SupplierFoot { get; }

    public abstract string Page(string of, int page, int pages);

    public abstract string Summary(SawProof proof);

    public abstract string Colon { get; }

    public abstract string Sheet(IReadOnlyList<(int Number, int Copies)> sheets);

    public abstract string Cut(int number);

    public abstract string Edge(SheetEdge edge);

    public abstract string Sheets(int copies);

    public abstract string Measured(string distance, SheetEdge from);

    public abstract string Kerf(string kerf);

    public abstract string Parts(string parts);

    /// <summary>What a caution says.</summary>
    public abstract string Caution(Warning caution);

    /// <summary>The danger of a caution alone, without what to do: that stands before its first colon.</summary>
    public string Danger(Warning caution)
    {
        string danger = Caution(caution with { Here = null }).Split(Colon)[0].TrimEnd('.');
        return caution.Here is { } here ? $"{danger}{Colon}{Figure(here)}" : danger;
    }

    /// <summary>"3, 4 (2 ×), 7".</summary>
    protected static string Numbers(IReadOnlyList<(int Number, int Copies)> sheets) =>
        string.Join(", ", sheets.Select(sheet => sheet.Copies == 1 ? Written($"{sheet.Number}") : Written($"{sheet.Number} ({sheet.Copies} ×)")));

    /// <summary>"7 15/16 in", "20.5 cm", with the decimal sign of the language; no line ends within it.</summary>
    public string Length(Length length, LengthUnit unit) => Figure(LengthText.Format(length, unit));

    /// <summary>"24 × 48", in the batch's unit.</summary>
    public string Size((Length Width, Length Height) part, LengthUnit unit) =>
        Figure($"{LengthText.FormatFigure(part.Width, unit)} × {LengthText.FormatFigure(part.Height, unit)}");

    protected virtual string Figure(string figure) => figure.Replace(", ", ",\n", StringComparison.Ordinal).Replace(' ', '\u00a0').Replace('\n', ' ');

    protected static string Written(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>The words in English.</summary>
internal sealed record EnglishSlipWords : SlipWords
{
    public override string SawRun => "Saw run";

    public override string Foot => "Cautions, not instructions: the saw's manual, local rules and an experienced person come first.";

    public override string NothingSawn => "Nothing is sawn.";

    public override string Continued => "(continued)";

    public override string And => "and";

    public override string Factory => "factory";

    public override string Fence => "Fence";

    public override string Sled => "Sled stop";

    public override string SupplierTitle => "Have these cuts made where you buy it";

    public override string SupplierSlip => "First cuts";

    public override string SupplierNothing => "Nothing has to be cut where you buy it.";

    public override string SupplierLead => "Then every part fits the car and can be handled at the saw. In this order, each cut from edge to edge of its part:";

    public override string SupplierFoot => "Measure one part before the others are cut. Ask what a cut costs: the plan does not count it.";

    public override string Page(string of, int page, int pages) => Written($"{of}, page {page} of {pages}");

    public override string Summary(SawProof proof) => Written(
        $"{proof.Settings} settings in {proof.Steps} steps. {(proof.Proven ? Written($"No order of these cuts takes fewer settings{(proof.ChangesProven ? ", or fewer changes of them" : "")}.") : Written($"At least {proof.LeastPossible} are needed."))}");

    public override string Colon => ": ";

    public override string Sheet(IReadOnlyList<(int Number, int Copies)> sheets) => sheets is [var (number, copies)]
        ? copies == 1 ? Written($"Sheet {number}") : Written($"Sheet {number}, {copies} ×")
        : $"Sheets {Numbers(sheets)}";

    public override string Cut(int number) => Written($"cut {number}");

    public override string Edge(SheetEdge edge) => $"{Name(edge)} edge";

    public override string Sheets(int copies) => copies == 1 ? "1 sheet" : Written($"{copies} sheets, all alike");

    public override string Measured(string distance, SheetEdge from) => $"{distance} from the {Name(from)} edge";

    public override string Kerf(string kerf) => $"Each cut takes {kerf} (kerf): the part measured off stays whole, the dust comes off the other side.";

    public override string Parts(string parts) => $"Comes out: {parts}";

    public override string Caution(Warning caution) => caution.Here is { } here ? caution.Text.Replace(here, Figure(here), StringComparison.Ordinal) : caution.Text;


    private static string Name(SheetEdge edge) => edge switch
    {
        SheetEdge.Left => "left",
        SheetEdge.Right => "right",
        SheetEdge.Bottom => "bottom",
        _ => "top",
    };
}

/// <summary>The words in French.</summary>
internal sealed record FrenchSlipWords : SlipWords
{
    private static readonly ImmutableDictionary<string, string> Cautions = new Dictionary<string, string>
    {
        ["guards-on"] = "Couteau diviseur à moins de 8 mm de la lame, capot en place, mains hors de la ligne de la lame (HSE WIS16 ; OSHA 29 CFR 1910.213).",
        ["push-stick"] = "Un poussoir d’au moins 450 mm pour les 300 derniers mm de toute coupe (HSE WIS16).",
        ["eyes-and-ears"] = "Lunettes et protection de l’ouïe, pas de gants, rien de flottant.",
        ["dust-hardboard"] = "La poussière d’isorel est de fine fibre de bois (NIOSH : au plus 1 mg/m³ sur 8 heures) : aspiration à la scie et masque ajusté.",
        ["dust-mdf"] = "La poussière de MDF porte de la résine à formaldéhyde (limites : 40 CFR 770.10) : aspiration à la scie, masque ajusté, air frais.",
        ["dust-plywood"] = "La poussière de contreplaqué peut être de bois dur (EH40 : au plus 3 mg/m³ sur 8 heures) : aspiration et masque ajusté ; le parement éclate, le beau côté vers les dents.",
        ["dust"] = "La poussière de panneau nuit aux poumons : aspiration à la scie et masque ajusté.",
        ["thin-kerf"] = "Lame à trait mince (3/32 in, 2,4 mm, ou moins) : montez le couteau diviseur fait pour elle, plus mince que le trait, et ne forcez pas l’avance.",
        ["thick-kerf"] = "Lame à trait plein (1/8 in, 3,2 mm, ou plus) : montez le couteau diviseur fait pour elle, plus épais que la lame, plus mince que le trait.",
        ["large-sheet"] = "Une grande plaque entière : deux personnes, appuis à l’entrée et à la sortie, ou faites faire cette coupe à la scie à panneaux du fournisseur.",
        ["far-fence"] = "Plus de 24 in (610 mm) du guide à la lame, plus loin que ne va le guide de bien des petites scies sur table : voyez dans la notice jusqu’où va le vôtre, et planifiez avec cette portée.",
        ["factory-edge"] = "Une rive d’usine est dressée : une bande mince tombe libre près de la lame. Laissez-la jusqu’à l’arrêt de la lame.",
        ["narrow-rip"] = "Moins de 6 in (150 mm) entre guide et lame : poussez avec un poussoir ou une cale, jamais de la main.",
        ["short-along-fence"] = "Moins de 12 in (300 mm) le long du guide : la pièce peut tourner et être rejetée. Un chariot guide plus sûrement.",
        ["wider-than-long"] = "La pièce est plus large que longue au guide : menez-la au chariot ou au guide d’angle, ou soutenez-la tout du long.",
        ["small-part-free"] = "Un morceau de moins de 6 in (150 mm) des deux côtés tombe près de la lame : laissez-le jusqu’à l’arrêt de la lame, n’allez jamais le chercher.",
        ["no-fence-as-stop"] = "Trop courte pour longer le guide : au chariot, la cote prise par une butée. Ne prenez jamais le guide comme butée d’une coupe traversante menée au chariot ou au guide d’angle.",
    }.ToImmutableDictionary();

    public override string SawRun => "Parcours de sciage";

    public override string Foot => "Précautions, non instructions : la notice de la scie, les règles locales et une personne expérimentée passent avant.";

    public override string NothingSawn => "Rien n’est scié.";

    public override string Continued => "(suite)";

    public override string And => "et";

    public override string Factory => "d’usine";

    public override string Fence => "Guide";

    public override string Sled => "Butée du chariot";

    public override string SupplierTitle => "À faire couper là où vous achetez";

    public override string SupplierSlip => "Premières coupes";

    public override string SupplierNothing => "Rien n’est à faire couper là où vous achetez.";

    public override string SupplierLead => "Ensuite chaque morceau tient dans la voiture et se manie à la scie. Dans cet ordre, chaque coupe d’un bord à l’autre de son morceau :";

    public override string SupplierFoot => "Mesurez un morceau avant que les autres soient coupés. Demandez le prix d’une coupe : le plan ne le compte pas.";

    public override string Page(string of, int page, int pages) => Written($"{of}, page {page} sur {pages}");

    public override string Summary(SawProof proof) => Written(
        $"{proof.Settings} réglages en {proof.Steps} étapes. {(proof.Proven ? Written($"Aucun ordre de ces coupes ne demande moins de réglages{(proof.ChangesProven ? ", ni moins de changements" : "")}.") : Written($"Il en faut au moins {proof.LeastPossible}."))}");

    public override string Colon => " : ";

    public override string Sheet(IReadOnlyList<(int Number, int Copies)> sheets) => sheets is [var (number, copies)]
        ? copies == 1 ? Written($"Plaque {number}") : Written($"Plaque {number}, {copies} ×")
        : $"Plaques {Numbers(sheets)}";

    public override string Cut(int number) => Written($"trait {number}");

    public override string Edge(SheetEdge edge) => $"bord {Name(edge)}";

    public override string Sheets(int copies) => copies == 1 ? "1 plaque" : Written($"{copies} plaques, toutes pareilles");

    public override string Measured(string distance, SheetEdge from) => $"{distance} depuis le bord {Name(from)}";

    public override string Kerf(string kerf) => $"Chaque coupe prend {kerf} (trait) : le morceau mesuré reste entier, la sciure vient de l’autre côté.";

    public override string Parts(string parts) => $"Il en sort : {parts}";

    public override string Caution(Warning caution) => Cautions.TryGetValue(caution.Id, out string? said)
        ? said + (caution.Here is { } here ? $" Ici : {Figure(here)}{(here.EndsWith('…') ? "" : ".")}" : "")
        : caution.Text;

    protected override string Figure(string figure) => base.Figure(figure).Replace('.', ',');

    private static string Name(SheetEdge edge) => edge switch
    {
        SheetEdge.Left => "gauche",
        SheetEdge.Right => "droit",
        SheetEdge.Bottom => "bas",
        _ => "haut",
    };
}
