namespace PanelService.Store.Tests.Hosts;

/// <summary>A kind of database that the same tests run against.</summary>
public interface IDatabase
{
    /// <summary>An empty studio of a test's own.</summary>
    Home Open();
}
