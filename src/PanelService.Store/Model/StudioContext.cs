using Microsoft.EntityFrameworkCore;

namespace PanelService.Store.Model;

/// <summary>The studio's tables, the same for every database.</summary>
internal abstract class StudioContext(DbContextOptions options) : DbContext(options)
{
    internal DbSet<PlanRow> Plans => Set<PlanRow>();

    internal DbSet<SupplyRow> Supplies => Set<SupplyRow>();

    internal DbSet<SettingsRow> Settings => Set<SettingsRow>();

    internal DbSet<StockRow> Stock => Set<StockRow>();

    internal DbSet<BookingRow> Bookings => Set<BookingRow>();

    internal DbSet<MovementRow> Movements => Set<MovementRow>();

    internal DbSet<JobRow> Jobs => Set<JobRow>();

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        PlanTable(modelBuilder);
        modelBuilder.Entity<SupplyRow>(supply => supply.ToTable("supplies").HasKey(row => new { row.Sort, row.Id }));
        modelBuilder.Entity<SettingsRow>(settings => settings.ToTable("settings").Property(row => row.Id).ValueGeneratedNever());
        Ledger(modelBuilder);
        modelBuilder.Entity<JobRow>(job => job.ToTable("jobs").HasIndex(row => row.State));
    }

    private static void PlanTable(ModelBuilder model) => model.Entity<PlanRow>(plan =>
    {
        plan.ToTable("plans");
        plan.HasIndex(row => row.CreatedAt);
        plan.HasOne<BookingRow>().WithMany().HasForeignKey(row => row.CutBooking).OnDelete(DeleteBehavior.Restrict);
    });

    private static void Ledger(ModelBuilder model)
    {
        model.Entity<StockRow>(stock =>
        {
            stock.ToTable("stock");
            stock.HasIndex(row => new { row.Letter, row.Number }).IsUnique();
        });
        model.Entity<BookingRow>(booking =>
        {
            booking.ToTable("bookings");
            booking.HasIndex(row => row.UndoOf).IsUnique();
            booking.HasIndex(row => row.PlanId);
        });
        model.Entity<MovementRow>(movement =>
        {
            movement.ToTable("movements");
            movement.HasOne<BookingRow>().WithMany().HasForeignKey(row => row.BookingId).OnDelete(DeleteBehavior.Restrict);
            movement.HasOne<StockRow>().WithMany().HasForeignKey(row => row.StockId).OnDelete(DeleteBehavior.Restrict);

            // Taken back once at most, whoever asks at the same moment.
            movement.HasIndex(row => row.UndoOf).IsUnique();
        });
    }
}
