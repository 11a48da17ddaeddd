#!/usr/bin/env bash
# Asks the registry which packages, direct and transitive, are known to be vulnerable. 0: it answered, and knows of none;
# 1: it knows of some; 2: it did not answer, which says nothing either way. A registry that holds no list of the vulnerable
# calls everything clean: it is asked about a package on every such list first.
set -uo pipefail
cd "$(dirname "$0")/.."

export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_CLI_UI_LANGUAGE=en
trial=$(mktemp -d)
trap 'rm -rf "$trial"' EXIT

ask() { dotnet list "$1" package --vulnerable --include-transitive 2>&1; }

# Newtonsoft.Json before 13.0.1: CVE-2024-21907, high.
cat >"$trial/trial.csproj" <<'PROJECT'
<Project Sdk="Microsoft.NET.Sdk">
  <PropertyGroup><TargetFramework>net10.0</TargetFramework><NuGetAudit>false</NuGetAudit></PropertyGroup>
  <ItemGroup><PackageReference Include="Newtonsoft.Json" Version="12.0.1" /></ItemGroup>
</Project>
PROJECT
if ! dotnet restore "$trial/trial.csproj" >/dev/null || ! ask "$trial/trial.csproj" | grep -q 'has the following vulnerable packages'; then
  echo "The registry does not know a package as vulnerable that is: its answer says nothing. Nothing was asked about ours."
  exit 2
fi

dotnet restore PanelService.sln --locked-mode >/dev/null || { echo "Not restored: nothing was asked."; exit 2; }
answer=$(ask PanelService.sln)
code=$?
echo "$answer"
if grep -q 'has the following vulnerable packages' <<<"$answer"; then exit 1; fi
projects=$(dotnet sln PanelService.sln list | grep -c 'csproj$')
clean=$(grep -c 'has no vulnerable packages' <<<"$answer")
if [ "$code" -ne 0 ] || [ "$clean" -ne "$projects" ]; then
  echo "The registry answered for $clean of $projects projects."
  exit 2
fi
echo "$clean projects, none with a package known to be vulnerable."
