namespace PanelService.Store;

/// <summary>An answer that means "no": the transaction it comes from is rolled back, so nothing that is stored changes.</summary>
public interface IRefusal;
