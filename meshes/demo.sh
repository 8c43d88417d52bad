#!/usr/bin/env bash
# From a fresh checkout to results: installs what is missing, builds the program into build/ and
# checks every theme in meshes/demo/. The results lie in build/demo/. May be run again at any time.
#
# Ends with 0 if every theme got its answer, "not met" included.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

say() { printf '%s\n' "$*"; }

# Runs a command, and shows what it printed only if it fails.
quietly() {
    "$@" >>build/demo.log 2>&1 && return
    tail -n 40 build/demo.log >&2
    say "That failed: $*. All of it is in build/demo.log." >&2
    exit 3
}

build() {
    local generator=()
    if [ ! -f build/CMakeCache.txt ] && command -v ninja >/dev/null; then
        generator=(-G Ninja)
    fi
    : >build/demo.log
    say "Building build/cornerglim (a few minutes the first time) ..."
    quietly cmake -S . -B build "${generator[@]}" -DCMAKE_BUILD_TYPE=Release -DGLIM_TESTS=OFF
    quietly cmake --build build --target cornerglim --parallel "$(nproc)"
}

# What the exit code of `check` says; codes that are no answer end in "failed".
words() {
    case $1 in
    0) echo "met" ;;
    1) echo "not met" ;;
    4) echo "open: undecided, or its proof is due" ;;
    130) echo "interrupted" ;;
    *) echo "failed with exit code $1" ;;
    esac
}

bash tests/install-packages.sh program
mkdir -p build
build

shopt -s nullglob
outcomes=()
failed=0
for study in meshes/demo/theme-*.toml; do
    theme="$(basename "$study" .toml)"
    printf '\n--- %s\n' "build/cornerglim check $study --out build/demo/$theme"
    code=0
    build/cornerglim check "$study" --out "build/demo/$theme" || code=$?
    case $code in 0 | 1 | 4) ;; *) failed=$code ;; esac
    outcomes+=("$(printf '%-10s %-38s build/demo/%s' "$theme" "$(words "$code")" "$theme")")
    [ "$code" != 130 ] || break
done

if [ ${#outcomes[@]} -eq 0 ]; then
    say "There is no theme in meshes/demo/." >&2
    exit 2
fi
printf '\nOutcomes, and where each result lies:\n'
printf '  %s\n' "${outcomes[@]}"
exit "$failed"
