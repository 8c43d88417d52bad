#!/usr/bin/env bash
# Feeds the readers of photometric files with spoilt input for some seconds each, from the kept
# inputs in tests/fuzz/corpus. Where clang or its libFuzzer is missing it says so and ends with 0.
#
#     bash tests/fuzz/run.sh [SECONDS]      20 without a number
#
# An input that breaks a reader stays in build/fuzz/KIND-*: mend the cause, then move the input to
# tests/fuzz/corpus/KIND, where the test "fuzz" replays it for ever.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
seconds="${1:-20}"

if ! command -v clang++ >/dev/null ||
    ! echo 'extern "C" int LLVMFuzzerTestOneInput(const char*, unsigned long) { return 0; }' |
        clang++ -x c++ - -fsanitize=fuzzer -o /dev/null 2>/dev/null; then
    echo "Fuzzing is left out: it needs clang++ and libclang-rt-14-dev."
    exit 0
fi

mkdir -p build/fuzz
settings=(-DCMAKE_CXX_COMPILER=clang++)
if command -v ccache >/dev/null; then
    settings+=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
fi
if [ ! -f build/fuzz/CMakeCache.txt ] && command -v ninja >/dev/null; then
    settings+=(-G Ninja)
fi
log=build/fuzz/build.log
if ! { cmake -S tests/fuzz -B build/fuzz "${settings[@]}" && cmake --build build/fuzz --parallel "$(nproc)"; } >"$log" 2>&1; then
    tail -n 40 "$log" >&2
    exit 1
fi

for kind in ies ldt; do
    # New inputs go to the first folder, so that the kept ones stay as they are.
    mkdir -p "build/fuzz/found-$kind"
    echo "Fuzzing read_$kind for $seconds s ..."
    if ! build/fuzz/fuzz_read_$kind -max_total_time="$seconds" -max_len=8192 -timeout=5 -rss_limit_mb=1024 \
        -dict=tests/fuzz/$kind.dict -artifact_prefix="build/fuzz/$kind-" \
        "build/fuzz/found-$kind" "tests/fuzz/corpus/$kind" >"build/fuzz/$kind.log" 2>&1; then
        tail -n 40 "build/fuzz/$kind.log" >&2
        echo "read_$kind broke: the input is in build/fuzz." >&2
        exit 1
    fi
    grep -E 'DONE' "build/fuzz/$kind.log" | tail -n 1
done
