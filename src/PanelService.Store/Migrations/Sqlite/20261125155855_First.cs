using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace PanelService.Store.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class First : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "bookings",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    PlanId = table.Column<string>(type: "TEXT", nullable: true),
                    UndoOf = table.Column<long>(type: "INTEGER", nullable: true),
                    Note = table.Column<string>(type: "TEXT", nullable: true),
                    Spoiled = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bookings", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "jobs",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Filled = table.Column<string>(type: "TEXT", nullable: false),
                    CreatedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    State = table.Column<string>(type: "TEXT", nullable: false),
                    Planner = table.Column<string>(type: "TEXT", nullable: true),
                    SpentMinor = table.Column<long>(type: "INTEGER", nullable: true),
                    LeastPossibleMinor = table.Column<long>(type: "INTEGER", nullable: true),
                    StopAsked = table.Column<bool>(type: "INTEGER", nullable: false),
                    Problem = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_jobs", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "settings",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false),
                    Units = table.Column<string>(type: "TEXT", nullable: false),
                    Currency = table.Column<string>(type: "TEXT", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_settings", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "stock",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Letter = table.Column<string>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    Sort = table.Column<string>(type: "TEXT", nullable: false),
                    Good = table.Column<string>(type: "TEXT", nullable: false),
                    Units = table.Column<string>(type: "TEXT", nullable: false),
                    Currency = table.Column<string>(type: "TEXT", nullable: false),
                    ValueMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    ValueOf = table.Column<long>(type: "INTEGER", nullable: false),
                    AddedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_stock", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "supplies",
                columns: table => new
                {
                    Sort = table.Column<string>(type: "TEXT", nullable: false),
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Units = table.Column<string>(type: "TEXT", nullable: false),
                    Currency = table.Column<string>(type: "TEXT", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    PricedOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_supplies", x => new { x.Sort, x.Id });
                });

            migrationBuilder.CreateTable(
                name: "plans",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    TitleKey = table.Column<string>(type: "TEXT", nullable: false),
                    CreatedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Stopped = table.Column<bool>(type: "INTEGER", nullable: false),
                    DocumentVersion = table.Column<int>(type: "INTEGER", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    Order = table.Column<string>(type: "TEXT", nullable: false),
                    Links = table.Column<string>(type: "TEXT", nullable: false),
                    Units = table.Column<string>(type: "TEXT", nullable: false),
                    Currency = table.Column<string>(type: "TEXT", nullable: false),
                    SpentMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    LeastPossibleMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    Panels = table.Column<int>(type: "INTEGER", nullable: false),
                    CutBooking = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_plans", x => x.Id);
                    table.ForeignKey(
                        name: "FK_plans_bookings_CutBooking",
                        column: x => x.CutBooking,
                        principalTable: "bookings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "movements",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    BookingId = table.Column<long>(type: "INTEGER", nullable: false),
                    StockId = table.Column<string>(type: "TEXT", nullable: false),
                    Quantity = table.Column<long>(type: "INTEGER", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    UndoOf = table.Column<long>(type: "INTEGER", nullable: true),
                    Change = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_movements", x => x.Id);
                    table.ForeignKey(
                        name: "FK_movements_bookings_BookingId",
                        column: x => x.BookingId,
                        principalTable: "bookings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_movements_stock_StockId",
                        column: x => x.StockId,
                        principalTable: "stock",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_bookings_PlanId",
                table: "bookings",
                column: "PlanId");

            migrationBuilder.CreateIndex(
                name: "IX_bookings_UndoOf",
                table: "bookings",
                column: "UndoOf",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_jobs_State",
                table: "jobs",
                column: "State");

            migrationBuilder.CreateIndex(
                name: "IX_movements_BookingId",
                table: "movements",
                column: "BookingId");

            migrationBuilder.CreateIndex(
                name: "IX_movements_StockId",
                table: "movements",
                column: "StockId");

            migrationBuilder.CreateIndex(
                name: "IX_movements_UndoOf",
                table: "movements",
                column: "UndoOf",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_plans_CreatedAt",
                table: "plans",
                column: "CreatedAt");

            migrationBuilder.CreateIndex(
                name: "IX_plans_CutBooking",
                table: "plans",
                column: "CutBooking");

            migrationBuilder.CreateIndex(
                name: "IX_stock_Letter_Number",
                table: "stock",
                columns: new[] { "Letter", "Number" },
                unique: true);

            // Added by hand.
            foreach (string statement in LedgerGuard.Sqlite())
            {
                migrationBuilder.Sql(statement);
            }
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "jobs");

            migrationBuilder.DropTable(
                name: "movements");

            migrationBuilder.DropTable(
                name: "plans");

            migrationBuilder.DropTable(
                name: "settings");

            migrationBuilder.DropTable(
                name: "supplies");

            migrationBuilder.DropTable(
                name: "stock");

            migrationBuilder.DropTable(
                name: "bookings");
        }
    }
}
