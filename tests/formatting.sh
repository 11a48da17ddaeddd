#!/usr/bin/env bash
# What `dotnet format` looks at and the build does not: white space, ends of files and the order of imports. Style and analyzers
# are warnings of the build, and those are errors. Nothing is loaded or compiled for it.
set -euo pipefail
cd "$(dirname "$0")/.."

dotnet format whitespace . --folder --verify-no-changes --exclude '**/obj/**' '**/bin/**' '**/Migrations/**'

# System first, then by name.
git ls-files -co --exclude-standard '*.cs' | grep -v '/Migrations/' | tr '\n' '\0' | LC_ALL=C xargs -0 awk '
  FNR == 1 { last = "" }
  /^using [A-Za-z0-9_.]+;\r?$/ {
    name = substr($2, 1, length($2) - 1)
    key = (name ~ /^System(\.|$)/ ? "0" : "1") tolower(name)
    if (key < last) { printf "%s(%d): using %s belongs further up\n", FILENAME, FNR, name; wrong = 1 }
    last = key
  }
  END { exit wrong }'
