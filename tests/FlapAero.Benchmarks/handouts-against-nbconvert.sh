#!/usr/bin/env bash
# Seconds for the handouts of one lesson and of ten, beside those that Jupyter's nbconvert takes to run the same notebooks
# into HTML. Call it on an otherwise idle machine, after building; Jupyter needs the kernel that the notebooks name.
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
# Another build of the command, such as a published one, may be named: its FlapAero.Cli.dll.
command=("dotnet" "$(realpath "${1:-$root/src/FlapAero.Cli/bin/Debug/net10.0/FlapAero.Cli.dll}")" handouts)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# The lessons refer to ../artifacts, and the cache belongs to the checkout: so a small one of its own.
mkdir "$work/one" "$work/ten"
touch "$work/FlapAero.sln"
ln -s "$root/artifacts" "$work/artifacts"
lesson=$root/notebooks/04-approach-speed.ipynb
cp "$lesson" "$work/one/"
for n in 01 02 03 04 05 06 07 08 09 10; do
    sed "s/\"lesson\": 4,/\"lesson\": $((10#$n)),/" "$lesson" >"$work/ten/$n-approach-speed-$n.ipynb"
done

seconds() { # command...: how long it takes
    local before=$EPOCHREALTIME
    "$@" >"$work/log" 2>&1 || { cat "$work/log" >&2; exit 1; }
    awk -v a="$before" -v b="$EPOCHREALTIME" 'BEGIN { printf "%.1f", b - a }'
}

cd "$work"
for set in one ten; do
    "${command[@]}" --notebooks "$set" --out "$work/$set-pages" >"$work/log" 2>&1 || { cat "$work/log" >&2; exit 1; } # warm
    again=$(seconds "${command[@]}" --notebooks "$set" --out "$work/$set-pages")
    ours=$(seconds "${command[@]}" --notebooks "$set" --out "$work/$set-pages" --fresh)
    theirs=$(seconds jupyter nbconvert --to html --execute --output-dir "$work/$set-peer" "$set"/*.ipynb)
    awk -v s="$set" -v a="$again" -v o="$ours" -v t="$theirs" \
        'BEGIN { printf "%s: handouts, all editions %s s; nothing changed %s s; nbconvert %s s; ratio %.1f\n", s, o, a, t, t / o }'
done
