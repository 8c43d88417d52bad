#!/usr/bin/env bash
# Installs the Debian packages that tests/packages.txt lists and this machine lacks.
#
#     bash tests/install-packages.sh program          what the program needs
#     bash tests/install-packages.sh program tests    and what its tests need
#
# Needs root or sudo only if something is missing. Ends with 0 if everything but optional packages
# is there.
set -euo pipefail
list="$(dirname "${BASH_SOURCE[0]}")/packages.txt"

say() { printf '%s\n' "$*" >&2; }

# The packages of the sections asked for; with $1 = optional only those, with $1 = needed the others.
packages() {
    local kind=$1
    shift
    awk -v wanted=" $* " -v kind="$kind" '
        { sub(/#.*/, "") }
        /^\[/ { section = substr($1, 2, length($1) - 2); next }
        NF && index(wanted, " " section " ") && (kind == "optional") == ($2 == "optional") { print $1 }
    ' "$list"
}

# Those of the packages on standard input that are not installed.
missing() {
    local package
    while read -r package; do
        [ "$(dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null)" = installed ] || echo "$package"
    done
}

as_root() {
    local sudo=()
    [ "$(id -u)" = 0 ] || sudo=(sudo)
    "${sudo[@]}" env DEBIAN_FRONTEND=noninteractive "$@"
}

apt() { as_root apt-get -qq -o DPkg::Lock::Timeout=120 -o Acquire::Retries=2 "$@" >>"$log" 2>&1 </dev/null; }

install() { apt install -y --no-install-recommends "$@"; }

# What apt cannot find at all; if it finds everything, its own words tell why it failed.
complain() {
    local package
    for package in "$@"; do
        apt-cache show "$package" >/dev/null 2>&1 || say "The package $package cannot be had from the sources in /etc/apt."
    done
    say "Still missing: $*. The last words of apt:"
    tail -n 15 "$log" >&2
}

sections=("$@")
if ! command -v dpkg-query >/dev/null; then
    say "This is no Debian, so nothing is installed. Needed are what Debian 12 calls: $(packages needed "${sections[@]}" | xargs)"
    exit 0
fi

mapfile -t needed < <(packages needed "${sections[@]}" | missing)
mapfile -t optional < <(packages optional "${sections[@]}" | missing)
[ $((${#needed[@]} + ${#optional[@]})) -gt 0 ] || exit 0

if [ "$(id -u)" != 0 ] && ! command -v sudo >/dev/null; then
    [ ${#needed[@]} -gt 0 ] || exit 0
    say "Missing: ${needed[*]}. This user may not install them and there is no sudo. As root: apt-get install ${needed[*]}"
    exit 1
fi

log="$(mktemp)"
trap 'rm -f "$log"' EXIT
say "Installing $(echo "${needed[*]} ${optional[*]}" | xargs) ..."
if ! { apt update && install "${needed[@]}" "${optional[@]}"; } && [ ${#needed[@]} -gt 0 ]; then
    # Perhaps an optional package alone stood in the way, or a source that does not matter.
    install "${needed[@]}" || { complain "${needed[@]}"; exit 1; }
fi

mapfile -t absent < <(packages optional "${sections[@]}" | missing)
[ ${#absent[@]} -eq 0 ] || say "Going on without ${absent[*]}, which could not be installed."
