#!/usr/bin/env bash
# Publishes the service with its runtime for linux-x64, starts it from its folder as a studio would, plans the first demo
# order over HTTP, and stops it: 0 only where all of that went well. Waits for what the service says, never for time.
set -euo pipefail
cd "$(dirname "$0")/.."

folder=$(mktemp -d)
service=
stop() {
  if [ -n "$service" ]; then kill -KILL "$service" 2>/dev/null || true; fi
  rm -rf "$folder"
}
trap stop EXIT

dotnet publish src/PanelService --configuration Release --runtime linux-x64 --self-contained --output "$folder/app" -p:PublishReadyToRun=false -p:RunAnalyzers=false
mkfifo "$folder/said"
env -u DOTNET_ROOT PanelService__DataFolder="$folder/data" "$folder/app/PanelService" --urls http://127.0.0.1:0 >"$folder/said" 2>&1 &
service=$!

address=
while IFS= read -r line; do
  echo "$line"
  case "$line" in
    *"Now listening on: "*) address=$(echo "${line##*Now listening on: }" | tr -d ' ') ;;
    *"Application started"*) break ;;
  esac
done <"$folder/said"
[ -n "$address" ] || { echo "It did not start."; exit 1; }
cat "$folder/said" >"$folder/later" &

curl --fail --silent --show-error --max-time 60 --json @demo-data/tern-island.json "$address/api/plans" >"$folder/plan.json"
grep -q '"proven":true' "$folder/plan.json"
curl --fail --silent --show-error --max-time 10 "$address/" | grep -q '<main'

kill -TERM "$service"
wait "$service"
service=
grep -q 'Application is shutting down' "$folder/later"
echo "Published, started, planned, stopped."
