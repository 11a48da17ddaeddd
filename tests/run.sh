#!/usr/bin/env bash
# Runs every test from a fresh clone: restore, one Release build, then all test projects in two lines side by side, formatting with them.
# The last line is "N passed, N failed"; the exit code is 0 only where something passed and nothing failed.
set -euo pipefail
cd "$(dirname "$0")/.."

export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_SKIP_FIRST_TIME_EXPERIENCE=1
# Most processes here live too short for what the runtime would learn of them: the store's tests take a sixth less time so.
export DOTNET_TieredPGO=0
solution=PanelService.sln
results=artifacts/test-results
passed=0
failed=0
finished=false
left_out=

summary() {
  local code=$?
  if [ "$finished" = false ] && [ "$failed" -eq 0 ]; then
    failed=1 # a step before or between the tests broke
  fi
  [ -z "$left_out" ] || echo "$left_out"
  echo "$passed passed, $failed failed"
  if [ "$failed" -gt 0 ] || [ "$passed" -eq 0 ]; then
    exit $((code == 0 ? 1 : code))
  fi
  exit 0
}
trap summary EXIT

step() { printf '\n== %s\n' "$1"; }

# The sum of one counter over all result files: counter NAME
counter() {
  local sum=0 value
  for value in $(grep -ho "<Counters [^>]*" "$results"/*.trx 2>/dev/null | grep -o " $1=\"[0-9]*\"" | grep -o '[0-9]\+'); do
    sum=$((sum + value))
  done
  echo "$sum"
}

# From the distribution, where it has packages this way: from_distribution PACKAGE...
from_distribution() {
  local root=()
  if [ "$(id -u)" -ne 0 ] && command -v sudo >/dev/null; then
    root=(sudo -n)
  fi
  command -v apt-get >/dev/null && "${root[@]}" apt-get update -q && "${root[@]}" apt-get install -qy --no-install-recommends "$@"
}

# The browser tests use Chromium from the distribution, best without its windows, which cost a process more a page; else
# Playwright's own build of it.
need_chromium() {
  local name driver
  if command -v chromium-headless-shell >/dev/null || from_distribution chromium-headless-shell || from_distribution chromium; then
    return
  fi
  for name in chromium chromium-browser google-chrome; do
    if command -v "$name" >/dev/null; then
      return
    fi
  done
  driver=$(find "${NUGET_PACKAGES:-$HOME/.nuget/packages}/microsoft.playwright" -type d -name .playwright 2>/dev/null | sort -V | tail -n 1)
  if [ -n "$driver" ]; then
    "$driver"/node/linux-x64/node "$driver"/package/cli.js install --with-deps chromium && return
  fi
  echo "No Chromium could be installed; the browser tests will say so."
}

# The tests of the studio's memory start a PostgreSQL server of their own from the distribution's programs.
need_postgres() {
  if compgen -G '/usr/lib/postgresql/*/bin/initdb' >/dev/null || from_distribution postgresql && compgen -G '/usr/lib/postgresql/*/bin/initdb' >/dev/null; then
    return
  fi
  left_out="PostgreSQL could not be installed: nothing was tested against it, only against SQLite."
}

step "restore"
if [ "${CI:-}" = true ]; then
  dotnet restore "$solution" --locked-mode
else
  dotnet restore "$solution"
fi

if [ -d tests/PanelService.Browser.Tests ]; then
  step "browser"
  need_chromium
fi

if [ -d tests/PanelService.Store.Tests ]; then
  step "PostgreSQL"
  need_postgres
fi

step "build"
dotnet build "$solution" --configuration Release --no-restore

step "tests"
rm -rf "$results" artifacts/published artifacts/tidy
mkdir -p "$results"
broken=0

# One project's tests: run_tests PROJECT
run_tests() {
  local name
  name=$(basename "$1" .csproj)
  dotnet test "$1" --configuration Release --no-build ${left_out:+--filter Database!=PostgreSQL} \
    --logger "trx;LogFileName=$name.trx" --results-directory "$results" \
    --blame-hang-timeout 10m --blame-hang-dump-type none \
    || echo "$name: not all well"
}

# Two at a time: the store's and the browser's tests wait much of theirs, for processes to start and pages to settle. Before
# them formatting and the Dockerfile are looked at; after the others comes the folder a studio would run: published with its
# runtime, started, asked, stopped.
waiting=(Store Browser)
beside() {
  local name
  if tests/formatting.sh && tests/dockerfile.sh; then
    touch artifacts/tidy
  fi
  for name in "${waiting[@]}"; do
    run_tests "tests/PanelService.$name.Tests/PanelService.$name.Tests.csproj"
  done
}

beside >artifacts/beside.log 2>&1 &
others=$!
for project in tests/*.Tests/*.csproj; do
  name=${project#tests/PanelService.}
  case " ${waiting[*]} " in
    *" ${name%%.Tests/*} "*) ;;
    *) run_tests "$project" ;;
  esac
done
if tests/published.sh; then
  touch artifacts/published
fi
wait "$others"
cat artifacts/beside.log

for project in tests/*.Tests/*.csproj; do
  name=$(basename "$project" .csproj)
  if [ ! -s "$results/$name.trx" ] || ! grep -q '<ResultSummary outcome="\(Completed\|Failed\|Passed\)"' "$results/$name.trx"; then
    echo "$name ended without a result"
    broken=$((broken + 1))
  elif grep -q 'The active test run was aborted' "$results/$name.trx"; then
    echo "$name was aborted"
    broken=$((broken + 1))
  fi
done

published=$([ -f artifacts/published ] && echo 1 || echo 0)
tidy=$([ -f artifacts/tidy ] && echo 1 || echo 0)
passed=$(($(counter passed) + published + tidy))
failed=$((2 - published - tidy + $(counter failed) + $(counter error) + $(counter timeout) + $(counter aborted) + broken))
finished=true
