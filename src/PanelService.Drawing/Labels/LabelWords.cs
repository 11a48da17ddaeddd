using System.Globalization;

namespace PanelService.Drawing.Labels;

/// <summary>Every word of ours that stands on a label, in one language; what the painter calls things stays as it is.</summary>
internal abstract record LabelWords
{
    public static LabelWords Of(SlipLanguage language) => language == SlipLanguage.French ? new FrenchLabelWords() : new EnglishLabelWords();

    public abstract string Offcut { get; }

    public abstract string Remnant { get; }

    public abstract string GrainAlongSecond { get; }

    public abstract string WarpAlongSecond { get; }

    public abstract string Primed { get; }

    public abstract string Bare { get; }

    public abstract string Cloth { get; }

    public abstract string OilGround { get; }

    public abstract string AcrylicGround { get; }

    public abstract string Glue { get; }

    public abstract string Ground { get; }

    public abstract string Signature { get; }

    public abstract string Note { get; }

    public abstract string Date { get; }

    public abstract string Nothing { get; }

    public abstract string Page(int page, int pages);

    public abstract string Thick(string thickness);

    /// <summary>What is on the board; the ground is what the cloth was sold with, or empty.</summary>
    public abstract string GluedOn(string cloth, string ground);

    /// <summary>What will be on it.</summary>
    public abstract string NotYetGluedOn(string cloth, string ground);

    /// <summary>A good and its name: "glue: …".</summary>
    public abstract string Named(string sort, string name);
}

/// <summary>The words in English.</summary>
internal sealed record EnglishLabelWords : LabelWords
{
    public override string Offcut => "offcut";

    public override string Remnant => "remnant";

    public override string GrainAlongSecond => "grain along the second size";

    public override string WarpAlongSecond => "warp along the second size";

    public override string Primed => "primed board";

    public override string Bare => "bare board";

    public override string Cloth => "cloth";

    public override string OilGround => "oil ground";

    public override string AcrylicGround => "acrylic ground";

    public override string Glue => "glue";

    public override string Ground => "ground";

    public override string Signature => "signature";

    public override string Note => "note";

    public override string Date => "date";

    public override string Nothing => "Nothing to label: no panel is cut from board, and no offcut or remnant is kept.";

    public override string Page(int page, int pages) => string.Create(CultureInfo.InvariantCulture, $"Labels, page {page} of {pages}");

    public override string Thick(string thickness) => $"{thickness} thick";

    public override string GluedOn(string cloth, string ground) => ground.Length == 0 ? $"{cloth} glued on" : $"{cloth}, {ground}, glued on";

    public override string NotYetGluedOn(string cloth, string ground) => ground.Length == 0 ? $"for {cloth}, not yet glued on" : $"for {cloth}, {ground}, not yet glued on";

    public override string Named(string sort, string name) => $"{sort}: {name}";
}

/// <summary>The words in French.</summary>
internal sealed record FrenchLabelWords : LabelWords
{
    public override string Offcut => "chute";

    public override string Remnant => "coupon";

    public override string GrainAlongSecond => "fil dans le sens de la seconde mesure";

    public override string WarpAlongSecond => "chaîne dans le sens de la seconde mesure";

    public override string Primed => "panneau enduit";

    public override string Bare => "panneau nu";

    public override string Cloth => "toile";

    public override string OilGround => "enduit à l’huile";

    public override string AcrylicGround => "enduit acrylique";

    public override string Glue => "colle";

    public override string Ground => "enduit";

    public override string Signature => "signature";

    public override string Note => "note";

    public override string Date => "date";

    public override string Nothing => "Rien à étiqueter : aucun panneau n’est scié, ni chute ni coupon gardé.";

    public override string Page(int page, int pages) => string.Create(CultureInfo.InvariantCulture, $"Étiquettes, page {page} sur {pages}");

    public override string Thick(string thickness) => $"épaisseur {thickness}";

    public override string GluedOn(string cloth, string ground) => ground.Length == 0 ? $"{cloth}, collée" : $"{cloth}, {ground}, collée";

    public override string NotYetGluedOn(string cloth, string ground) => ground.Length == 0 ? $"pour {cloth}, pas encore collée" : $"pour {cloth}, {ground}, pas encore collée";

    public override string Named(string sort, string name) => $"{sort} : {name}";
}
