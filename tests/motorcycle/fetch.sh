#!/usr/bin/env bash
# Fetches the one real mesh of the tests, a motorcycle that others made, out of Debian's package of
# OpenFOAM examples into build/meshes. It is under its own licence (GPL-3+), so it is not kept here.
# Without it the tests that need it are left out; that is said, and no failure.
set -u
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
target=build/meshes/motorBike.obj
[ -s "$target" ] && exit 0

echo "Fetching the motorcycle mesh ..."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -p build/meshes
if (cd "$work" && apt-get download openfoam-examples && dpkg-deb -x ./*.deb unpacked) >/dev/null 2>&1 &&
    gunzip -c "$work/unpacked/usr/share/doc/openfoam-examples/examples/resources/geometry/motorBike.obj.gz" \
        >"$work/mesh" && [ -s "$work/mesh" ]; then
    mv "$work/mesh" "$target"
else
    echo "The package openfoam-examples cannot be had here; the motorcycle is left out of the tests."
fi
