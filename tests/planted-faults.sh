#!/usr/bin/env bash
# Does the suite catch what it is there for? Plants one fault after the other in this working copy, runs the tests that should
# notice, takes the fault out again. A fault that nothing notices is told, and makes the script fail. Takes about twenty minutes.
# Needs a clean working copy, Python 3 and, for the kernel's fault, a Jupyter. Arguments: names of faults; without any, all.
set -uo pipefail
cd "$(dirname "$0")/.."
export CI=true DOTNET_NOLOGO=1
[ -z "$(git status --porcelain)" ] || { echo "The working copy has changes; they would be lost."; exit 2; }
trap 'git checkout --quiet . && git clean --quiet --force src' EXIT
caught=0 missed=0 wanted=" $* "

plant() { # name, file, text, text in its place, test project, class
    [ "$wanted" = "  " ] || [[ "$wanted" == *" $1 "* ]] || return 0
    python3 - "$2" "$3" "$4" <<'PY' || { echo "$1: cannot be planted any more: $2 has changed"; missed=$((missed + 1)); return 0; }
import os, sys
path, old, new = sys.argv[1:]
text = open(path, encoding="utf-8").read() if os.path.exists(path) else ""
if old not in text: sys.exit(1)
open(path, "w", encoding="utf-8").write(text.replace(old, new, 1) if old else text + new)
PY
    local log
    log=$(mktemp)
    if ! dotnet build --verbosity quiet "tests/FlapAero.$5" >"$log" 2>&1; then
        echo "$1: caught by the compiler: $(grep -m1 -oE 'error .*' "$log" | cut -c1-120)"
        caught=$((caught + 1))
    elif timeout 300 dotnet run --no-build --project "tests/FlapAero.$5" -- -class "$6" >"$log" 2>&1; then
        echo "$1: MISSED by $6"
        missed=$((missed + 1))
    else
        echo "$1: caught by $(grep -aoE '[A-Za-z]+Tests\.[A-Za-z0-9_]+' "$log" | sort | uniq -c | sort -rn | awk '{ print $2 }' | head -n 3 | paste -sd ' ')"
        caught=$((caught + 1))
    fi
    git checkout --quiet . && git clean --quiet --force src
}

page=src/FlapAero.Handouts/Pages/PageShell.cs
plant leak src/FlapAero.Handouts/Pages/LessonPage.cs 'Markup.Code(cell.StudentSource)' 'Markup.Code(cell.Source)' Lessons.Tests '*.SeedTests'
plant wrong-key notebooks/01-lift-and-where-it-ends.ipynb 'answer: flown.StallSpeed(air, n).Calibrated,' 'answer: 1.06 * flown.StallSpeed(air, n).Calibrated,' Lessons.Tests '*.LiftKeyTests'
plant asks-the-network "$page" '<link rel="icon" href="{{Icon}}">' '<link rel="icon" href="https://example.org/icon.svg">' Handouts.Tests '*.PageTests'
plant kernel-on-all-interfaces src/FlapAero.Cli/Jupyter/KernelSpec.cs '"--http-local-only", ' '' Jupyter.Tests '*.SetUpTests'
plant page-of-the-minute "$page" '<body class="{{kind}}">' '<body class="{{kind}}" data-made="{{DateTime.UtcNow.Ticks}}">' Handouts.Tests '*.HandoutBuilderTests'
plant half-a-file src/FlapAero.Handouts/Publishing/OutputFolder.cs 'throw new IOException(e.Message, e);' '_ = e;' Cli.Tests '*.NothingLostTests'
plant wrong-equation src/FlapAero/Equations/EnergyLaws.cs 'double change = 2 * StandardConstants.Gravity * height;' 'double change = StandardConstants.Gravity * height;' Tests '*.EnergyLawsTests'
plant missing-source src/FlapAero/EnergyHeight.cs ' Source: [anderson-itf].' '' Tests '*.DocumentationTests'
plant arrow-against-the-grain src/FlapAero.Cli/Planted.cs '' 'internal static class Planted { public static System.Type Kernel => typeof(Microsoft.DotNet.Interactive.Kernel); }' Cli.Tests '*.ReferenceArrowTests'
plant endless-cell src/FlapAero.Handouts/Kernels/KernelProcess.cs 'late.CancelAfter(limit);' 'late.CancelAfter(TimeSpan.FromDays(1));' Cli.Tests '*.NothingLostTests'
plant quantity-in-an-equation src/FlapAero/Equations/Planted.cs '' 'namespace FlapAero.Equations; internal static class Planted { public static UnitsNet.Speed Of(double v) => UnitsNet.Speed.FromMetersPerSecond(v); }' Tests '*.EquationsArchitectureTests'
plant key-inside-html src/FlapAero.Notebooks/Problems/Problem.cs 'internal string QuestionHtml() => Section("");' 'internal string QuestionHtml() => Section(Solution());' Handouts.Tests '*.KeysApartTests'

echo "$caught caught, $missed missed"
[ "$caught" -gt 0 ] && [ "$missed" -eq 0 ]
