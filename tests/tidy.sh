#!/usr/bin/env bash
# Format of all our C++ and lint of what has changed, as far as the tools are there.
#
#     bash tests/tidy.sh [BUILD_FOLDER]
#
# "Changed" means against GLIM_BASE (a commit), or else against the commit before. Lint takes ten
# minutes at most; what it did not get to is said and is no failure. A finding is one: exit code 1.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
build="${1:-build/checked}"
base="${GLIM_BASE:-HEAD~1}"

say() { printf '%s\n' "$*"; }

our_sources() { find src tests meshes \( -name '*.h' -o -name '*.cpp' \) -not -path 'tests/bad/*' -print0; }

look_at_format() {
    if ! command -v clang-format >/dev/null; then
        say "Format is not looked at: there is no clang-format."
    elif our_sources | xargs -0 clang-format --dry-run -Werror; then
        say "Format: as .clang-format has it."
    else
        say "Format: clang-format -i FILE puts it right."
        return 1
    fi
}

# The sources to lint: those that changed, and those whose header of the same name did. Tests are
# left out, because what Catch2's macros unfold to is not ours, and so is what nobody compiles.
changed_sources() {
    git diff --name-only --diff-filter=d "$base" -- 'src/*.h' 'src/*.cpp' 'meshes/*.h' 'meshes/*.cpp' |
        sed 's/\.h$/.cpp/' | sort -u | while read -r source; do
            ! grep -qF "\"$PWD/$source\"" "$build/compile_commands.json" || echo "$source"
        done
}

# The compiler of the build knows warning options that clang-tidy does not.
# shellcheck disable=SC2317 # xargs calls it
lint_one() {
    local build=$1 source=$2 notes=$3 out
    if out="$(clang-tidy --quiet -p "$build" --extra-arg=-Wno-unknown-warning-option "$source" 2>&1)"; then
        echo "$source" >>"$notes/clean"
    else
        printf -- '--- %s\n%s\n' "$source" "$(grep -vE '^[0-9]+ warnings.*generated' <<<"$out")" |
            tee -a "$notes/findings"
    fi
}
export -f lint_one

lint_changes() {
    if ! command -v clang-tidy >/dev/null; then
        say "Lint is not run: there is no clang-tidy."
        return
    fi
    if ! git rev-parse --verify --quiet "$base^{commit}" >/dev/null; then
        say "Lint is not run: there is no commit $base to compare with."
        return
    fi
    local notes count
    notes="$(mktemp -d)"
    changed_sources >"$notes/sources"
    count="$(wc -l <"$notes/sources")"
    touch "$notes/clean" "$notes/findings"
    timeout 10m xargs -d '\n' -P "$(nproc)" -I SOURCE -a "$notes/sources" \
        bash -c 'lint_one "$@"' lint "$build" SOURCE "$notes" || say "Lint: time is up."
    say "Lint: $(wc -l <"$notes/clean") of $count changed sources are clean."
    local found=0
    [ ! -s "$notes/findings" ] || found=1
    rm -r "$notes"
    return "$found"
}

bad=0
look_at_format || bad=1
lint_changes || bad=1
exit "$bad"
