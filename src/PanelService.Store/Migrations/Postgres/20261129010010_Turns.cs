using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace PanelService.Store.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Turns : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Client",
                table: "jobs",
                type: "text",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "TakenAt",
                table: "jobs",
                type: "bigint",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Ticket",
                table: "jobs",
                type: "text",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Client",
                table: "jobs");

            migrationBuilder.DropColumn(
                name: "TakenAt",
                table: "jobs");

            migrationBuilder.DropColumn(
                name: "Ticket",
                table: "jobs");
        }
    }
}
