#!/usr/bin/env bash
# The one command that checks everything: installs what is missing, builds into build/checked with
# assertions and with warnings as errors, and runs all tests. In CI (the variable CI is set) format
# and lint are looked at first, and the whole may take half an hour at most.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

if [ -n "${CI:-}" ] && [ -z "${GLIM_TIME_IS_KEPT:-}" ]; then
    GLIM_TIME_IS_KEPT=1 exec timeout 30m bash tests/run.sh "$@"
fi

settings=(-DCMAKE_BUILD_TYPE=Release -DGLIM_TESTS=ON -DGLIM_ASSERTIONS=ON -DGLIM_WARNINGS_ARE_ERRORS=ON)

bash tests/install-packages.sh program tests
bash tests/motorcycle/fetch.sh
if [ ! -f build/checked/CMakeCache.txt ] && command -v ninja >/dev/null; then
    settings+=(-G Ninja)
fi
if command -v ccache >/dev/null; then
    settings+=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
fi

mkdir -p build/checked
log=build/checked/build.log
echo "Building the program and its tests into build/checked ..."
if ! { cmake -S . -B build/checked "${settings[@]}" && cmake --build build/checked --parallel "$(nproc)"; } >"$log" 2>&1; then
    grep -E -A12 'error|FAILED|Error' "$log" | head -n 120 >&2 || tail -n 60 "$log" >&2
    echo "The build failed; all of it is in $log." >&2
    exit 1
fi

if [ -n "${CI:-}" ]; then
    bash tests/tidy.sh build/checked
fi

bash tests/fuzz/run.sh 20

# Last, so that its closing line is the last line.
exec ctest --test-dir build/checked --output-on-failure --timeout 600 -j2 "$@"
