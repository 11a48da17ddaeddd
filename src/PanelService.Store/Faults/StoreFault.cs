namespace PanelService.Store.Faults;

/// <summary>Why the studio's memory cannot be used just now.</summary>
public enum StoreFault
{
    /// <summary>The disk, or the room allowed for the database, is full.</summary>
    Full,

    /// <summary>The folder or the file cannot be written.</summary>
    NotWritable,

    /// <summary>Another process was writing for longer than we wait.</summary>
    Busy,

    /// <summary>The database server does not answer.</summary>
    Unreachable,

    /// <summary>The database was made by a newer program.</summary>
    Newer,

    /// <summary>The file is damaged, or is no database.</summary>
    Damaged,
}
